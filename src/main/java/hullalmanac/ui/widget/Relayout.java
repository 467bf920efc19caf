package hullalmanac.ui.widget;

import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Gives room to something that found out only while it was laid out how much it needs. */
public final class Relayout {
  private Relayout() {}

  /**
   * To be called from {@code doLayout}. What it lies in is being laid out just then and takes no
   * note of a change, so it is told once more afterwards.
   */
  public static void of(JComponent changed) {
    changed.revalidate();
    SwingUtilities.invokeLater(changed::revalidate);
  }
}
