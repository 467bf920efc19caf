package hullalmanac.ui.shell;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.fixture.Difference;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.JViewport;
import javax.swing.RepaintManager;

/**
 * Paints a control as it is and in another state, and looks at what changes: having the cursor and
 * being chosen must be told by points that change by 3 to 1 where they are.
 */
final class PaintedStates {
  /** How deep inside the edge a ring lies. */
  private static final int DEPTH = 4;

  /** Part of a side along which a ring must be seen: its corners are round. */
  private static final double MOST = 0.7;

  private final JComponent root;
  private final Painted painted;
  private final List<String> faults = new ArrayList<>();
  private int looked;

  PaintedStates(JComponent root, Painted painted) {
    this.root = root;
    this.painted = painted;
  }

  List<String> faults() {
    return faults;
  }

  int looked() {
    return looked;
  }

  /** A ring must come on each side of what gets the cursor. */
  void cursor(JComponent c, PretendFocus focus) {
    Rectangle seen = scrolledTo(c);
    BufferedImage without = paint(seen);
    focus.give(c);
    BufferedImage with = paint(seen);
    Rectangle box = pointed(c);
    focus.take();
    Difference changed = new Difference(without, with);
    int deep = UIScale.scale(DEPTH);
    Map.of(
            "left", new Rectangle(box.x, box.y, deep, box.height),
            "right", new Rectangle(box.x + box.width - deep, box.y, deep, box.height),
            "upper", new Rectangle(box.x, box.y, box.width, deep),
            "lower", new Rectangle(box.x, box.y + box.height - deep, box.width, deep))
        .forEach(
            (side, strip) -> {
              if (seen.contains(strip)) {
                strip.translate(-seen.x, -seen.y);
                hold(
                    changed.along(strip),
                    "the cursor on " + Painted.say(c) + " at its " + side + " side");
              }
            });
  }

  /** The part of a control that is not scrolled away; what it lies in may still cut it off. */
  private Rectangle scrolledTo(JComponent c) {
    Rectangle seen = painted.bounds(c).intersection(painted.bounds(root));
    for (Container p = c.getParent(); p != null && p != root; p = p.getParent()) {
      if (p instanceof JViewport) {
        seen = seen.intersection(painted.bounds(p));
      }
    }
    return seen;
  }

  private void hold(double part, String what) {
    looked++;
    if (part < MOST) {
      faults.add(String.format(Locale.ROOT, "%s is seen on %.0f of 100 points", what, 100 * part));
    }
  }

  /** The part of a control that has its cursor: the item or cell chosen, where there is one. */
  private Rectangle pointed(JComponent c) {
    Rectangle cell = null;
    if (c instanceof JList<?> list && list.getSelectedIndex() >= 0) {
      cell = list.getCellBounds(list.getSelectedIndex(), list.getSelectedIndex());
    } else if (c instanceof JTable table
        && table.getCellSelectionEnabled()
        && table.getSelectedRow() >= 0) {
      cell = table.getCellRect(table.getSelectedRow(), table.getSelectedColumn(), false);
    } else if (c instanceof JTabbedPane tabs) {
      cell = tabs.getBoundsAt(tabs.getSelectedIndex());
      cell.height -= UIScale.scale(DEPTH);
    }
    if (cell == null) {
      return c instanceof JTable ? painted.seen(c) : painted.bounds(c);
    }
    cell.translate(painted.bounds(c).x, painted.bounds(c).y);
    return cell;
  }

  /** A mark must go when what is chosen is chosen no more. */
  void chosen(JComponent c) {
    if (c instanceof JList<?> list && list.getSelectedIndex() >= 0) {
      int index = list.getSelectedIndex();
      chosen(c, list.getCellBounds(index, index), list::clearSelection);
      list.setSelectedIndex(index);
    } else if (c instanceof JTable table && table.getRowCount() > 0) {
      table.changeSelection(0, 0, false, false);
      chosen(c, table.getCellRect(0, 0, true), table::clearSelection);
    } else if (c instanceof JTabbedPane tabs && tabs.getTabCount() > 1) {
      chosen(c, tabs.getBoundsAt(0), () -> tabs.setSelectedIndex(1));
      tabs.setSelectedIndex(0);
    } else if (c instanceof JToggleButton button && button.isSelected()) {
      chosen(c, new Rectangle(c.getSize()), () -> button.setSelected(false));
      button.setSelected(true);
    }
  }

  private void chosen(JComponent c, Rectangle box, Runnable clear) {
    box.translate(painted.bounds(c).x, painted.bounds(c).y);
    Rectangle part = box.intersection(painted.seen(c));
    BufferedImage with = paint(part);
    clear.run();
    BufferedImage without = paint(part);
    int points = new Difference(with, without).points();
    looked++;
    if (points < part.height) {
      faults.add("the one chosen in " + Painted.say(c) + " is told by " + points + " points");
    }
  }

  private BufferedImage paint(Rectangle part) {
    BufferedImage image = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.translate(-part.x, -part.y);
    g.setClip(part);
    // Not printed: on paper a table shows neither choice nor cursor.
    RepaintManager.currentManager(root).setDoubleBufferingEnabled(false);
    root.paint(g);
    RepaintManager.currentManager(root).setDoubleBufferingEnabled(true);
    g.dispose();
    return image;
  }
}
