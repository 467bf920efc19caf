package hullalmanac.exchange.page;

/** Text as it stands in HTML. */
final class Markup {
  private Markup() {}

  /**
   * A text so that nothing in it is read as markup, also within quotation marks; line breaks stay.
   *
   * <p>Reference: HTML Living Standard, 13.3 "Serializing HTML fragments", escaping a string.
   */
  static String text(String plain) {
    StringBuilder text = new StringBuilder();
    plain
        .codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                default -> text.appendCodePoint(isShown(c) ? c : 0xFFFD);
              }
            });
    return text.toString();
  }

  /** Whether a page may hold it: controls other than white space may not stand in one. */
  private static boolean isShown(int c) {
    return !Character.isISOControl(c) || c == '\n' || c == '\t' || c == '\r';
  }
}
