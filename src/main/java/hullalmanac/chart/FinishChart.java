package hullalmanac.chart;

import hullalmanac.core.finish.GlossPath;
import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/**
 * Gloss before the work and after each stage of a plan: a dot where it is as likely above as below,
 * a bar that holds it 8 times in 10, and a dashed line at the gloss that was agreed.
 */
public final class FinishChart {
  private static final double ROOM = 3;
  private static final double HIGHEST_UNIT = 10;
  private static final BasicStroke DASHED =
      new BasicStroke(
          1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0);

  private FinishChart() {}

  /** Draws the way of a plan. */
  public static JFreeChart of(GlossPath path, ChartColours colours) {
    XYPlot plot = new XYPlot();
    plot.setBackgroundPaint(null);
    plot.setOutlinePaint(colours.line());
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinePaint(colours.line());
    plot.setRangeGridlineStroke(new BasicStroke(0.5f));
    plot.setDomainAxis(stages(path, colours));
    NumberAxis gloss = gloss(path, colours);
    plot.setRangeAxis(gloss);
    way(plot, path, colours);
    matt(plot, path, gloss.getLowerBound(), colours);
    agreed(plot, path.agreed(), colours);
    JFreeChart chart = new JFreeChart(null, colours.font(), plot, false);
    chart.setBackgroundPaint(colours.ground());
    chart.setPadding(new RectangleInsets(4, 0, 0, 8));
    return chart;
  }

  private static SymbolAxis stages(GlossPath path, ChartColours colours) {
    String[] names = path.points().stream().map(GlossPath.Point::name).toArray(String[]::new);
    SymbolAxis axis = new SymbolAxis(null, names);
    axis.setRange(-0.5, names.length - 0.5);
    axis.setGridBandsVisible(false);
    axis.setTickLabelFont(colours.font());
    axis.setTickLabelPaint(colours.text());
    axis.setAxisLineVisible(false);
    axis.setTickMarkPaint(colours.line());
    return axis;
  }

  private static NumberAxis gloss(GlossPath path, ChartColours colours) {
    double low = path.agreed();
    double high = path.agreed();
    for (GlossPath.Point p : path.points()) {
      low = Math.min(low, p.low().orElse(low));
      high = Math.max(high, p.high().orElse(high));
    }
    NumberAxis axis = new NumberAxis("gloss at 60°");
    axis.setRange(Math.max(0, low - ROOM), high + ROOM);
    axis.setTickUnit(new NumberTickUnit(high - low > 3 * HIGHEST_UNIT ? HIGHEST_UNIT : 5));
    axis.setLabelFont(colours.font());
    axis.setLabelPaint(colours.quiet());
    axis.setTickLabelFont(colours.font());
    axis.setTickLabelPaint(colours.quiet());
    axis.setAxisLineVisible(false);
    axis.setTickMarkPaint(colours.line());
    return axis;
  }

  private static void way(XYPlot plot, GlossPath path, ChartColours colours) {
    YIntervalSeries series = new YIntervalSeries("gloss");
    List<GlossPath.Point> points = path.points();
    for (int i = 0; i < points.size(); i++) {
      GlossPath.Point p = points.get(i);
      if (p.middle().isPresent()) {
        series.add(i, p.middle().getAsDouble(), p.low().orElseThrow(), p.high().orElseThrow());
      }
    }
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(series);
    XYErrorRenderer renderer = new XYErrorRenderer();
    renderer.setDrawXError(false);
    renderer.setSeriesLinesVisible(0, true);
    renderer.setSeriesPaint(0, colours.accent());
    renderer.setSeriesStroke(0, new BasicStroke(1.4f));
    renderer.setErrorPaint(colours.accent());
    renderer.setErrorStroke(new BasicStroke(2.2f));
    renderer.setCapLength(8);
    double radius = 0.35 * colours.font().getSize2D();
    renderer.setSeriesShape(0, new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius));
    plot.setDataset(0, data);
    plot.setRenderer(0, renderer);
  }

  /** A surface that is matt from paper has no gloss to draw; it says so where the dot would be. */
  private static void matt(XYPlot plot, GlossPath path, double bottom, ChartColours colours) {
    List<GlossPath.Point> points = path.points();
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).middle().isEmpty()) {
        XYTextAnnotation word = new XYTextAnnotation("matt", i, bottom + 1);
        word.setFont(colours.font());
        word.setPaint(colours.quiet());
        word.setTextAnchor(TextAnchor.BOTTOM_CENTER);
        plot.addAnnotation(word);
      }
    }
  }

  private static void agreed(XYPlot plot, double gloss, ChartColours colours) {
    ValueMarker marker = new ValueMarker(gloss, colours.text(), DASHED);
    marker.setAlpha(1f);
    marker.setLabel(String.format(Locale.ROOT, " agreed %.0f ", gloss));
    marker.setLabelFont(colours.font());
    marker.setLabelPaint(colours.text());
    marker.setLabelBackgroundColor(colours.ground());
    marker.setLabelAnchor(RectangleAnchor.TOP_LEFT);
    marker.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
    plot.addRangeMarker(marker);
  }
}
