package hullalmanac.present.sheet;

/**
 * What a text means that stands in a field.
 *
 * @param words what was understood, or why it cannot be taken
 */
public record Said(String words, boolean refused) {
  /** Nothing to say. */
  public static final Said NOTHING = new Said("", false);
}
