package hullalmanac.study;

import hullalmanac.core.record.ProductKind;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;

/** A line a product: the share of true days that its ranges hold, with two standard errors. */
final class StudyPicture {
  private static final int WIDTH = 860;
  private static final int ROW = 44;
  private static final int LEFT = 190;
  private static final int TOP = 40;
  private static final Color INK = new Color(0x20, 0x2B, 0x33);
  private static final Color GREY = new Color(0x6B, 0x77, 0x80);
  private static final Color BAND = new Color(0xDD, 0xEB, 0xE6);
  private static final Color ALL = new Color(0x0F, 0x6B, 0x5C);
  private static final Color WATER = new Color(0x9A, 0x5B, 0x13);

  private StudyPicture() {}

  static void write(
      Path file, List<ProductKind> products, List<Study.One> gloss, List<Study.One> water)
      throws IOException {
    int height = TOP + ROW * products.size() + 60;
    BufferedImage image = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, WIDTH, height);
    g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
    g.setColor(BAND);
    g.fillRect(x(0.75), TOP - 8, x(0.85) - x(0.75), ROW * products.size() + 8);
    axis(g, TOP + ROW * products.size());
    for (int i = 0; i < products.size(); i++) {
      ProductKind kind = products.get(i);
      int y = TOP + ROW * i + ROW / 2;
      g.setColor(INK);
      g.drawString(kind.words(), 16, y + 5);
      dot(g, Estimate.over(gloss, one -> Study.held(Study.of(kind, one))), y - 6, ALL);
      dot(g, Estimate.over(water, one -> Study.held(Study.of(kind, one))), y + 8, WATER);
    }
    g.setColor(ALL);
    g.drawString("water and gloss", LEFT, 22);
    g.setColor(WATER);
    g.drawString("water only", LEFT + 140, 22);
    g.dispose();
    ImageIO.write(image, "png", file.toFile());
  }

  private static void axis(Graphics2D g, int y) {
    g.setColor(GREY);
    g.setStroke(new BasicStroke(1));
    g.drawLine(x(0.6), y, x(1), y);
    for (int percent = 60; percent <= 100; percent += 10) {
      g.drawLine(x(percent / 100.0), y, x(percent / 100.0), y + 5);
      g.drawString(percent + " %", x(percent / 100.0) - 16, y + 22);
    }
    g.drawString("share of true days in the 80 % range; aim: the band", LEFT, y + 46);
  }

  private static void dot(Graphics2D g, Estimate e, int y, Color colour) {
    g.setColor(colour);
    g.setStroke(new BasicStroke(2));
    g.draw(new Line2D.Double(x(e.mean() - 2 * e.error()), y, x(e.mean() + 2 * e.error()), y));
    g.fill(new Ellipse2D.Double(x(e.mean()) - 5, y - 5, 10, 10));
  }

  private static int x(double share) {
    return (int) Math.round(LEFT + (WIDTH - LEFT - 40) * (share - 0.6) / 0.4);
  }
}
