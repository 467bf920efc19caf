package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Buttons beside each other, in as many rows as they need where there is no room. */
public final class ButtonRow extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int GAP = 8;

  private int columns = Integer.MAX_VALUE;

  /** Without buttons yet. */
  public ButtonRow() {
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

  /** Whether so many columns of buttons fit beside each other. */
  private boolean fit(int n) {
    int all = UIScale.scale(GAP) * (n - 1);
    for (int column = 0; column < n; column++) {
      int widest = 0;
      for (int i = column; i < getComponentCount(); i += n) {
        widest = Math.max(widest, getComponent(i).getPreferredSize().width);
      }
      all += widest;
    }
    return all <= getWidth();
  }

  @Override
  public void doLayout() {
    int fits = Math.max(1, getComponentCount());
    while (fits > 1 && !fit(fits)) {
      fits--;
    }
    if (fits != columns) {
      columns = fits;
      ((MigLayout) getLayout()).setLayoutConstraints(constraints(fits));
      Relayout.of(this);
    }
    super.doLayout();
  }
}
