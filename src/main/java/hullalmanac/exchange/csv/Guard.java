package hullalmanac.exchange.csv;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from running a text as a formula: an apostrophe goes before texts that begin
 * like one, and comes off again when they are read. Texts come back exactly, those with apostrophes
 * of their own too.
 *
 * <p>Reference: CWE-1236, improper neutralization of formula elements in a CSV file.
 */
final class Guard {
  private static final Pattern LIKE_A_FORMULA =
      Pattern.compile("'*[=+\\-@\\t\\r].*", Pattern.DOTALL);

  private Guard() {}

  static String on(String text) {
    return LIKE_A_FORMULA.matcher(text).matches() ? "'" + text : text;
  }

  static String off(String text) {
    return text.startsWith("'") && LIKE_A_FORMULA.matcher(text).matches()
        ? text.substring(1)
        : text;
  }
}
