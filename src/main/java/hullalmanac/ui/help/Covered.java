package hullalmanac.ui.help;

import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Something, and what may lie over it, as large as it is. */
final class Covered extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JComponent below;

  Covered(JComponent below, JComponent over) {
    super(null);
    this.below = below;
    add(over);
    add(below);
  }

  @Override
  public boolean isOptimizedDrawingEnabled() {
    return false;
  }

  @Override
  public void doLayout() {
    for (Component c : getComponents()) {
      c.setBounds(0, 0, getWidth(), getHeight());
    }
  }

  @Override
  public Dimension getPreferredSize() {
    return below.getPreferredSize();
  }

  @Override
  public Dimension getMinimumSize() {
    return below.getMinimumSize();
  }
}
