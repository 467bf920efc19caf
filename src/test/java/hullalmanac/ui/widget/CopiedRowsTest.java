package hullalmanac.ui.widget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.text.MutableAttributeSet;
import javax.swing.text.html.HTML;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.parser.ParserDelegator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What lies on the clipboard after copying, without a clipboard. */
class CopiedRowsTest {
  private static final CopiedRows TRICKY =
      new CopiedRows(
          List.of("Boat", "Note"),
          List.of(
              List.of("Tern & <b>Tide</b>", "two\tparts"),
              List.of("\"O'Hara\"", "first line\r\nsecond line"),
              List.of("7½ months – by 3 Jun", "")));

  private static String plain(CopiedRows rows) throws Exception {
    return (String) rows.getTransferData(DataFlavor.stringFlavor);
  }

  private static String html(CopiedRows rows) throws Exception {
    return (String) rows.getTransferData(new DataFlavor("text/html;class=java.lang.String"));
  }

  @Test
  void isPlainTextWithTabsAndAlsoATable() throws Exception {
    assertThat(plain(TRICKY))
        .isEqualTo(
            """
            Boat\tNote
            Tern & <b>Tide</b>\ttwo parts
            "O'Hara"\tfirst line second line
            7½ months – by 3 Jun\t
            """);
    assertThat(html(TRICKY))
        .isEqualTo(
            """
            <html><body><table>
            <tr><th>Boat</th><th>Note</th></tr>
            <tr><td>Tern &amp; &lt;b&gt;Tide&lt;/b&gt;</td><td>two&#9;parts</td></tr>
            <tr><td>&quot;O'Hara&quot;</td><td>first line<br>second line</td></tr>
            <tr><td>7&#189; months &#8211; by 3 Jun</td><td></td></tr>
            </table></body></html>
            """);
  }

  @Test
  void isOfferedAsPlainTextAndAsHtmlAndAsNothingElse() throws Exception {
    assertThat(Stream.of(TRICKY.getTransferDataFlavors()))
        .hasSize(4)
        .allMatch(TRICKY::isDataFlavorSupported);
    for (String mime : List.of("text/plain", "text/html")) {
      DataFlavor flavour = new DataFlavor(mime + ";class=java.lang.String");
      assertThat(TRICKY.isDataFlavorSupported(flavour)).as(mime).isTrue();
      assertThat(TRICKY.getTransferData(flavour)).as(mime).asString().contains("Boat");
    }
    assertThat(TRICKY.getTransferData(DataFlavor.allHtmlFlavor)).isEqualTo(html(TRICKY));
    assertThat(TRICKY.isDataFlavorSupported(DataFlavor.imageFlavor)).isFalse();
    assertThatThrownBy(() -> TRICKY.getTransferData(DataFlavor.imageFlavor))
        .isInstanceOf(UnsupportedFlavorException.class);
  }

  @Test
  void rowsWithoutAHeaderHaveNone() throws Exception {
    CopiedRows rows = new CopiedRows(List.of(), List.of(List.of("a", "b")));
    assertThat(plain(rows)).isEqualTo("a\tb\n");
    assertThat(html(rows)).doesNotContain("<th>").contains("<tr><td>a</td><td>b</td></tr>");
  }

  /** Any text comes through: read back by the HTML parser of Java's own Swing. */
  @Property(tries = 300)
  void anHtmlReaderFindsEveryCellAgain(@ForAll("tables") List<List<String>> rows) throws Exception {
    String html = html(new CopiedRows(List.of(), rows));
    assertThat(html.chars()).allMatch(c -> c == '\n' || (c >= ' ' && c <= '~'));
    assertThat(cells(html)).isEqualTo(rows.stream().flatMap(List::stream).toList());
  }

  /** In plain text each row is one line of as many texts. */
  @Property(tries = 300)
  void everyRowIsOneLineOfAsManyTexts(@ForAll("tables") List<List<String>> rows) throws Exception {
    List<String> lines = plain(new CopiedRows(List.of(), rows)).lines().toList();
    assertThat(lines).hasSameSizeAs(rows);
    for (int i = 0; i < rows.size(); i++) {
      assertThat(lines.get(i).split("\t", -1)).hasSameSizeAs(rows.get(i));
    }
  }

  /** Texts begin and end with a letter, since HTML drops blanks at the ends of a cell. */
  @Provide
  Arbitrary<List<List<String>>> tables() {
    Arbitrary<String> text =
        Arbitraries.strings()
            .withChars('<', '>', '&', '"', '\'', ';', '#', 'n', 'b', 's', 'p', '/', '½', 'é', '–')
            .withChars('\n')
            .ofMaxLength(12)
            .map(s -> "x" + s + "y");
    return text.list().ofSize(3).list().ofMinSize(1).ofMaxSize(4);
  }

  private static List<String> cells(String html) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    HTMLEditorKit.ParserCallback reader =
        new HTMLEditorKit.ParserCallback() {
          @Override
          public void handleStartTag(HTML.Tag tag, MutableAttributeSet attributes, int at) {
            if (tag == HTML.Tag.TD) {
              cell.setLength(0);
            }
          }

          @Override
          public void handleSimpleTag(HTML.Tag tag, MutableAttributeSet attributes, int at) {
            if (tag == HTML.Tag.BR) {
              cell.append('\n');
            }
          }

          @Override
          public void handleText(char[] text, int at) {
            cell.append(text);
          }

          @Override
          public void handleEndTag(HTML.Tag tag, int at) {
            if (tag == HTML.Tag.TD) {
              cells.add(cell.toString());
            }
          }
        };
    try {
      new ParserDelegator().parse(new StringReader(html), reader, true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return cells;
  }
}
