package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.theme.Theme;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;

/** Twenty rings over the months, each one chance in twenty; filled where it lies before today. */
public final class DotStrip extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int DOT = 8;
  private static final int STEP = 9;
  private static final int ROWS = 5;

  private final transient List<Optional<LocalDate>> days;
  private final transient Months months;

  /**
   * The months of a strip.
   *
   * @param today the day from which it is seen
   */
  public record Months(LocalDate today) {
    private static final int BEFORE = 80;
    private static final int DAYS = 365;

    /** Where a day lies across a width: 0 at the left, 1 at the right, kept within both. */
    public double at(LocalDate day) {
      double x = (double) ChronoUnit.DAYS.between(today.minusDays(BEFORE), day) / DAYS;
      return Math.max(0, Math.min(1, x));
    }

    boolean beyond(LocalDate day) {
      return day.isAfter(today.plusDays(DAYS - BEFORE));
    }
  }

  /**
   * @param words what it says, read out in its place
   */
  public DotStrip(List<Optional<LocalDate>> days, LocalDate today, String words) {
    this.days = List.copyOf(days);
    this.months = new Months(today);
    getAccessibleContext().setAccessibleName(words);
    setToolTipText(words);
    setFocusable(false);
    setOpaque(false);
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(UIScale.scale(260), UIScale.scale(DOT * ROWS + 16));
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(UIScale.scale(140), getPreferredSize().height);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    float dot = UIScale.scale((float) DOT);
    float step = UIScale.scale((float) STEP);
    int base = getHeight() - UIScale.scale(10);
    int columns = Math.max(1, (int) ((getWidth() - dot) / step));
    int today = (int) (months.at(months.today()) * (columns - 1));
    g.setColor(Theme.colour("cardLine"));
    g.drawLine(0, base + 2, getWidth(), base + 2);
    g.setStroke(new BasicStroke(UIScale.scale(1.3f)));
    g.setColor(Theme.colour("accent"));
    int[] height = new int[columns];
    int later = 0;
    for (Optional<LocalDate> day : days) {
      if (day.isEmpty() || months.beyond(day.get())) {
        later++;
        continue;
      }
      boolean past = day.get().isBefore(months.today());
      int column =
          place(
              height,
              (int) (months.at(day.get()) * (columns - 1)),
              past ? today : columns - 1,
              past);
      double x = column * step;
      double y = base - height[column] * step - dot;
      height[column]++;
      Ellipse2D ring = new Ellipse2D.Double(x + 1, y + 1, dot - 2, dot - 2);
      if (past) {
        g.fill(ring);
      }
      g.draw(ring);
    }
    g.setColor(javax.swing.UIManager.getColor("Label.foreground"));
    int line = (int) (today * step + step - 1);
    g.drawLine(line, UIScale.scale(2), line, base + UIScale.scale(4));
    if (later > 0) {
      g.setColor(Theme.colour("quiet"));
      g.setFont(Theme.font(Theme.Size.BODY));
      String text = later + " later";
      g.drawString(
          text, getWidth() - g.getFontMetrics().stringWidth(text), g.getFontMetrics().getAscent());
    }
    g.dispose();
  }

  /**
   * The column for a ring: its own, or the next with room; past rings stay before today, others
   * after.
   */
  private static int place(int[] height, int wanted, int last, boolean past) {
    for (int c = wanted; c <= last; c++) {
      if (height[c] < ROWS) {
        return c;
      }
    }
    for (int c = wanted; c >= 0; c--) {
      if (height[c] < ROWS) {
        return c;
      }
    }
    return past ? 0 : last;
  }
}
