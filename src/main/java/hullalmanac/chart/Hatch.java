package hullalmanac.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/**
 * A span of time with a light hatching, which stays apart from grey grounds also in print without
 * colour. It is drawn with lines, so that it is no picture on paper.
 */
final class Hatch extends AbstractXYAnnotation {
  private static final long serialVersionUID = 1L;
  private static final int STEP = 8;
  private static final int FAINT = 70;

  private final double from;
  private final double until;
  private final Color colour;

  /**
   * @param from its beginning on the time axis
   * @param until its end
   */
  Hatch(double from, double until, Color colour) {
    this.from = from;
    this.until = until;
    this.colour = colour;
  }

  @Override
  public void draw(
      Graphics2D g,
      XYPlot plot,
      Rectangle2D area,
      ValueAxis time,
      ValueAxis range,
      int rendererIndex,
      PlotRenderingInfo info) {
    RectangleEdge edge = plot.getDomainAxisEdge();
    double left = Math.max(area.getX(), time.valueToJava2D(from, area, edge));
    double right = Math.min(area.getMaxX(), time.valueToJava2D(until, area, edge));
    if (right <= left) {
      return;
    }
    Rectangle2D strip = new Rectangle2D.Double(left, area.getY(), right - left, area.getHeight());
    Shape clip = g.getClip();
    g.clip(strip);
    g.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), FAINT));
    g.setStroke(new BasicStroke(1));
    double height = area.getHeight();
    double bottom = area.getMaxY();
    double first = Math.floor((left - height - area.getX()) / STEP) * STEP + area.getX();
    for (double x = first; x < right; x += STEP) {
      g.draw(new Line2D.Double(x, bottom, x + height, bottom - height));
    }
    g.setClip(clip);
    g.setColor(colour);
    g.setStroke(Edges.FAR);
    g.draw(new Line2D.Double(left, area.getY(), left, bottom));
    g.draw(new Line2D.Double(right, area.getY(), right, bottom));
  }
}
