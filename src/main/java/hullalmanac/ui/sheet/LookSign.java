package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import javax.swing.Icon;

/** A triangle with a stroke and a dot in it: look at this. */
final class LookSign implements Icon {
  private static final int SIDE = 14;

  private final Color colour;

  LookSign(Color colour) {
    this.colour = colour;
  }

  @Override
  public int getIconWidth() {
    return UIScale.scale(SIDE + 2);
  }

  @Override
  public int getIconHeight() {
    return UIScale.scale(SIDE);
  }

  @Override
  public void paintIcon(Component c, Graphics graphics, int x, int y) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.translate(x, y);
    double zoom = UIScale.scale(1f);
    g.scale(zoom, zoom);
    g.setColor(colour);
    g.setStroke(new BasicStroke(1.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    Path2D triangle = new Path2D.Double();
    triangle.moveTo(7, 1.5);
    triangle.lineTo(13, 12.5);
    triangle.lineTo(1, 12.5);
    triangle.closePath();
    g.draw(triangle);
    g.draw(new Line2D.Double(7, 5.5, 7, 8.5));
    g.fill(new Ellipse2D.Double(6.2, 10, 1.6, 1.6));
    g.dispose();
  }
}
