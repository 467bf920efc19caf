package hullalmanac.ui.sheet;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.util.Optional;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;

/**
 * How far one has read and where one writes on a page, to be kept when it is built anew.
 *
 * @param inside whether something on the page has the cursor
 * @param focused the name of that, or of what it lies in
 */
record Standpoint(Point at, boolean inside, Optional<String> focused) {
  static Standpoint of(JScrollPane scroll) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    boolean inside = owner != null && SwingUtilities.isDescendingFrom(owner, scroll);
    while (inside && owner != scroll && owner.getName() == null) {
      owner = owner.getParent();
    }
    return new Standpoint(
        scroll.getViewport().getViewPosition(),
        inside,
        Optional.ofNullable(inside && owner != scroll ? owner.getName() : null));
  }

  /**
   * Goes back to it on the new page, as far as that has the same parts.
   *
   * @return whether the cursor is where it was
   */
  boolean restore(JScrollPane scroll) {
    scroll.getViewport().setViewPosition(at);
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    if (inside && owner != null && SwingUtilities.isDescendingFrom(owner, scroll)) {
      return true;
    }
    Optional<Component> same = focused.map(name -> named(scroll, name));
    same.map(c -> c instanceof JTable table && table.isEditing() ? table.getEditorComponent() : c)
        .ifPresent(Component::requestFocusInWindow);
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
