package hullalmanac.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.RenderingHints;
import java.awt.TexturePaint;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** A light hatching, which stays apart from grey grounds also in print without colour. */
record Hatch(Color colour) {
  private static final int SIZE = 8;

  Paint paint() {
    BufferedImage tile = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = tile.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 70));
    g.drawLine(0, SIZE, SIZE, 0);
    g.drawLine(-1, 1, 1, -1);
    g.drawLine(SIZE - 1, SIZE + 1, SIZE + 1, SIZE - 1);
    g.dispose();
    return new TexturePaint(tile, new Rectangle2D.Double(0, 0, SIZE, SIZE));
  }
}
