package hullalmanac.exchange.pdf;

import hullalmanac.core.record.Signature;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A signature as the pen went. */
record DrawnSignature(Signature signature) implements Drawn {
  private static final float PEN = 1.2f;

  @Override
  public void draw(Graphics2D g, Rectangle2D area) {
    double scale = Math.min(area.getWidth() / Signature.WIDTH, area.getHeight() / Signature.HEIGHT);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(PEN, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    signature.strokes().forEach(s -> g.draw(path(s.dots(), area, scale)));
  }

  /** A stroke that is but a point gets the width of the pen. */
  private static Path2D path(List<Signature.Dot> dots, Rectangle2D area, double scale) {
    Path2D path = new Path2D.Double();
    Signature.Dot first = dots.get(0);
    path.moveTo(area.getX() + first.x() * scale, area.getY() + first.y() * scale);
    dots.forEach(d -> path.lineTo(area.getX() + d.x() * scale, area.getY() + d.y() * scale));
    return path;
  }
}
