package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * A list at the left and what is chosen at the right; where there is no room for both, the list
 * folds away and comes instead of the page when it is wanted.
 */
public final class ListBesidePage extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int FOLDS_UNDER = 900;

  private final JComponent list;
  private final JComponent page;
  private final JPanel fold = new JPanel(new MigLayout("insets 12 24 0 24, novisualpadding"));
  private boolean choosing;

  /**
   * @param all what the button says that brings the list back
   */
  public ListBesidePage(JComponent list, JComponent page, String all) {
    super(new BorderLayout());
    this.list = list;
    this.page = page;
    JButton back = new JButton(all);
    back.setName("all");
    back.addActionListener(e -> choosing(true));
    fold.add(back, "hmin 32");
    add(fold, BorderLayout.NORTH);
    add(list, BorderLayout.WEST);
    add(page);
  }

  /** Says whether one is choosing from the list now. */
  public void choosing(boolean now) {
    choosing = now;
    arrange();
    revalidate();
    repaint();
  }

  private void arrange() {
    boolean room = getWidth() >= UIScale.scale(FOLDS_UNDER);
    boolean listOnly = !room && choosing;
    list.setVisible(room || listOnly);
    page.setVisible(!listOnly);
    fold.setVisible(!room && !listOnly);
    BorderLayout sides = (BorderLayout) getLayout();
    if (listOnly != BorderLayout.CENTER.equals(sides.getConstraints(list))) {
      sides.removeLayoutComponent(list);
      sides.removeLayoutComponent(page);
      sides.addLayoutComponent(list, listOnly ? BorderLayout.CENTER : BorderLayout.WEST);
      sides.addLayoutComponent(page, listOnly ? BorderLayout.EAST : BorderLayout.CENTER);
    }
  }

  @Override
  public void doLayout() {
    arrange();
    super.doLayout();
  }
}
