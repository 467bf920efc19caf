package hullalmanac.ui.card;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.widget.Relayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Steps, the step shown and what to see to beside each other; below each other where narrow. */
final class Columns extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int STACKED_UNDER = 1000;
  private static final String BESIDE = "[24%, fill][grow, fill][26%, fill]";
  private static final String BELOW = "[grow, fill]";

  private final MigLayout layout = new MigLayout(constraints(3), BESIDE, "[top]");
  private boolean stacked;

  Columns(JComponent steps, JComponent shown, JComponent around) {
    super(null);
    setLayout(layout);
    setOpaque(false);
    add(steps, "wmin 0");
    add(shown, "wmin 0");
    add(around, "wmin 0");
  }

  private static String constraints(int columns) {
    return "insets 0, fillx, gap 24 20, wrap " + columns;
  }

  @Override
  public void doLayout() {
    boolean narrow = getWidth() < UIScale.scale(STACKED_UNDER);
    if (narrow != stacked) {
      stacked = narrow;
      layout.setLayoutConstraints(constraints(narrow ? 1 : 3));
      layout.setColumnConstraints(narrow ? BELOW : BESIDE);
      Relayout.of(this);
    }
    super.doLayout();
  }
}
