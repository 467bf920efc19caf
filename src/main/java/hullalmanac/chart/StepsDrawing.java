package hullalmanac.chart;

import hullalmanac.core.report.DateSteps;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Draws how a date came about: time runs to the right, each step is a line lower, its day a dot,
 * and what moved it a stroke from the day before. The last dot, which counts, is filled.
 */
public final class StepsDrawing {
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);

  private final DateSteps steps;
  private final List<String> names;
  private final ChartColours colours;
  private final double radius;

  /**
   * @param names of the steps, short
   */
  public StepsDrawing(DateSteps steps, List<String> names, ChartColours colours) {
    this.steps = steps;
    this.names = List.copyOf(names);
    this.colours = colours;
    radius = 0.4 * colours.font().getSize2D();
  }

  /** Height it asks for with lines of a height. */
  public static int height(int lineHeight) {
    return 6 * lineHeight + 8;
  }

  /** Draws into an area. */
  public void draw(Graphics2D g, Rectangle2D area) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setFont(colours.font());
    FontMetrics m = g.getFontMetrics();
    double left = area.getX() + widest(m) + 16;
    double right = area.getMaxX() - m.stringWidth("Sep 2026") / 2.0 - 4;
    double row = (area.getHeight() - 1.5 * m.getHeight()) / names.size();
    Axis axis = new Axis(left, right);
    double bottom = area.getY() + row * names.size();
    months(g, axis, bottom);
    today(g, axis, area.getY(), bottom);
    Optional<double[]> before = Optional.empty();
    for (int i = 0; i < names.size(); i++) {
      double y = area.getY() + row * (i + 0.5);
      boolean last = i == names.size() - 1;
      g.setColor(last ? colours.text() : colours.quiet());
      g.drawString(names.get(i), (float) area.getX(), (float) (y + m.getAscent() / 2.0 - 1));
      Optional<LocalDate> day = steps.days().get(i);
      if (day.isPresent()) {
        double[] here = {axis.at(day.get()), y};
        before.ifPresent(b -> stroke(g, b, here));
        dot(g, here, last);
        before = Optional.of(here);
      } else {
        g.drawString("over 15 years ahead", (float) left, (float) (y + m.getAscent() / 2.0 - 1));
      }
    }
  }

  private int widest(FontMetrics m) {
    return names.stream().mapToInt(m::stringWidth).max().orElse(0);
  }

  private final class Axis {
    private final double left;
    private final double perDay;

    Axis(double left, double right) {
      this.left = left;
      perDay = (right - left) / ChronoUnit.DAYS.between(steps.laid(), steps.until());
    }

    double at(LocalDate day) {
      return left + perDay * ChronoUnit.DAYS.between(steps.laid(), day);
    }
  }

  private void months(Graphics2D g, Axis axis, double bottom) {
    FontMetrics m = g.getFontMetrics();
    double room = 1.6 * m.stringWidth("Sep 2026");
    g.setStroke(new BasicStroke(1));
    g.setColor(colours.quiet());
    g.draw(new Line2D.Double(axis.left, bottom, axis.at(steps.until()), bottom));
    double next = Double.NEGATIVE_INFINITY;
    LocalDate first = steps.laid().plusMonths(1).withDayOfMonth(1);
    for (LocalDate day = first; day.isBefore(steps.until()); day = day.plusMonths(1)) {
      double x = axis.at(day);
      if (x >= next) {
        g.draw(new Line2D.Double(x, bottom, x, bottom + 4));
        String text = MONTH.format(day);
        g.drawString(
            text, (float) (x - m.stringWidth(text) / 2.0), (float) (bottom + 4 + m.getAscent()));
        next = x + room;
      }
    }
  }

  private void today(Graphics2D g, Axis axis, double top, double bottom) {
    double x = axis.at(steps.today());
    g.setColor(colours.quiet());
    g.setStroke(new BasicStroke(1));
    g.draw(new Line2D.Double(x, top, x, bottom));
    FontMetrics m = g.getFontMetrics();
    g.drawString("today", (float) (x + 4), (float) (top + m.getAscent() - 1));
  }

  private void stroke(Graphics2D g, double[] from, double[] to) {
    g.setColor(colours.accent());
    g.setStroke(new BasicStroke(1.4f));
    g.draw(new Line2D.Double(from[0], from[1] + radius, from[0], to[1]));
    double end = to[0] + (to[0] > from[0] ? -radius : radius);
    if (Math.abs(to[0] - from[0]) > radius) {
      g.draw(new Line2D.Double(from[0], to[1], end, to[1]));
    }
  }

  private void dot(Graphics2D g, double[] at, boolean filled) {
    Ellipse2D dot = new Ellipse2D.Double(at[0] - radius, at[1] - radius, 2 * radius, 2 * radius);
    g.setColor(filled ? colours.accent() : colours.ground());
    g.fill(dot);
    g.setColor(colours.accent());
    g.setStroke(new BasicStroke(1.4f));
    g.draw(dot);
  }
}
