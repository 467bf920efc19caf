package hullalmanac.ui.ahead;

import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.DotStrip;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javax.swing.JPanel;

/** Names of the months over the strips of rings. */
final class MonthScale extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);

  private final transient LocalDate today;

  MonthScale(LocalDate today) {
    this.today = today;
    setOpaque(false);
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(100, getFontMetrics(Theme.font(Theme.Size.BODY)).getHeight());
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setFont(Theme.font(Theme.Size.BODY));
    g.setColor(Theme.colour("quiet"));
    FontMetrics metrics = g.getFontMetrics();
    DotStrip.Months months = new DotStrip.Months(today);
    int free = 0;
    for (int n = 0; n < 11; n++) {
      LocalDate first = today.withDayOfMonth(1).plusMonths(n);
      String text = MONTH.format(first);
      int x = (int) (months.at(first) * getWidth());
      int width = metrics.stringWidth(text);
      if (x >= free && x + width <= getWidth()) {
        g.drawString(text, x, metrics.getAscent());
        free = x + width + metrics.charWidth('m');
      }
    }
    g.dispose();
  }
}
