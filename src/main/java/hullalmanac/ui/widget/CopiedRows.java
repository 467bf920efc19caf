package hullalmanac.ui.widget;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Rows of texts to be copied: as plain text, a line a row with tabs between the texts, and as an
 * HTML table, so that a spreadsheet and a letter both take them as rows and columns.
 *
 * <p>In plain text a tab or line break inside a text becomes a blank, since it would begin another
 * cell or row. In HTML a line break stays one, and all that is not ASCII is written as a numeric
 * character reference, so that no reader can mistake its encoding.
 *
 * @param header what stands over the columns; empty for none
 */
public record CopiedRows(List<String> header, List<List<String>> rows) implements Transferable {
  private static final DataFlavor PLAIN = text("text/plain;class=java.lang.String");
  private static final DataFlavor HTML = text("text/html;class=java.lang.String");
  private static final int LAST_ASCII = 0x7e;

  public CopiedRows {
    header = List.copyOf(header);
    rows = rows.stream().map(List::copyOf).toList();
  }

  private static DataFlavor text(String mime) {
    try {
      return new DataFlavor(mime);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(mime, e);
    }
  }

  /** Puts them on the clipboard; says so with a beep where another program holds it. */
  public void copy() {
    try {
      Toolkit.getDefaultToolkit().getSystemClipboard().setContents(this, null);
    } catch (IllegalStateException held) {
      Toolkit.getDefaultToolkit().beep();
    }
  }

  private List<List<String>> all() {
    List<List<String>> all = new ArrayList<>(rows);
    if (!header.isEmpty()) {
      all.add(0, header);
    }
    return all;
  }

  /** Lines of texts parted by tabs. */
  public String plain() {
    return all().stream()
        .map(row -> row.stream().map(CopiedRows::oneLine).collect(Collectors.joining("\t")) + "\n")
        .collect(Collectors.joining());
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\R|\\t", " ");
  }

  /** A table in HTML. */
  public String html() {
    StringBuilder html = new StringBuilder("<html><body><table>\n");
    if (!header.isEmpty()) {
      row(html, header, "th");
    }
    rows.forEach(row -> row(html, row, "td"));
    return html.append("</table></body></html>\n").toString();
  }

  private static void row(StringBuilder html, List<String> row, String cell) {
    html.append("<tr>");
    for (String text : row) {
      html.append('<').append(cell).append('>');
      text.replaceAll("\\R", "\n").codePoints().forEach(c -> escape(html, c));
      html.append("</").append(cell).append('>');
    }
    html.append("</tr>\n");
  }

  /**
   * Writes one character so that HTML takes it as text.
   *
   * <p>Reference: WHATWG, HTML Living Standard, section 13.1.4 "Character references".
   */
  private static void escape(StringBuilder html, int c) {
    switch (c) {
      case '<' -> html.append("&lt;");
      case '>' -> html.append("&gt;");
      case '&' -> html.append("&amp;");
      case '"' -> html.append("&quot;");
      case '\n' -> html.append("<br>");
      case '\t' -> html.append("&#9;");
      default -> {
        if (c > LAST_ASCII) {
          html.append("&#").append(c).append(';');
        } else if (c >= ' ') {
          html.append((char) c);
        }
      }
    }
  }

  @Override
  public DataFlavor[] getTransferDataFlavors() {
    return new DataFlavor[] {HTML, DataFlavor.allHtmlFlavor, PLAIN, DataFlavor.stringFlavor};
  }

  @Override
  public boolean isDataFlavorSupported(DataFlavor flavour) {
    return Arrays.asList(getTransferDataFlavors()).contains(flavour);
  }

  @Override
  public Object getTransferData(DataFlavor flavour) throws UnsupportedFlavorException {
    if (flavour.equals(HTML) || flavour.equals(DataFlavor.allHtmlFlavor)) {
      return html();
    }
    if (flavour.equals(PLAIN) || flavour.equals(DataFlavor.stringFlavor)) {
      return plain();
    }
    throw new UnsupportedFlavorException(flavour);
  }
}
