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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes pictures of the first page of each kind of paper of the sample. */
final class PaperPictures {
  private static final int WIDTH = 720;
  private static final int SMALL = 300;
  private static final int BESIDE = 4;
  private static final int GAP = 12;
  private static final int GROUND = 0xffb4b4b4;

  private PaperPictures() {}

  /** Writes {@code paper-KIND.png} for each kind. */
  static void write(Path folder) throws IOException {
    Map<String, Paper> kinds = new LinkedHashMap<>();
    for (EveryPaper.Named one : EveryPaper.kinds(OpenSample.fleet())) {
      kinds.putIfAbsent(one.name().split(" ", 2)[0], one.paper());
    }
    List<Pixels> pages = new ArrayList<>();
    for (Map.Entry<String, Paper> kind : kinds.entrySet()) {
      PaperPdf.Made made = PaperPdf.of(kind.getValue(), EveryPaper.PHOTOS);
      Pixels page = PaperPages.picture(made, 0, WIDTH);
      Files.write(folder.resolve("paper-" + kind.getKey() + ".png"), PixelImages.png(page));
      pages.add(PaperPages.picture(made, 0, SMALL));
    }
    Files.write(folder.resolve("paper-kinds.png"), PixelImages.png(together(pages)));
  }

  /** All of them on one picture, four beside each other. */
  private static Pixels together(List<Pixels> pages) {
    int high = pages.stream().mapToInt(Pixels::height).max().orElseThrow();
    int rows = (pages.size() + BESIDE - 1) / BESIDE;
    int width = BESIDE * (SMALL + GAP) + GAP;
    int height = rows * (high + GAP) + GAP;
    int[] all = new int[width * height];
    Arrays.fill(all, GROUND);
    for (int i = 0; i < pages.size(); i++) {
      Pixels page = pages.get(i);
      int[] argb = page.argb();
      int left = GAP + i % BESIDE * (SMALL + GAP);
      int top = GAP + i / BESIDE * (high + GAP);
      for (int y = 0; y < page.height(); y++) {
        System.arraycopy(argb, y * page.width(), all, (top + y) * width + left, page.width());
      }
    }
    return new Pixels(width, height, all);
  }

  public static void main(String[] arguments) throws IOException {
    write(Path.of(arguments[0]));
  }
}
