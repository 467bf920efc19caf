package hullalmanac.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.finish.GlossPath;
import java.awt.Color;
import java.awt.Font;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.junit.jupiter.api.Test;

class FinishChartTest {
  private static final ChartColours COLOURS =
      new ChartColours(
          new Color(0xFBFAF7),
          new Color(0x1B2424),
          new Color(0x5A6666),
          new Color(0xC9CFCB),
          new Color(0x0F5C5C),
          new Color(0xECEAE4),
          Collections.nCopies(7, new Color(0xE69F00)),
          new Font(Font.DIALOG, Font.PLAIN, 12));

  private static GlossPath.Point at(String name, double low, double middle, double high) {
    return new GlossPath.Point(
        name, OptionalDouble.of(low), OptionalDouble.of(middle), OptionalDouble.of(high));
  }

  private static final GlossPath SANDED =
      new GlossPath(
          List.of(
              at("before", 27, 30, 33),
              new GlossPath.Point(
                  "P1500", OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
              at("heavy", 73, 76.8, 80),
              at("finishing", 78, 82.7, 86)),
          81);

  private static XYPlot plot(JFreeChart chart) {
    return chart.getXYPlot();
  }

  @Test
  void drawsEveryPlaceThatHasGlossWithItsRange() {
    XYPlot plot = plot(FinishChart.of(SANDED, COLOURS));
    YIntervalSeriesCollection data = (YIntervalSeriesCollection) plot.getDataset();
    assertThat(data.getItemCount(0)).isEqualTo(3);
    assertThat(data.getXValue(0, 1)).isEqualTo(2);
    assertThat(data.getYValue(0, 1)).isEqualTo(76.8);
    assertThat(data.getStartYValue(0, 2)).isEqualTo(78);
    assertThat(data.getEndYValue(0, 2)).isEqualTo(86);
    assertThat(((SymbolAxis) plot.getDomainAxis()).getSymbols())
        .containsExactly("before", "P1500", "heavy", "finishing");
    assertThat(plot.getAnnotations()).hasSize(1);
  }

  @Test
  void holdsAllThatIsDrawnAndTheAgreedGloss() {
    XYPlot plot = plot(FinishChart.of(SANDED, COLOURS));
    assertThat(plot.getRangeAxis().getLowerBound()).isCloseTo(24, within(1e-9));
    assertThat(plot.getRangeAxis().getUpperBound()).isCloseTo(89, within(1e-9));
    ValueMarker agreed = (ValueMarker) plot.getRangeMarkers(Layer.FOREGROUND).iterator().next();
    assertThat(agreed.getValue()).isEqualTo(81);
    assertThat(agreed.getLabel()).contains("agreed 81");
    GlossPath high = new GlossPath(List.of(at("before", 60, 62, 64)), 95);
    assertThat(plot(FinishChart.of(high, COLOURS)).getRangeAxis().getUpperBound())
        .isGreaterThan(95);
  }
}
