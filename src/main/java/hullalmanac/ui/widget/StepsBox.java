package hullalmanac.ui.widget;

import hullalmanac.chart.StepsDrawing;
import hullalmanac.core.report.DateSteps;
import hullalmanac.ui.theme.Theme;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.JPanel;

/** Shows how a date came about. */
public final class StepsBox extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient DateSteps steps;
  private final transient List<String> names;

  /**
   * @param names of the steps
   * @param description read out in place of the picture
   */
  public StepsBox(DateSteps steps, List<String> names, String description) {
    this.steps = steps;
    this.names = List.copyOf(names);
    setOpaque(false);
    setFocusable(false);
    getAccessibleContext().setAccessibleName("How this date came about");
    getAccessibleContext().setAccessibleDescription(description);
  }

  @Override
  public Dimension getPreferredSize() {
    int line = getFontMetrics(Theme.font(Theme.Size.BODY)).getHeight();
    return new Dimension(320, StepsDrawing.height(line));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    new StepsDrawing(steps, names, Theme.chartColours())
        .draw(g, new Rectangle2D.Double(0, 0, getWidth(), getHeight()));
    g.dispose();
  }
}
