package hullalmanac.present;

/**
 * What stands where there is nothing to show yet: the one useful thing, and a button that does it.
 *
 * @param words what is missing and what brings it about, in one or two sentences
 * @param also another button; empty where there is none
 */
public record Invitation(String title, String words, String button, String also) {
  /** With one button. */
  public Invitation(String title, String words, String button) {
    this(title, words, button, "");
  }
}
