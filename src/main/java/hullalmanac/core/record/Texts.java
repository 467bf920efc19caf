package hullalmanac.core.record;

/** Rules for the texts of a record. */
final class Texts {
  private static final int LONGEST_KEY = 80;

  private Texts() {}

  /** Refuses a blank text where one is needed. */
  static String require(String text, String what) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(what + " must not be empty");
    }
    return text;
  }

  /**
   * Refuses what cannot be a person's own id: empty, over 80 characters, with control characters,
   * blanks around it, or "|".
   */
  static String key(String key) {
    require(key, "id");
    if (key.length() > LONGEST_KEY) {
      throw new IllegalArgumentException("an id has at most " + LONGEST_KEY + " characters");
    }
    if (!key.equals(key.strip())
        || key.indexOf('|') >= 0
        || key.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException(
          "an id has no blanks around it, no | and no control characters: " + key);
    }
    return key;
  }
}
