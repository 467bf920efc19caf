package hullalmanac.core.guide;

/** What one may want to read about where one is: a page of the guide and a place on it. */
public enum Topic {
  START("guide/README.md"),
  FIRST_DAY("guide/first-day.md"),
  AHEAD("guide/README.md#ahead"),
  BOATS("guide/README.md#boats"),
  WRITING_DOWN("guide/README.md#writing-down"),
  NEW_BOAT("guide/README.md#a-boat-from-a-phone-call"),
  LIST("guide/README.md#a-list-of-your-own"),
  FACTS("guide/README.md#what-is-known-of-her"),
  VISIT("guide/README.md#a-visit"),
  PASSES("guide/README.md#fewest-passes"),
  CARD("guide/README.md#job-card"),
  CATCH_UP("guide/README.md#evening-catch-up"),
  OWNER("guide/README.md#show-the-owner"),
  PEOPLE("guide/README.md#people"),
  CARDS("guide/README.md#contact-cards"),
  ALIKE("guide/README.md#who-may-be-the-same"),
  SHELF("guide/README.md#shelf"),
  SUPPLIES("guide/README.md#supplies"),
  SAID_AND_SEEN("guide/README.md#said-and-seen"),
  TAKINGS("guide/README.md#takings"),
  INVOICE("guide/README.md#an-invoice"),
  PAYMENT("guide/README.md#money-that-comes"),
  ESTIMATE("guide/README.md#an-estimate"),
  PRICE("guide/README.md#what-it-costs"),
  REMINDERS("guide/README.md#reminders"),
  LETTERS("guide/README.md#letters"),
  PAPER("guide/README.md#paper"),
  SPENDING("guide/README.md#trips-and-expenses"),
  RECKONER("guide/README.md#reckoner"),
  FIND("guide/README.md#find"),
  SETTINGS("guide/README.md#settings"),
  CALENDARS("guide/README.md#calendars"),
  LOOKS("guide/README.md#how-it-looks"),
  PRACTICE("guide/README.md#practice-values"),
  RECORD("guide/record.md"),
  OTHERS("guide/record.md#a-folder-that-two-computers-share"),
  KEYS("guide/keys.md"),
  ABOUT("about");

  private final String link;

  Topic(String link) {
    this.link = link;
  }

  /** The page and the place, as a link of the guide. */
  public String link() {
    return link;
  }
}
