package hullalmanac.ui.shell;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.fixture.Contrast;
import java.awt.Color;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.Icon;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JScrollBar;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * Looks at the lines of what was painted that tell where a control is, that it has the cursor, that
 * it is the one chosen, and how far one has scrolled. Each must stand out from what lies beside it
 * by 3 to 1; W3C, WCAG 2.1, success criterion 1.4.11 "Non-text contrast". What is switched off and
 * what only adorns is exempt there: frames of cards, lines between rows, the line over the status.
 */
final class PaintedLines {
  /** Width of the ring of what has the cursor and of the border inside it, and one more. */
  private static final int BORDER = 4;

  /** Width of the end of a box in which its arrow is. */
  private static final int ARROW = 24;

  private final JComponent root;
  private final Painted painted;
  private final List<String> faults = new ArrayList<>();
  private int looked;

  PaintedLines(JComponent root, Painted painted) {
    this.root = root;
    this.painted = painted;
  }

  List<String> faults() {
    return faults;
  }

  /** How many lines were looked at. */
  int looked() {
    return looked;
  }

  /** Looks at all kinds of lines there are. */
  PaintedLines look() {
    PaintedStates states = new PaintedStates(root, painted);
    try (PretendFocus focus = new PretendFocus()) {
      for (JComponent c : painted.shown()) {
        if (Painted.isControl(c) && c.isEnabled()) {
          if (isBoxed(c)) {
            border(c);
          }
          signs(c);
          states.cursor(c, focus);
          states.chosen(c);
        }
        if (hasCursorOfItsOwn(c)) {
          states.cursor(c, focus);
          states.chosen(c);
        }
        if (c instanceof JScrollBar bar) {
          thumb(bar);
        }
      }
    }
    looked += states.looked();
    faults.addAll(states.faults());
    return this;
  }

  /**
   * Whether it is drawn by the program and shows by itself that it has the cursor. A page that is
   * scrolled as a whole does not.
   */
  private static boolean hasCursorOfItsOwn(JComponent c) {
    return c.isFocusable()
        && c.getFocusListeners().length > 0
        && c.getClass().getName().startsWith("hullalmanac.")
        && !(c instanceof Scrollable)
        && !Painted.isControl(c);
  }

  private static boolean isBoxed(JComponent c) {
    return c instanceof JComboBox<?>
        || c instanceof JTextComponent
        || (c instanceof AbstractButton button
            && button.isContentAreaFilled()
            && !"borderless".equals(button.getClientProperty("JButton.buttonType")));
  }

  /** Goes into the control on each side, at three places; the border must be met at all of them. */
  private void border(JComponent c) {
    Rectangle box = painted.bounds(c);
    if (box.equals(painted.seen(c))) {
      Point last = new Point(box.x + box.width - 1, box.y + box.height - 1);
      border(c, "left", at -> reach(new Point(box.x, box.y + box.height * at / 4), 1, 0));
      border(c, "right", at -> reach(new Point(last.x, box.y + box.height * at / 4), -1, 0));
      border(c, "upper", at -> reach(new Point(box.x + box.width * at / 4, box.y), 0, 1));
      border(c, "lower", at -> reach(new Point(box.x + box.width * at / 4, last.y), 0, -1));
    }
  }

  private void border(JComponent c, String name, IntToDoubleFunction reach) {
    // Words that begin right behind a border may be met at one place.
    double least = IntStream.rangeClosed(1, 3).mapToDouble(reach).min().orElseThrow();
    hold(least, "the " + name + " border of " + Painted.say(c));
  }

  /** What stands out most on the way in, from the ground just outside. */
  private double reach(Point from, int dx, int dy) {
    Color ground = at(from.x - dx, from.y - dy);
    double best = 1;
    for (int i = 0; i < UIScale.scale(BORDER); i++) {
      best = Math.max(best, Contrast.ratio(at(from.x + i * dx, from.y + i * dy), ground));
    }
    return best;
  }

  /** A button's picture, and the arrow of what opens. */
  private void signs(JComponent c) {
    Rectangle box = painted.bounds(c);
    if (!box.equals(painted.seen(c))) {
      return;
    }
    if (c instanceof AbstractButton button && button.getIcon() != null) {
      Icon icon = button.getIcon();
      Rectangle at = new Rectangle(0, 0, icon.getIconWidth(), icon.getIconHeight());
      SwingUtilities.layoutCompoundLabel(
          button,
          button.getFontMetrics(button.getFont()),
          button.getText(),
          icon,
          button.getVerticalAlignment(),
          button.getHorizontalAlignment(),
          button.getVerticalTextPosition(),
          button.getHorizontalTextPosition(),
          SwingUtilities.calculateInnerArea(button, new Rectangle()),
          at,
          new Rectangle(),
          button.getIconTextGap());
      at.translate(box.x, box.y);
      sign(at, 2 * icon.getIconWidth(), "the icon of " + Painted.say(c));
    } else if (c instanceof JComboBox<?>) {
      int wide = UIScale.scale(ARROW);
      sign(
          new Rectangle(
              box.x + box.width - wide, box.y + wide / 3, wide * 2 / 3, box.height - wide * 2 / 3),
          wide / 4,
          "the arrow of " + Painted.say(c));
    }
  }

  /** At least so many points must stand out from what most of a part is painted in. */
  private void sign(Rectangle part, int least, String what) {
    Map<Integer, Integer> counts = new HashMap<>();
    each(part, (x, y) -> counts.merge(at(x, y).getRGB(), 1, Integer::sum));
    Color ground =
        new Color(
            counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey());
    AtomicInteger points = new AtomicInteger();
    each(
        part,
        (x, y) -> {
          if (Contrast.ratio(at(x, y), ground) >= Contrast.OF_LINES) {
            points.incrementAndGet();
          }
        });
    looked++;
    if (points.get() < least) {
      faults.add(what + " stands out by " + points.get() + " points");
    }
  }

  private static void each(Rectangle part, BiConsumer<Integer, Integer> look) {
    for (int y = part.y; y < part.y + part.height; y++) {
      for (int x = part.x; x < part.x + part.width; x++) {
        look.accept(x, y);
      }
    }
  }

  private Color at(int x, int y) {
    BufferedImage image = painted.image();
    return new Color(
        image.getRGB(
            Math.max(0, Math.min(image.getWidth() - 1, x)),
            Math.max(0, Math.min(image.getHeight() - 1, y))));
  }

  private void hold(double ratio, String what) {
    looked++;
    if (ratio < Contrast.OF_LINES) {
      faults.add(String.format(Locale.ROOT, "%s stands out by %.2f", what, ratio));
    }
  }

  /** The thumb is what stands out most from the track along the bar's middle. */
  private void thumb(JScrollBar bar) {
    Rectangle box = painted.bounds(bar);
    boolean upright = bar.getOrientation() == JScrollBar.VERTICAL;
    boolean all = bar.getModel().getExtent() >= bar.getMaximum() - bar.getMinimum();
    if (all || !box.equals(painted.seen(bar))) {
      return;
    }
    Color track =
        upright
            ? at(box.x, box.y + box.height - 1)
            : at(box.x + box.width - 1, box.y + box.height - 1);
    double best = 1;
    for (int i = 0; i < (upright ? box.height : box.width); i++) {
      Color here =
          upright ? at(box.x + box.width / 2, box.y + i) : at(box.x + i, box.y + box.height / 2);
      best = Math.max(best, Contrast.ratio(here, track));
    }
    hold(best, (upright ? "the thumb at " : "the thumb below at ") + box);
  }
}
