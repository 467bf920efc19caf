package hullalmanac.ui.widget;

import hullalmanac.chart.LivesChart;
import hullalmanac.core.life.Survival;
import hullalmanac.ui.theme.Theme;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import javax.swing.JPanel;

/** How long a product's coats last, as a picture. */
public final class LivesBox extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 15;

  private final transient Survival survival;
  private final transient Optional<Double> label;
  private final double months;

  /**
   * @param months where the axis ends
   * @param description read out in place of the picture
   */
  public LivesBox(Survival survival, Optional<Double> label, double months, String description) {
    super(new BorderLayout());
    this.survival = survival;
    this.label = label;
    this.months = months;
    setOpaque(false);
    getAccessibleContext().setAccessibleName("How long its coats last");
    getAccessibleContext().setAccessibleDescription(description);
    draw();
  }

  /** Months that an axis needs for a product. */
  public static double months(Survival survival, Optional<Double> label) {
    return LivesChart.months(survival, label);
  }

  private void draw() {
    removeAll();
    add(StillChart.of(LivesChart.of(survival, label, months, Theme.chartColours())));
    revalidate();
    repaint();
  }

  @Override
  public Dimension getPreferredSize() {
    int line = getFontMetrics(Theme.font(Theme.Size.BODY)).getHeight();
    return new Dimension(320, LINES * line);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setOpaque(false);
    if (survival != null) {
      draw();
    }
  }
}
