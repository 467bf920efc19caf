package hullalmanac.exchange.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.paper.Block;
import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Pixels;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.print.DocFlavor;
import javax.print.StreamPrintService;
import javax.print.StreamPrintServiceFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pages looked at and handed to a printer. */
@Tag("slow")
class PaperPagesTest {
  private static PaperPdf.Made made(Business.Paper size) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      blocks.add(new Block.Words("Line " + i));
    }
    return PaperPdf.of(
        new Paper("Long", "", new Paper.Sender("Tern & Tide", List.of(), "", ""), size, blocks),
        Path.of("unused"));
  }

  @Test
  void eachPageIsReadByItself() {
    List<String> texts = PaperPages.texts(made(Business.Paper.A4));
    assertThat(texts).hasSizeBetween(3, 5);
    assertThat(texts.get(0)).contains("Tern & Tide").contains("Line 0").doesNotContain("Line 119");
    assertThat(texts.get(texts.size() - 1)).contains("Line 119").doesNotContain("Tern & Tide");
  }

  /** ISO 216 and ANSI Y14.1. */
  @ParameterizedTest
  @CsvSource({"A4, 210, 297", "LETTER, 8.5, 11"})
  void aPageHasItsShapeAndSomethingOnIt(Business.Paper size, double width, double height) {
    Pixels page = PaperPages.picture(made(size), 1, 420);
    assertThat(page.width()).isEqualTo(420);
    assertThat(page.height()).isCloseTo((int) Math.round(420 * height / width), within(1));
    long ink = java.util.Arrays.stream(page.argb()).filter(p -> (p & 0xff) < 128).count();
    assertThat(ink).isGreaterThan(300);
  }

  /**
   * A printer that writes PostScript, which Java brings along: pages are counted as its document
   * structuring conventions have them, and each is the size of the paper in points.
   */
  @ParameterizedTest
  @CsvSource({"A4, 595, 841", "LETTER, 612, 792"})
  void allPagesComeOutOfThePrinterAtTheirSize(Business.Paper size, int width, int height)
      throws Exception {
    PaperPdf.Made made = made(size);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StreamPrintServiceFactory postScript =
        StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
            DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0];
    StreamPrintService printer = postScript.getPrintService(out);
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setPrintService(printer);
    PaperPages.print(made, job);
    printer.dispose();
    String printed = out.toString(StandardCharsets.ISO_8859_1);
    int pages = PaperPages.texts(made).size();
    assertThat(printed.lines().filter(l -> l.startsWith("%%Page:"))).hasSize(pages);
    assertThat(printed).containsPattern("/PageSize\\s*\\[\\s*" + width + "[.0-9]*\\s+" + height);
  }
}
