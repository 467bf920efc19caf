package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.theme.Theme;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;

/**
 * Marks of what is chosen and of what has the cursor. A tint of the ground alone would be too faint
 * to tell them by.
 */
public final class Marks {
  private static final int BAR = 3;
  private static final int SPARED = 6;
  private static final float RING = 2f;
  private static final int ARC = 6;
  private static final int ROOM = 4;

  private Marks() {}

  /** A bar at the left of what is chosen. */
  public static void chosen(Graphics graphics, Rectangle box) {
    Graphics2D g = start(graphics);
    int bar = UIScale.scale(BAR);
    int spared = Math.min(UIScale.scale(SPARED), box.height / 4);
    g.fillRoundRect(box.x, box.y + spared, bar, box.height - 2 * spared, bar, bar);
    g.dispose();
  }

  /** The same, with room at its left for the ring of the cursor. */
  public static void chosenWithinRing(Graphics graphics, Dimension size) {
    int left = UIScale.scale(ROOM);
    chosen(graphics, new Rectangle(left, 0, size.width - left, size.height));
  }

  /** A ring inside the edge of what has the cursor. */
  public static void cursor(Graphics graphics, Rectangle box) {
    Graphics2D g = start(graphics);
    float ring = UIScale.scale(RING);
    int half = (int) Math.ceil(ring / 2);
    int arc = UIScale.scale(ARC);
    g.setStroke(new BasicStroke(ring));
    g.drawRoundRect(
        box.x + half, box.y + half, box.width - 2 * half, box.height - 2 * half, arc, arc);
    g.dispose();
  }

  private static Graphics2D start(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Theme.colour("accent"));
    return g;
  }
}
