package hullalmanac.ui.widget;

import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;

/** A chart to be looked at: drawn at the size it has, without menu, zoom or cursor. */
final class StillChart {
  private StillChart() {}

  static ChartPanel of(JFreeChart chart) {
    ChartPanel panel = new ChartPanel(chart, false, false, false, false, true);
    panel.setMinimumDrawWidth(0);
    panel.setMinimumDrawHeight(0);
    panel.setMaximumDrawWidth(Integer.MAX_VALUE);
    panel.setMaximumDrawHeight(Integer.MAX_VALUE);
    panel.setMouseZoomable(false);
    panel.setPopupMenu(null);
    panel.setFocusable(false);
    panel.setPreferredSize(null);
    return panel;
  }
}
