package hullalmanac.ui.widget;

import hullalmanac.chart.HistoryChart;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.ui.theme.Theme;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.MouseWheelEvent;
import javax.swing.JPanel;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;

/**
 * A boat's timeline on the screen: scroll with Shift to move in time, with Ctrl to zoom, double
 * click to see all.
 */
public final class ChartBox extends JPanel {
  private static final long serialVersionUID = 1L;

  /** What the marks of the picture mean. */
  public static final String KEY =
      "Drop: water beads · flat drop: sheets · hollow drop: lies flat · dots: gloss at 60° · within"
          + " dashes: half of the chances, within points: 8 in 10 · hatched: likely bare between ·"
          + " grey, with a line below: ashore";

  private transient BoatTimeline timeline;
  private transient ChartPanel panel;

  public ChartBox() {
    super(new BorderLayout());
    setOpaque(false);
  }

  /** Shows a timeline; the description is read out in its place. */
  public void show(BoatTimeline timeline, String description) {
    this.timeline = timeline;
    draw();
    getAccessibleContext().setAccessibleName("This boat over time");
    getAccessibleContext().setAccessibleDescription(description);
  }

  private void draw() {
    removeAll();
    panel = null;
    if (timeline != null && !timeline.lanes().isEmpty()) {
      panel = panel(HistoryChart.of(timeline, Theme.chartColours()));
      add(panel);
    }
    revalidate();
    repaint();
  }

  private ChartPanel panel(JFreeChart chart) {
    ChartPanel made = StillChart.of(chart);
    made.addMouseWheelListener(this::wheel);
    made.addMouseListener(
        new java.awt.event.MouseAdapter() {
          @Override
          public void mouseClicked(java.awt.event.MouseEvent e) {
            if (e.getClickCount() == 2) {
              draw();
            }
          }
        });
    return made;
  }

  private void wheel(MouseWheelEvent e) {
    ValueAxis time = ((XYPlot) panel.getChart().getPlot()).getDomainAxis();
    double span = time.getRange().getLength();
    if (e.isControlDown()) {
      double factor = e.getPreciseWheelRotation() > 0 ? 1.2 : 1 / 1.2;
      double at = time.getLowerBound() + span * e.getX() / Math.max(1, getWidth());
      time.setRange(
          at - (at - time.getLowerBound()) * factor, at + (time.getUpperBound() - at) * factor);
    } else if (e.isShiftDown()) {
      double move = span * 0.08 * e.getPreciseWheelRotation();
      time.setRange(time.getLowerBound() + move, time.getUpperBound() + move);
    } else {
      getParent()
          .dispatchEvent(javax.swing.SwingUtilities.convertMouseEvent(panel, e, getParent()));
    }
  }

  @Override
  public Dimension getPreferredSize() {
    int lines = timeline == null ? 0 : HistoryChart.lines(timeline);
    int line = getFontMetrics(Theme.font(Theme.Size.BODY)).getHeight();
    return new Dimension(400, timeline == null || timeline.lanes().isEmpty() ? 0 : lines * line);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setOpaque(false);
    if (timeline != null) {
      draw();
    }
  }
}
