package hullalmanac.ui.widget;

import hullalmanac.core.record.Texts;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;

/** Tables on tabs, as high as the one shown, so that a short one leaves no hole under it. */
public final class TableTabs extends JTabbedPane {
  private static final long serialVersionUID = 1L;

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
