package hullalmanac.present.shell;

/** The places of the window, in the order of the rail. */
public enum Place {
  AHEAD("Ahead", 1),
  BOATS("Boats", 2),
  PEOPLE("People", 3),
  SHELF("Shelf", 5),
  TAKINGS("Takings", 6),
  RECKONER("Reckoner", 7),
  SETTINGS("Settings", 8);

  private final String words;
  private final int number;

  Place(String words, int number) {
    this.words = words;
    this.number = number;
  }

  /** Its number on the rail, from 1, which is also its key with Ctrl. */
  public int number() {
    return number;
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }
}
