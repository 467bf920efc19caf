package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Buttons beside each other, or below each other where there is no room. */
final class ButtonRow extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int GAP = 8;

  private int columns = Integer.MAX_VALUE;

  ButtonRow() {
    super(new MigLayout(constraints(Integer.MAX_VALUE), "", ""));
    setOpaque(false);
  }

  private static String constraints(int columns) {
    return "insets 0, novisualpadding, gap "
        + GAP
        + " "
        + GAP
        + (columns == Integer.MAX_VALUE ? "" : ", wrap " + columns);
  }

  /** One below the other where they do not all fit beside each other. */
  @Override
  public void doLayout() {
    int all = -UIScale.scale(GAP);
    for (Component c : getComponents()) {
      all += c.getPreferredSize().width + UIScale.scale(GAP);
    }
    int fits = all <= getWidth() ? Integer.MAX_VALUE : 1;
    if (fits != columns) {
      columns = fits;
      ((MigLayout) getLayout()).setLayoutConstraints(constraints(fits));
      revalidate();
    }
    super.doLayout();
  }
}
