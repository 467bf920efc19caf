package hullalmanac.ui.sheet;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.util.Optional;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;

/**
 * How far one has read and where one writes on a page, to be kept when it is built anew.
 *
 * @param focused name of what has the cursor; absent where nothing on the page has it
 */
record Standpoint(Point at, Optional<String> focused) {
  static Standpoint of(JScrollPane scroll) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    boolean inside = owner != null && SwingUtilities.isDescendingFrom(owner, scroll);
    return new Standpoint(
        scroll.getViewport().getViewPosition(),
        Optional.ofNullable(inside ? owner.getName() : null));
  }

  /**
   * Goes back to it on the new page, as far as that has the same parts.
   *
   * @return whether the cursor is where it was
   */
  boolean restore(JScrollPane scroll) {
    scroll.getViewport().setViewPosition(at);
    Optional<Component> same = focused.map(name -> named(scroll, name));
    same.ifPresent(Component::requestFocusInWindow);
    return same.isPresent();
  }

  private static Component named(Container in, String name) {
    for (Component c : in.getComponents()) {
      if (name.equals(c.getName())) {
        return c;
      }
      Component deeper = c instanceof Container inner ? named(inner, name) : null;
      if (deeper != null) {
        return deeper;
      }
    }
    return null;
  }
}
