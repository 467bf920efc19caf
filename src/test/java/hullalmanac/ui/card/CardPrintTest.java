package hullalmanac.ui.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.awt.print.Printable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the printer is given, without one. */
class CardPrintTest {
  private static final int MARGIN = 54;

  private static PageFormat format(double width, double height) {
    Paper paper = new Paper();
    paper.setSize(width, height);
    paper.setImageableArea(MARGIN, MARGIN, width - 2 * MARGIN, height - 2 * MARGIN);
    PageFormat format = new PageFormat();
    format.setPaper(paper);
    return format;
  }

  private static int darkPixels(BufferedImage page) {
    int dark = 0;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        dark += (page.getRGB(x, y) & 0xff) < 100 ? 1 : 0;
      }
    }
    return dark;
  }

  /** A4 (ISO 216) and Letter (ANSI Y14.1) in points of 1/72 in. */
  @ParameterizedTest
  @CsvSource({"595.28, 841.89", "612, 792"})
  void aLongCardGoesOnOverPagesBlackOnWhite(double width, double height) throws Exception {
    StringBuilder html = new StringBuilder("<html><body><h1>Siskin</h1>");
    for (int i = 0; i < 60; i++) {
      html.append("<h2>Step ").append(i).append("</h2><p>1 part and 10 parts water</p>");
    }
    html.append("</body></html>");
    PageFormat format = format(width, height);
    SwingUtilities.invokeAndWait(
        () -> {
          Printable pages = CardPrint.printable(html.toString());
          int page = 0;
          while (printed(pages, format, page)) {
            page++;
          }
          assertThat(page).as("pages").isBetween(3, 12);
        });
  }

  private static boolean printed(Printable pages, PageFormat format, int page) {
    BufferedImage image =
        new BufferedImage(
            (int) format.getWidth(), (int) format.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, image.getWidth(), image.getHeight());
      boolean there = pages.print(g, format, page) == Printable.PAGE_EXISTS;
      if (there) {
        assertThat(darkPixels(image)).as("page " + page).isGreaterThan(100);
      }
      return there;
    } catch (java.awt.print.PrinterException e) {
      throw new IllegalStateException(e);
    } finally {
      g.dispose();
    }
  }
}
