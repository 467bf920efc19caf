package hullalmanac.ui.widget;

import hullalmanac.chart.FinishChart;
import hullalmanac.core.finish.GlossPath;
import hullalmanac.ui.theme.Theme;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import javax.swing.JPanel;

/** The gloss of a plan step by step, as a picture. */
public final class PathBox extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 11;
  private transient Optional<GlossPath> path = Optional.empty();

  /** An empty picture of that name. */
  public PathBox(String name) {
    super(new BorderLayout());
    setOpaque(false);
    getAccessibleContext().setAccessibleName(name);
  }

  /**
   * Shows a way.
   *
   * @param description read out in place of the picture
   */
  public void show(Optional<GlossPath> shown, String description) {
    getAccessibleContext().setAccessibleDescription(description);
    if (!shown.equals(path)) {
      path = shown;
      draw();
    }
  }

  private void draw() {
    removeAll();
    path.ifPresent(p -> add(StillChart.of(FinishChart.of(p, Theme.chartColours()))));
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
    if (path != null) {
      draw();
    }
  }
}
