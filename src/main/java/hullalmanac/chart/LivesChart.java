package hullalmanac.chart;

import hullalmanac.core.life.Survival;
import hullalmanac.core.life.fit.SurvivalStep;
import java.awt.BasicStroke;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationStepRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** How many in ten of a product's coats still protect, by months: steps seen, curve, label. */
public final class LivesChart {
  private static final double MOST_WITH_ROOM = 0.75;
  private static final BasicStroke FIRM = new BasicStroke(1.6f);
  private static final BasicStroke DASHED =
      new BasicStroke(
          1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0);

  private LivesChart() {}

  /**
   * Draws what is known of a product's lives.
   *
   * @param months where the axis ends; the same for two that stand side by side
   */
  public static JFreeChart of(
      Survival survival, Optional<Double> label, double months, ChartColours colours) {
    XYPlot plot = new XYPlot();
    plot.setBackgroundPaint(null);
    plot.setOutlinePaint(colours.line());
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinePaint(colours.line());
    plot.setRangeGridlineStroke(new BasicStroke(0.5f));
    plot.setDomainAxis(axis("months at the reference berth", months, step(months), colours));
    plot.setRangeAxis(axis("still protected, of 10", 10, 2, colours));
    curve(plot, survival, colours);
    steps(plot, survival, months, colours);
    label.filter(m -> m <= months).ifPresent(m -> label(plot, m, months, colours));
    JFreeChart chart = new JFreeChart(null, colours.font(), plot, false);
    chart.setBackgroundPaint(colours.ground());
    chart.setPadding(new RectangleInsets(4, 0, 0, 8));
    return chart;
  }

  /** Months that an axis needs to show a product's curve and its label. */
  public static double months(Survival survival, Optional<Double> label) {
    double last = survival.curve().get(survival.curve().size() - 1).months();
    return Math.ceil(Math.max(last, label.orElse(0.0) * 1.08));
  }

  private static double step(double months) {
    return months > 60 ? 12 : months > 24 ? 6 : months > 12 ? 3 : months > 6 ? 2 : 1;
  }

  private static NumberAxis axis(String name, double until, double unit, ChartColours colours) {
    NumberAxis axis = new NumberAxis(name);
    axis.setRange(0, until);
    axis.setTickUnit(new NumberTickUnit(unit));
    axis.setLabelFont(colours.font());
    axis.setLabelPaint(colours.quiet());
    axis.setTickLabelFont(colours.font());
    axis.setTickLabelPaint(colours.quiet());
    axis.setAxisLineVisible(false);
    axis.setTickMarkPaint(colours.quiet());
    return axis;
  }

  private static void curve(XYPlot plot, Survival survival, ChartColours colours) {
    XYSeries line = new XYSeries("what the forecast uses");
    survival.curve().forEach(p -> line.add(p.months(), 10 * p.surviving()));
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setSeriesPaint(0, colours.accent());
    renderer.setSeriesStroke(0, new BasicStroke(2.2f));
    plot.setDataset(0, new XYSeriesCollection(line));
    plot.setRenderer(0, renderer);
  }

  private static void steps(XYPlot plot, Survival survival, double months, ChartColours colours) {
    if (survival.steps().isEmpty()) {
      return;
    }
    YIntervalSeries series = new YIntervalSeries("what was seen");
    series.add(0, 10, 10, 10);
    double low = 10;
    double high = 10;
    double last = 10;
    for (SurvivalStep s : survival.steps()) {
      if (s.until() > months) {
        break;
      }
      last = 10 * s.surviving();
      low = s.band().map(b -> 10 * b.lower()).orElse(Math.min(low, last));
      high = Math.max(last, s.band().map(b -> 10 * b.upper()).orElse(high));
      series.add(s.until(), last, low, high);
    }
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(series);
    DeviationStepRenderer renderer = new DeviationStepRenderer(true, false);
    renderer.setSeriesPaint(0, colours.hue(0));
    renderer.setSeriesFillPaint(0, colours.hue(0));
    renderer.setSeriesStroke(0, FIRM);
    renderer.setAlpha(0.14f);
    plot.setDataset(1, data);
    plot.setRenderer(1, renderer);
    edges(plot, series, colours);
  }

  private static void edges(XYPlot plot, YIntervalSeries band, ChartColours colours) {
    XYSeries low = new XYSeries("lower end");
    XYSeries high = new XYSeries("upper end");
    for (int i = 0; i < band.getItemCount(); i++) {
      low.add(band.getX(i).doubleValue(), band.getYLowValue(i));
      high.add(band.getX(i).doubleValue(), band.getYHighValue(i));
    }
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(low);
    data.addSeries(high);
    XYStepRenderer renderer = new XYStepRenderer();
    for (int i = 0; i < data.getSeriesCount(); i++) {
      renderer.setSeriesPaint(i, colours.hue(0));
      renderer.setSeriesStroke(i, Edges.FAR);
    }
    plot.setDataset(2, data);
    plot.setRenderer(2, renderer);
  }

  private static void label(XYPlot plot, double months, double end, ChartColours colours) {
    ValueMarker marker = new ValueMarker(months, colours.text(), DASHED);
    marker.setAlpha(1f);
    marker.setLabel(" label ");
    marker.setLabelFont(colours.font());
    marker.setLabelPaint(colours.text());
    marker.setLabelBackgroundColor(colours.ground());
    boolean roomAtRight = months < MOST_WITH_ROOM * end;
    marker.setLabelAnchor(roomAtRight ? RectangleAnchor.TOP_RIGHT : RectangleAnchor.TOP_LEFT);
    marker.setLabelTextAnchor(roomAtRight ? TextAnchor.TOP_LEFT : TextAnchor.TOP_RIGHT);
    plot.addDomainMarker(marker);
  }
}
