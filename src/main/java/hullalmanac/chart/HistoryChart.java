package hullalmanac.chart;

import hullalmanac.core.life.GlossPoint;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.core.report.BoatTimeline.Lane;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.labels.XYToolTipGenerator;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/**
 * One boat over time: a lane a surface, coats as marks, gloss as dots, the model as a band into the
 * future.
 */
public final class HistoryChart {
  private static final int GLOSS_WEIGHT = 22;
  private static final int PLAIN_WEIGHT = 11;
  private static final double UNDER_NAMES = 0.62;
  private static final BasicStroke HAIR = new BasicStroke(1f);
  private static final BasicStroke FIRM = new BasicStroke(1.5f);
  private static final BasicStroke DASHED =
      new BasicStroke(
          1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0);
  private static final BasicStroke ASHORE =
      new BasicStroke(4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter LONG =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  private final BoatTimeline timeline;
  private final ChartColours colours;

  private HistoryChart(BoatTimeline timeline, ChartColours colours) {
    this.timeline = timeline;
    this.colours = colours;
  }

  /** Draws a boat's timeline. */
  public static JFreeChart of(BoatTimeline timeline, ChartColours colours) {
    return new HistoryChart(timeline, colours).chart();
  }

  /** Height, in units of a line of small text, at which a timeline can be read. */
  public static int lines(BoatTimeline timeline) {
    int weight = 0;
    for (Lane lane : timeline.lanes()) {
      weight += hasGloss(lane) ? GLOSS_WEIGHT : PLAIN_WEIGHT;
    }
    return 3 + weight * 3 / PLAIN_WEIGHT;
  }

  private static boolean hasGloss(Lane lane) {
    return !lane.gloss().isEmpty();
  }

  private JFreeChart chart() {
    CombinedDomainXYPlot all = new CombinedDomainXYPlot(timeAxis());
    all.setGap(8);
    all.setBackgroundPaint(null);
    all.setInsets(new RectangleInsets(4, 0, 0, 4));
    for (int i = 0; i < timeline.lanes().size(); i++) {
      Lane lane = timeline.lanes().get(i);
      all.add(lane(lane, colours.hue(i), i == 0), hasGloss(lane) ? GLOSS_WEIGHT : PLAIN_WEIGHT);
    }
    JFreeChart chart = new JFreeChart(null, colours.font(), all, false);
    chart.setBackgroundPaint(colours.ground());
    chart.setPadding(new RectangleInsets(0, 0, 0, 0));
    return chart;
  }

  private DateAxis timeAxis() {
    DateAxis axis = new DateAxis(null, TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ENGLISH);
    axis.setRange(millis(timeline.from()), millis(timeline.until()));
    axis.setDateFormatOverride(new MonthFormat());
    axis.setTickLabelFont(colours.font());
    axis.setTickLabelPaint(colours.quiet());
    axis.setAxisLineVisible(false);
    axis.setTickMarkPaint(colours.quiet());
    return axis;
  }

  /** Month and year; JFreeChart wants a format of its old kind. */
  private static final class MonthFormat extends java.text.SimpleDateFormat {
    private static final long serialVersionUID = 1L;

    MonthFormat() {
      super("MMM yyyy", Locale.ENGLISH);
      setTimeZone(TimeZone.getTimeZone(ZoneOffset.UTC));
    }
  }

  private XYPlot lane(Lane lane, Color hue, boolean first) {
    XYPlot plot = new XYPlot();
    plot.setBackgroundPaint(null);
    plot.setOutlinePaint(colours.line());
    plot.setOutlineStroke(HAIR);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinePaint(colours.line());
    plot.setRangeGridlineStroke(new BasicStroke(0.5f));
    plot.setRangeGridlinesVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    nameAxis(plot, lane);
    water(plot, lane, hue);
    if (hasGloss(lane)) {
      glossAxis(plot, lane);
      gloss(plot, lane, hue);
    }
    marks(plot, lane, first);
    return plot;
  }

  /** The axis at the left carries the lane's name and runs from 0 to 1 for drops. */
  private void nameAxis(XYPlot plot, Lane lane) {
    NumberAxis axis = new NumberAxis(padded(lane.name()));
    axis.setRange(0, 1);
    axis.setLabelAngle(Math.PI / 2);
    axis.setLabelFont(colours.font().deriveFont(Font.BOLD));
    axis.setLabelPaint(colours.text());
    axis.setTickLabelsVisible(false);
    axis.setTickMarksVisible(false);
    axis.setAxisLineVisible(false);
    plot.setRangeAxis(0, axis);
    plot.setRangeAxisLocation(0, AxisLocation.BOTTOM_OR_LEFT);
  }

  private static String padded(String name) {
    return name.length() > 22 ? name.substring(0, 21) + "…" : name;
  }

  private void glossAxis(XYPlot plot, Lane lane) {
    double low = Double.MAX_VALUE;
    double high = 0;
    for (BoatTimeline.GlossDot dot : lane.gloss()) {
      low = Math.min(low, dot.gloss());
      high = Math.max(high, dot.gloss());
    }
    for (GlossPoint p : lane.model()) {
      low = Math.min(low, p.low80());
      high = Math.max(high, p.high80());
    }
    NumberAxis axis = new NumberAxis();
    double bottom = Math.floor((low - 4) / 5) * 5;
    axis.setRange(Math.max(0, bottom), Math.ceil((high + 8) / 5) * 5);
    axis.setTickUnit(new NumberTickUnit(10));
    axis.setTickLabelFont(colours.font());
    axis.setTickLabelPaint(colours.quiet());
    axis.setTickMarksVisible(false);
    axis.setAxisLineVisible(false);
    plot.setRangeAxis(1, axis);
    plot.setRangeAxisLocation(1, AxisLocation.BOTTOM_OR_RIGHT);
  }

  private void gloss(XYPlot plot, Lane lane, Color hue) {
    XYSeries dots = new XYSeries("gloss");
    lane.gloss().forEach(d -> dots.add(millis(d.day()), d.gloss()));
    XYLineAndShapeRenderer circles = new XYLineAndShapeRenderer(false, true);
    circles.setSeriesShape(0, scaled(new Ellipse2D.Double(-4.5, -4.5, 9, 9)));
    circles.setSeriesPaint(0, hue);
    circles.setUseOutlinePaint(true);
    circles.setSeriesOutlinePaint(0, colours.ground());
    circles.setSeriesOutlineStroke(0, FIRM);
    circles.setDefaultToolTipGenerator(tip(lane));
    add(plot, 1, new XYSeriesCollection(dots), circles, 1);
    if (!lane.model().isEmpty()) {
      edges(plot, lane, hue);
      band(plot, 3, lane, hue, true);
      band(plot, 4, lane, hue, false);
    }
  }

  private static XYToolTipGenerator tip(Lane lane) {
    return (data, series, item) -> {
      BoatTimeline.GlossDot dot = lane.gloss().get(item);
      return String.format(
          Locale.ENGLISH,
          "%s: gloss %.1f, mean of %d",
          LONG.format(dot.day()),
          dot.gloss(),
          dot.readings());
    };
  }

  private void band(XYPlot plot, int index, Lane lane, Color hue, boolean half) {
    YIntervalSeries series = new YIntervalSeries(half ? "half" : "eight in ten");
    for (GlossPoint p : lane.model()) {
      series.add(
          millis(p.day()),
          p.middle(),
          half ? p.low50() : p.low80(),
          half ? p.high50() : p.high80());
    }
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(series);
    DeviationRenderer renderer = new DeviationRenderer(half, false);
    renderer.setSeriesFillPaint(0, hue);
    renderer.setSeriesPaint(0, hue);
    renderer.setSeriesStroke(0, FIRM);
    renderer.setAlpha(half ? 0.14f : 0.12f);
    add(plot, index, data, renderer, 1);
  }

  /** The ends of the bands: their tints alone are too faint to be told from the ground. */
  private void edges(XYPlot plot, Lane lane, Color hue) {
    XYSeriesCollection data = new XYSeriesCollection();
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
    List<ToDoubleFunction<GlossPoint>> ends =
        List.of(GlossPoint::low50, GlossPoint::high50, GlossPoint::low80, GlossPoint::high80);
    for (int i = 0; i < ends.size(); i++) {
      XYSeries end = new XYSeries(i);
      for (GlossPoint p : lane.model()) {
        end.add(millis(p.day()), ends.get(i).applyAsDouble(p));
      }
      data.addSeries(end);
      lines.setSeriesPaint(i, hue);
      lines.setSeriesStroke(i, i < 2 ? Edges.NEAR : Edges.FAR);
    }
    lines.setDrawSeriesLineAsPath(true);
    add(plot, 2, data, lines, 1);
  }

  private void water(XYPlot plot, Lane lane, Color hue) {
    XYSeriesCollection data = new XYSeriesCollection();
    XYLineAndShapeRenderer drops = new XYLineAndShapeRenderer(false, true);
    drops.setUseFillPaint(true);
    drops.setUseOutlinePaint(true);
    drops.setDrawOutlines(true);
    for (WaterBehaviour behaviour : WaterBehaviour.values()) {
      XYSeries series = new XYSeries(behaviour.words());
      lane.water().stream()
          .filter(w -> w.behaviour() == behaviour)
          .forEach(w -> series.add(millis(w.day()), hasGloss(lane) ? 0.10 : 0.28));
      int i = data.getSeriesCount();
      data.addSeries(series);
      drops.setSeriesShape(i, scaled(behaviour == WaterBehaviour.SHEETS ? flatDrop() : drop()));
      drops.setSeriesPaint(i, hue);
      drops.setSeriesOutlinePaint(i, hue);
      drops.setSeriesOutlineStroke(i, FIRM);
      drops.setSeriesFillPaint(i, behaviour == WaterBehaviour.FLAT ? colours.ground() : hue);
    }
    drops.setDefaultToolTipGenerator(
        (d, series, item) ->
            "water " + d.getSeriesKey(series) + ", " + LONG.format(day(d.getXValue(series, item))));
    add(plot, 0, data, drops, 0);
  }

  /** A shape as large as the words beside it. */
  private Shape scaled(Shape shape) {
    double factor = colours.font().getSize2D() / 12;
    return AffineTransform.getScaleInstance(factor, factor).createTransformedShape(shape);
  }

  private static Shape drop() {
    Path2D path = new Path2D.Double();
    path.moveTo(0, -6);
    path.curveTo(2, -2, 4, 0, 4, 2.5);
    path.curveTo(4, 6.5, -4, 6.5, -4, 2.5);
    path.curveTo(-4, 0, -2, -2, 0, -6);
    path.closePath();
    return path;
  }

  /** A drop run out into a sheet: flatter and wider. */
  private static Shape flatDrop() {
    Path2D path = new Path2D.Double();
    path.moveTo(-6, 4);
    path.curveTo(-5, -2, 5, -2, 6, 4);
    path.closePath();
    return path;
  }

  private static void add(
      XYPlot plot,
      int index,
      org.jfree.data.xy.XYDataset data,
      org.jfree.chart.renderer.xy.XYItemRenderer renderer,
      int axis) {
    plot.setDataset(index, data);
    plot.setRenderer(index, renderer);
    plot.mapDatasetToRangeAxis(index, axis);
  }

  private void marks(XYPlot plot, Lane lane, boolean first) {
    for (BoatTimeline.Span span : timeline.layUps()) {
      IntervalMarker ashore =
          new IntervalMarker(millis(span.from()), millis(span.until()), colours.shade());
      ashore.setAlpha(1f);
      if (first && span.equals(timeline.layUps().get(timeline.layUps().size() - 1))) {
        ashore.setLabel("ashore");
        ashore.setLabelFont(colours.font());
        ashore.setLabelPaint(colours.quiet());
        ashore.setLabelAnchor(RectangleAnchor.BOTTOM_LEFT);
        ashore.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
        ashore.setLabelBackgroundColor(new Color(0, true));
      }
      plot.addDomainMarker(ashore, Layer.BACKGROUND);
      plot.addAnnotation(
          new XYLineAnnotation(
              millis(span.from()), 0, millis(span.until()), 0, ASHORE, colours.quiet()));
    }
    lane.likely()
        .filter(span -> !span.until().isBefore(timeline.today()))
        .ifPresent(
            span ->
                plot.getRenderer(0)
                    .addAnnotation(
                        new Hatch(millis(span.from()), millis(span.until()), colours.accent()),
                        Layer.BACKGROUND));
    coats(plot, lane);
    ValueMarker today = line(timeline.today(), first ? "today" : "", colours.text(), HAIR);
    boolean dayBelow = lane.renewBy().filter(d -> !d.isBefore(timeline.today())).isPresent();
    today.setLabelAnchor(dayBelow ? RectangleAnchor.RIGHT : RectangleAnchor.BOTTOM_RIGHT);
    today.setLabelTextAnchor(dayBelow ? TextAnchor.CENTER_LEFT : TextAnchor.BOTTOM_LEFT);
    plot.addDomainMarker(today);
    lane.renewBy()
        .filter(d -> !d.isAfter(timeline.until()) && !d.isBefore(timeline.from()))
        .ifPresent(d -> renewBy(plot, d));
  }

  private void coats(XYPlot plot, Lane lane) {
    List<BoatTimeline.CoatMark> coats =
        lane.coats().stream().sorted(Comparator.comparing(BoatTimeline.CoatMark::day)).toList();
    for (int i = 0; i < coats.size(); i++) {
      BoatTimeline.CoatMark coat = coats.get(i);
      plot.addDomainMarker(line(coat.day(), "", colours.text(), FIRM));
      double until = millis(i + 1 < coats.size() ? coats.get(i + 1).day() : timeline.until());
      plot.addAnnotation(
          new CoatName(
              coat.topper() ? "+ " + coat.product() : coat.product(),
              millis(coat.day()),
              until,
              colours.font(),
              colours.text()));
    }
  }

  /** A dashed line that stays under the coats' names. */
  private void renewBy(XYPlot plot, LocalDate day) {
    double x = millis(day);
    plot.addAnnotation(new XYLineAnnotation(x, 0, x, UNDER_NAMES, DASHED, colours.accent()));
    if (!day.isBefore(timeline.today())) {
      XYTextAnnotation by = new XYTextAnnotation(" by " + DAY.format(day), x, 0.04);
      by.setFont(colours.font().deriveFont(Font.BOLD));
      by.setPaint(colours.accent());
      by.setTextAnchor(TextAnchor.BOTTOM_LEFT);
      plot.addAnnotation(by);
    }
  }

  private ValueMarker line(LocalDate day, String label, Color colour, BasicStroke stroke) {
    ValueMarker marker = new ValueMarker(millis(day), colour, stroke);
    marker.setAlpha(1f);
    if (!label.isEmpty()) {
      marker.setLabel(" " + label + " ");
      marker.setLabelFont(colours.font());
      marker.setLabelPaint(colour);
      marker.setLabelBackgroundColor(new Color(0, true));
    }
    return marker;
  }

  private static double millis(LocalDate day) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli();
  }

  private static LocalDate day(double millis) {
    return java.time.Instant.ofEpochMilli((long) millis).atZone(ZoneOffset.UTC).toLocalDate();
  }
}
