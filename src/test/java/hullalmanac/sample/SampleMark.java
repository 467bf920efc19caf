package hullalmanac.sample;

import hullalmanac.core.record.Pixels;
import hullalmanac.exchange.photo.PixelImages;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;

/** The mark of the made-up business, drawn by this program: a bird over two waves. */
final class SampleMark {
  private static final int WIDTH = 900;
  private static final int HEIGHT = 420;
  private static final Color INK = new Color(0x0F5C5C);

  private SampleMark() {}

  /** As a PNG, whose bytes never change. */
  static byte[] png() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setColor(INK);
    g.fill(bird());
    g.fill(wave(300));
    g.fill(wave(365));
    g.dispose();
    return PixelImages.png(
        new Pixels(WIDTH, HEIGHT, image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH)));
  }

  /** Two wings, each between two arcs. */
  private static Path2D bird() {
    Path2D wings = new Path2D.Double();
    wings.moveTo(150, 60);
    wings.quadTo(330, 60, 450, 210);
    wings.quadTo(570, 60, 750, 60);
    wings.quadTo(590, 110, 460, 260);
    wings.lineTo(440, 260);
    wings.quadTo(310, 110, 150, 60);
    wings.closePath();
    return wings;
  }

  /** A band between two rows of arcs. */
  private static Area wave(double y) {
    Area band = new Area();
    for (int i = 0; i < 3; i++) {
      Area arc = new Area(new Ellipse2D.Double(60 + i * 260, y - 40, 260, 90));
      arc.subtract(new Area(new Ellipse2D.Double(60 + i * 260, y - 62, 260, 90)));
      band.add(arc);
    }
    return band;
  }
}
