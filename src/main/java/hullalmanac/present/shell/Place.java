package hullalmanac.present.shell;

/** The places of the window, in the order of the rail. */
public enum Place {
  AHEAD("Ahead"),
  BOATS("Boats");

  private final String words;

  Place(String words) {
    this.words = words;
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }
}
