package hullalmanac.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/** A coat's name at the top of its lane, shortened where the next coat leaves no room for it. */
final class CoatName extends AbstractXYAnnotation {
  private static final long serialVersionUID = 1L;
  private static final String MORE = "…";

  private final String name;
  private final double from;
  private final double until;
  private final Font font;
  private final Color colour;

  /**
   * @param from the coat's place on the time axis
   * @param until the next one's
   */
  CoatName(String name, double from, double until, Font font, Color colour) {
    this.name = name;
    this.from = from;
    this.until = until;
    this.font = font;
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
    double gap = font.getSize2D() / 2;
    double x = Math.max(area.getX(), time.valueToJava2D(from, area, edge)) + gap;
    double end = Math.min(area.getMaxX(), time.valueToJava2D(until, area, edge)) - gap / 2;
    FontMetrics metrics = g.getFontMetrics(font);
    String text = fitting(metrics, end - x);
    g.setFont(font);
    g.setColor(colour);
    g.drawString(text, (float) x, (float) (area.getY() + metrics.getAscent() + gap / 2));
  }

  private String fitting(FontMetrics metrics, double room) {
    if (metrics.stringWidth(name) <= room) {
      return name;
    }
    int letters = name.length();
    while (letters > 0 && metrics.stringWidth(name.substring(0, letters) + MORE) > room) {
      letters--;
    }
    return letters < 3 ? "" : name.substring(0, letters).strip() + MORE;
  }
}
