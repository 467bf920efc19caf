package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Cards of one width beside each other, four in a row or, where that is too narrow, two or one. */
public final class CardRow extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LEAST_CARD = 150;

  private int columns = 4;

  public CardRow() {
    super(new MigLayout(constraints(4), "[grow, fill, sg c]", "[fill]"));
    setOpaque(false);
  }

  private static String constraints(int columns) {
    return "insets 0, fillx, gap 12 12, wrap " + columns;
  }

  /** Adds a card. */
  public void addCard(JComponent card) {
    add(card, "wmin 0");
  }

  @Override
  public void doLayout() {
    int room = Math.max(1, getWidth() / UIScale.scale(LEAST_CARD));
    int fits = room >= 4 ? 4 : Math.min(2, room);
    if (fits != columns) {
      columns = fits;
      ((MigLayout) getLayout()).setLayoutConstraints(constraints(fits));
      Relayout.of(this);
    }
    super.doLayout();
  }
}
