package hullalmanac.exchange;

/**
 * Folds the lines of a calendar or card at 75 octets of UTF-8. The libraries that write them count
 * characters, so a line with accents would come out too long.
 *
 * <p>References: RFC 5545, section 3.1; RFC 6350, section 3.2 (a character is never split).
 */
public final class FoldedLines {
  private static final int MOST_OCTETS = 75;
  private static final String LINE_END = "\r\n";

  private FoldedLines() {}

  /** The same text with each line that is too long folded; its lines end with CR LF. */
  public static String of(String unfolded) {
    StringBuilder out = new StringBuilder(unfolded.length() + unfolded.length() / MOST_OCTETS);
    int octets = 0;
    for (int i = 0; i < unfolded.length(); ) {
      int c = unfolded.codePointAt(i);
      i += Character.charCount(c);
      if (c == '\r' || c == '\n') {
        octets = 0;
      } else if (octets + octets(c) > MOST_OCTETS) {
        out.append(LINE_END).append(' ');
        octets = 1 + octets(c);
      } else {
        octets += octets(c);
      }
      out.appendCodePoint(c);
    }
    return out.toString();
  }

  /** Octets of a character in UTF-8 (RFC 3629, section 3). */
  private static int octets(int c) {
    if (c < 0x80) {
      return 1;
    }
    if (c < 0x800) {
      return 2;
    }
    return c < 0x10000 ? 3 : 4;
  }
}
