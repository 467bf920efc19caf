package hullalmanac.ui.widget;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;

/** A menu with what one can do right here: by right click, Shift+F10 or the Menu key. */
public final class ContextMenu extends MouseAdapter {
  private final JComponent on;
  private final Function<Optional<Point>, JPopupMenu> made;

  private ContextMenu(JComponent on, Function<Optional<Point>, JPopupMenu> made) {
    this.on = on;
    this.made = made;
  }

  /**
   * Gives a component a menu.
   *
   * @param made makes it anew each time, for where the pointer is; without one, for where the
   *     cursor is
   * @param cursor where the menu opens when it was asked for by a key
   */
  public static void on(
      JComponent on, Function<Optional<Point>, JPopupMenu> made, Supplier<Point> cursor) {
    ContextMenu menu = byPointer(on, made);
    on.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent e) {
            on.requestFocusInWindow();
          }
        });
    Runnable byKey = () -> menu.open(made.apply(Optional.empty()), cursor.get());
    Act.within(on, "shift F10", byKey);
    Act.within(on, "CONTEXT_MENU", byKey);
  }

  /** Gives a component that never has the cursor a menu. */
  static ContextMenu byPointer(JComponent on, Function<Optional<Point>, JPopupMenu> made) {
    ContextMenu menu = new ContextMenu(on, made);
    on.addMouseListener(menu);
    return menu;
  }

  private void open(JPopupMenu menu, Point at) {
    menu.show(on, at.x, at.y);
  }

  /** Some systems open menus when a button goes down, others when it goes up. */
  private void perhaps(MouseEvent e) {
    if (e.isPopupTrigger()) {
      open(made.apply(Optional.of(e.getPoint())), e.getPoint());
    }
  }

  @Override
  public void mousePressed(MouseEvent e) {
    perhaps(e);
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    perhaps(e);
  }

  /**
   * Something to do in a menu.
   *
   * @param key the key that does the same without the menu; empty for none. It works while the menu
   *     is open, too, so that Enter, which does there what is chosen, can be none.
   */
  public static JMenuItem item(String words, String key, Runnable act) {
    JMenuItem item = new JMenuItem(words);
    item.setName(words);
    if (!key.isEmpty()) {
      item.setAccelerator(KeyStroke.getKeyStroke(key));
    }
    item.addActionListener(e -> act.run());
    return item;
  }
}
