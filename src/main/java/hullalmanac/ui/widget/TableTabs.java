package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.record.Texts;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;

/** Tables on tabs, as high as the one shown, so that a short one leaves no hole under it. */
public final class TableTabs extends JTabbedPane {
  private static final long serialVersionUID = 1L;

  /** Under the tab chosen lies a line that tells it; the ring of the cursor spares it. */
  private static final int LINE_BELOW = 4;

  private int over;

  public TableTabs(String name) {
    setName(name);
    getAccessibleContext().setAccessibleName(Texts.capital(name));
    addChangeListener(e -> revalidate());
  }

  /** Adds a table. */
  public void add(String title, TidyTable table) {
    tab(title, new SideScroll(table));
  }

  /** Adds what is said where a table has no rows. */
  public void addWords(String title, String words) {
    tab(title, Labels.quiet(words));
  }

  private void tab(String title, Component shown) {
    JPanel content = new JPanel(new BorderLayout());
    content.setBorder(BorderFactory.createEmptyBorder(8, 0, 0, 0));
    content.add(shown, BorderLayout.NORTH);
    addTab(title, content);
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    if (isFocusOwner() && getSelectedIndex() >= 0) {
      Rectangle tab = getBoundsAt(getSelectedIndex());
      tab.height -= UIScale.scale(LINE_BELOW);
      Marks.cursor(g, tab);
    }
  }

  /** In a narrow window the tabs stand in two rows, which is known only once they are laid out. */
  @Override
  public void doLayout() {
    super.doLayout();
    int now = getSelectedComponent() == null ? 0 : getSelectedComponent().getY();
    if (now != over) {
      over = now;
      revalidate();
    }
  }

  @Override
  public Dimension getPreferredSize() {
    Dimension all = super.getPreferredSize();
    return getSelectedComponent() == null
        ? all
        : new Dimension(all.width, over + getSelectedComponent().getPreferredSize().height);
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, getPreferredSize().height);
  }
}
