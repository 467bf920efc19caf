package hullalmanac.exchange.pdf;

import hullalmanac.core.record.Pixels;
import java.awt.image.BufferedImage;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** The pages of a paper that was made here: to look at, to hear read, to print. */
public final class PaperPages {
  private PaperPages() {}

  /** What stands on each page, in the order in which it is read. */
  public static List<String> texts(PaperPdf.Made made) {
    try (PDDocument document = Loader.loadPDF(made.bytes())) {
      List<String> texts = new ArrayList<>();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper reader = new PDFTextStripper();
        reader.setStartPage(page);
        reader.setEndPage(page);
        texts.add(reader.getText(document).strip());
      }
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException("a paper that was just made cannot be read", e);
    }
  }

  /**
   * A page as a picture.
   *
   * @param index of the page, from 0
   * @param width in pixels, at least 1
   */
  public static Pixels picture(PaperPdf.Made made, int index, int width) {
    try (PDDocument document = Loader.loadPDF(made.bytes())) {
      float points = document.getPage(index).getCropBox().getWidth();
      BufferedImage image =
          new PDFRenderer(document).renderImage(index, width / points, ImageType.RGB);
      int w = image.getWidth();
      int h = image.getHeight();
      return new Pixels(w, h, image.getRGB(0, 0, w, h, null, 0, w));
    } catch (IOException e) {
      throw new UncheckedIOException("a paper that was just made cannot be drawn", e);
    }
  }

  /**
   * Prints all pages at their own size; takes as long as the printer takes.
   *
   * @param job for which a printer was chosen
   */
  public static void print(PaperPdf.Made made, PrinterJob job) throws PrinterException {
    try (PDDocument document = Loader.loadPDF(made.bytes())) {
      job.setPageable(new PDFPageable(document));
      job.print();
    } catch (IOException e) {
      throw new UncheckedIOException("a paper that was just made cannot be read", e);
    }
  }
}
