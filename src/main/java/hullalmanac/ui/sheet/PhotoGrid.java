package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.widget.Relayout;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Cards of one width beside each other, as many as there is room for. */
final class PhotoGrid extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int CARD = 208;
  private static final int GAP = 12;

  private int columns = 5;

  PhotoGrid() {
    super(new MigLayout(constraints(5), "[80:" + CARD + ":" + CARD + ", fill]", "[top]"));
    setOpaque(false);
  }

  private static String constraints(int columns) {
    return "insets 0, gap " + GAP + " " + GAP + ", wrap " + columns;
  }

  void addCell(PhotoCell cell) {
    add(cell, "wmin 0, growy");
  }

  @Override
  public void doLayout() {
    int gap = UIScale.scale(GAP);
    int fits = Math.max(1, (getWidth() + gap) / (UIScale.scale(CARD) + gap));
    if (fits != columns) {
      columns = fits;
      ((MigLayout) getLayout()).setLayoutConstraints(constraints(fits));
      Relayout.of(this);
    }
    super.doLayout();
  }
}
