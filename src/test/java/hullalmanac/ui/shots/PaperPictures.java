package hullalmanac.ui.shots;

import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Pixels;
import hullalmanac.exchange.pdf.PaperPages;
import hullalmanac.exchange.pdf.PaperPdf;
import hullalmanac.exchange.photo.PixelImages;
import hullalmanac.fixture.EveryPaper;
import hullalmanac.fixture.OpenSample;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes a picture of the first page of each kind of paper of the sample. */
final class PaperPictures {
  private static final int WIDTH = 720;

  private PaperPictures() {}

  /** Writes {@code paper-KIND.png} for each kind. */
  static void write(Path folder) throws IOException {
    Map<String, Paper> kinds = new LinkedHashMap<>();
    for (EveryPaper.Named one : EveryPaper.kinds(OpenSample.fleet())) {
      kinds.putIfAbsent(one.name().split(" ", 2)[0], one.paper());
    }
    for (Map.Entry<String, Paper> kind : kinds.entrySet()) {
      PaperPdf.Made made = PaperPdf.of(kind.getValue(), EveryPaper.PHOTOS);
      Pixels page = PaperPages.picture(made, 0, WIDTH);
      Files.write(folder.resolve("paper-" + kind.getKey() + ".png"), PixelImages.png(page));
    }
  }

  public static void main(String[] arguments) throws IOException {
    write(Path.of(arguments[0]));
  }
}
