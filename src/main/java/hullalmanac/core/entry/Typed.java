package hullalmanac.core.entry;

/** One spelling for what keyboards, phones and other programs write differently. */
final class Typed {
  private static final int LONGEST = 60;
  private static final int FULL_WIDTH_FIRST = 0xFF01;
  private static final int FULL_WIDTH_LAST = 0xFF5E;
  private static final int FULL_WIDTH_SHIFT = FULL_WIDTH_FIRST - '!';

  private Typed() {}

  /**
   * Returns the text without blanks around it, with digits of any script, dashes, apostrophes and
   * full-width characters in their ASCII form and every kind of blank as {@code ' '}; a tab or a
   * new line becomes two of them, so that no number reaches over it.
   *
   * <p>What cannot be seen, and the end of a text over 60 characters, become a sign that no reader
   * knows: the result can be shown, and is refused.
   */
  static String fold(String text) {
    String typed = text.strip();
    StringBuilder folded = new StringBuilder();
    typed.codePoints().limit(LONGEST).forEach(c -> append(folded, c));
    if (typed.codePointCount(0, typed.length()) > LONGEST) {
      return folded.append('…').toString();
    }
    return folded.toString().strip();
  }

  /** A folded text as a refusal quotes it. */
  static String quoted(String folded) {
    return '"' + folded + '"';
  }

  private static void append(StringBuilder folded, int typed) {
    int c =
        typed >= FULL_WIDTH_FIRST && typed <= FULL_WIDTH_LAST ? typed - FULL_WIDTH_SHIFT : typed;
    int digit = Character.isDigit(c) ? Character.digit(c, 10) : -1;
    if (digit >= 0) {
      folded.append((char) ('0' + digit));
    } else if (Character.getType(c) == Character.SPACE_SEPARATOR) {
      folded.append(' ');
    } else if (Character.isWhitespace(c)) {
      folded.append("  ");
    } else if (isUnseen(c)) {
      folded.append('\uFFFD');
    } else {
      folded.appendCodePoint(plain(c));
    }
  }

  private static int plain(int c) {
    return switch (c) {
      case '\u2010', '\u2011', '\u2012', '\u2013', '\u2212' -> '-';
      case '\u2018', '\u2019' -> '\'';
      default -> c;
    };
  }

  private static boolean isUnseen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          true;
      default -> false;
    };
  }
}
