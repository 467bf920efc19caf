package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.widget.Relayout;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Fields beside each other, as many as there is room for, three at most. */
final class FormGrid extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LEAST_FIELD = 240;
  private static final int MOST = 3;

  private int columns = MOST;

  FormGrid() {
    super(new MigLayout(constraints(MOST), "[grow, fill, sg f]", "[top]"));
    setOpaque(false);
  }

  private static String constraints(int columns) {
    return "insets 0, fillx, gap 20 8, wrap " + columns;
  }

  @Override
  public void doLayout() {
    int fits = Math.max(1, Math.min(MOST, getWidth() / UIScale.scale(LEAST_FIELD)));
    if (fits != columns) {
      columns = fits;
      ((MigLayout) getLayout()).setLayoutConstraints(constraints(fits));
      Relayout.of(this);
    }
    super.doLayout();
  }
}
