package hullalmanac.core.record;

/**
 * Something in what was given that cannot be taken as it is. Expected, so a value and never an
 * exception.
 *
 * @param kind which kind of row
 * @param key the person's own id of the row, empty when it has none
 * @param field which field, as in the files
 * @param message what is wrong, a sentence
 * @param advice what to do about it, a sentence
 */
public record Problem(Kind kind, String key, String field, String message, String advice) {
  /** What is wrong and what to do about it, in words for the screen. */
  public String sentence() {
    return Texts.capital(message) + ". " + advice + ".";
  }
}
