package hullalmanac.sample;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.exchange.photo.PhotoFiles;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/**
 * Pictures drawn by this program: no photograph of any boat. Plain shapes without smoothing, so
 * that the bytes never change.
 */
final class SamplePhotos {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 420;

  private SamplePhotos() {}

  /** Adds photos and the mark to the draft and returns their files by name. */
  static Map<String, byte[]> add(Draft d) {
    Map<String, byte[]> files = new TreeMap<>();
    int n = 0;
    for (Visit visit : d.visits) {
      if (n >= 18
          || visit.status() != VisitStatus.DONE
          || visit.surfaces().isEmpty()
          || !d.chance(0.25)) {
        continue;
      }
      Boat boat =
          d.boats.stream().filter(b -> b.id().equals(visit.boat())).findFirst().orElseThrow();
      for (Moment moment : List.of(Moment.BEFORE, Moment.AFTER)) {
        boolean dark = d.boats.indexOf(boat) % 5 == 0;
        byte[] png = draw(dark, moment == Moment.AFTER, n);
        String file = PhotoFiles.sha256(png) + ".png";
        files.put(file, png);
        d.photos.add(
            new Photo(
                d.id(),
                "p-" + (n + 1),
                boat.id(),
                Optional.of(visit.surfaces().get(0).surface()),
                Optional.of(visit.id()),
                Optional.of(visit.day().atTime(moment == Moment.BEFORE ? 8 : 16, 10 + n)),
                moment,
                file,
                moment == Moment.BEFORE ? "as she lay" : "polished and sealed"));
        n++;
      }
    }
    byte[] mark = SampleMark.png();
    d.mark = PhotoFiles.sha256(mark) + ".png";
    files.put(d.mark, mark);
    return files;
  }

  private static byte[] draw(boolean dark, boolean shining, int n) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(0xDCE6E8));
    g.fillRect(0, 0, WIDTH, HEIGHT);
    g.setColor(new Color(0x7FA3A8));
    g.fillRect(0, 300, WIDTH, HEIGHT - 300);
    Color hull = dark ? new Color(0x24476B) : new Color(0xF4F1E8);
    Color dull = dark ? new Color(0x6A7F93) : new Color(0xD8D2C2);
    g.setColor(shining ? hull : dull);
    g.fillPolygon(
        new Polygon(new int[] {60, 590, 520, 120}, new int[] {170 + n % 9, 150, 320, 320}, 4));
    g.setColor(new Color(0x8A2F2B));
    g.fillRect(112, 316, 414, 14);
    g.setColor(shining ? Color.WHITE : dull.darker());
    for (int i = 0; i < 6; i++) {
      int x = 150 + i * 62 + n % 7;
      g.fillRect(x, shining ? 190 : 240, shining ? 34 : 18, shining ? 6 : 3);
    }
    if (!shining) {
      g.setColor(new Color(0xA48A5C));
      for (int i = 0; i < 5; i++) {
        g.fillRect(180 + i * 70 + n * 3, 260, 3, 44);
      }
    }
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
