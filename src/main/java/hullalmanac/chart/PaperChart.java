package hullalmanac.chart;

import hullalmanac.core.life.Survival;
import hullalmanac.core.report.BoatTimeline;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jfree.chart.JFreeChart;

/**
 * A chart as it stands on paper: drawn by the same builders as on screen, with the colours of
 * paper, dark enough to be told apart in grey.
 */
public final class PaperChart {
  private final JFreeChart chart;

  private PaperChart(JFreeChart chart) {
    this.chart = chart;
  }

  /** A boat over time. */
  public static PaperChart of(BoatTimeline timeline, Font font) {
    return new PaperChart(HistoryChart.of(timeline, colours(font)));
  }

  /** A product's lives. */
  public static PaperChart of(Survival survival, Optional<Double> label, Font font) {
    return new PaperChart(
        LivesChart.of(survival, label, LivesChart.months(survival, label), colours(font)));
  }

  private static ChartColours colours(Font font) {
    return new ChartColours(
        Color.WHITE,
        Color.BLACK,
        new Color(0x4A4A4A),
        new Color(0xB4B4B4),
        new Color(0x0F5C5C),
        new Color(0xEDEDED),
        ChartColours.HUES_ON_WHITE,
        font);
  }

  /** Draws it. */
  public void draw(Graphics2D g, Rectangle2D area) {
    chart.draw(g, area);
  }
}
