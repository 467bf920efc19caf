package hullalmanac.ui.owner;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.widget.Relayout;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Two things side by side; the second under the first where there is no room for that. */
final class Sides extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int STACKED_UNDER = 900;

  private final MigLayout layout = new MigLayout(constraints(2), "[grow, fill, sg half]", "[top]");
  private final boolean both;
  private boolean stacked;

  Sides(JComponent first, Optional<JComponent> second) {
    super(null);
    setLayout(layout);
    setOpaque(false);
    both = second.isPresent();
    add(first, "wmin 0");
    second.ifPresent(c -> add(c, "wmin 0"));
  }

  private static String constraints(int columns) {
    return "insets 0, fillx, gap 40 24, hidemode 3, wrap " + columns;
  }

  @Override
  public void doLayout() {
    boolean narrow = both && getWidth() < UIScale.scale(STACKED_UNDER);
    if (narrow != stacked) {
      stacked = narrow;
      layout.setLayoutConstraints(constraints(narrow ? 1 : 2));
      Relayout.of(this);
    }
    super.doLayout();
  }
}
