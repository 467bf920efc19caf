package hullalmanac.core.record;

import java.util.Locale;

/** Rules for the texts of a record. */
public final class Texts {
  private static final int LONGEST_KEY = 80;

  private Texts() {}

  /** A text with a capital in front. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** A text on one line: control characters and line breaks become blanks. */
  public static String oneLine(String text) {
    return text.replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]+", " ").strip();
  }

  /** A text whose lines are parted by line feeds, other control characters become blanks. */
  public static String lines(String text) {
    return text.replaceAll("\\R", "\n").replaceAll("[\\p{Cc}&&[^\\n]]", " ").strip();
  }

  /** Refuses a blank text where one is needed. */
  public static String require(String text, String what) {
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
