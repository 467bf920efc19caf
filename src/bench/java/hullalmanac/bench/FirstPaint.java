package hullalmanac.bench;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Insets;
import java.time.Duration;
import java.time.Instant;
import javax.swing.border.Border;

/**
 * A border without width that sees its component painted for the first time, says when, and ends the
 * process.
 */
final class FirstPaint implements Border {
  /** Begins the line that says when. */
  static final String SAID = "painted ";

  private boolean painted;

  @Override
  public void paintBorder(Component c, Graphics g, int x, int y, int width, int height) {
    if (!painted) {
      painted = true;
      // Once the whole window has been painted, of which this is a part.
      EventQueue.invokeLater(FirstPaint::say);
    }
  }

  private static void say() {
    System.out.println(SAID + Duration.between(Instant.EPOCH, Instant.now()).toNanos());
    System.out.flush();
    Runtime.getRuntime().halt(0);
  }

  @Override
  public Insets getBorderInsets(Component c) {
    return new Insets(0, 0, 0, 0);
  }

  @Override
  public boolean isBorderOpaque() {
    return false;
  }
}
