package hullalmanac.present.shell;

import hullalmanac.core.guide.Topic;

/** The places of the window, in the order of the rail. */
public enum Place {
  AHEAD("Ahead", 1, Topic.AHEAD),
  BOATS("Boats", 2, Topic.BOATS),
  PEOPLE("People", 3, Topic.PEOPLE),
  SHELF("Shelf", 5, Topic.SHELF),
  TAKINGS("Takings", 6, Topic.TAKINGS),
  RECKONER("Reckoner", 7, Topic.RECKONER),
  SETTINGS("Settings", 8, Topic.SETTINGS);

  private final String words;
  private final int number;
  private final Topic topic;

  Place(String words, int number, Topic topic) {
    this.words = words;
    this.number = number;
    this.topic = topic;
  }

  /** Its number on the rail, from 1, which is also its key with Ctrl. */
  public int number() {
    return number;
  }

  /** What the guide says of it. */
  public Topic topic() {
    return topic;
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }
}
