package hullalmanac.ui.shell;

import hullalmanac.fixture.Contrast;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** A component laid out and painted without a display, and what is wrong with it. */
public final class Painted {
  private final JComponent root;
  private final BufferedImage image;
  private final List<String> faults = new ArrayList<>();
  private final Set<Integer> sizes = new TreeSet<>();

  public Painted(JComponent root, int width, int height) {
    this.root = root;
    root.setSize(width, height);
    for (int i = 0; i < 4; i++) {
      layOut(root);
    }
    image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    root.printAll(g);
    g.dispose();
    each(root, this::look);
  }

  public List<String> faults() {
    return faults;
  }

  /** Whether a colour was painted anywhere. */
  boolean has(Color colour) {
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (image.getRGB(x, y) == colour.getRGB()) {
          return true;
        }
      }
    }
    return false;
  }

  /** What was painted. */
  BufferedImage image() {
    return image;
  }

  /** Sizes of text, in tenths of a point. */
  public Set<Integer> textSizes() {
    return sizes;
  }

  static void layOut(Container container) {
    container.invalidate();
    container.doLayout();
    for (Component c : container.getComponents()) {
      if (c.isVisible() && c instanceof Container inner) {
        layOut(inner);
      }
    }
  }

  private static void each(Container container, Consumer<JComponent> look) {
    for (Component c : container.getComponents()) {
      if (c.isVisible() && c instanceof JComponent inner) {
        look.accept(inner);
        each(inner, look);
      }
    }
  }

  private void look(JComponent c) {
    if (c.getWidth() == 0 || c.getHeight() == 0 || !onImage(c)) {
      return;
    }
    if (!(c.getParent() instanceof JViewport)) {
      inside(c);
    }
    if (c instanceof JLabel label && !label.getText().isBlank()) {
      text(c);
    } else if (c instanceof AbstractButton button && button.getText() != null) {
      text(c);
    } else if (c instanceof JTextArea area && !area.getText().isBlank()) {
      lines(area);
    }
    if (isControl(c)) {
      control(c);
    }
  }

  /** All components that are painted, at least in part. */
  List<JComponent> shown() {
    List<JComponent> shown = new ArrayList<>();
    each(
        root,
        c -> {
          if (onImage(c)) {
            shown.add(c);
          }
        });
    return shown;
  }

  /** Whether it is something that one does something with. */
  static boolean isControl(JComponent c) {
    return c.isFocusable()
        && (c instanceof AbstractButton
            || c instanceof JComboBox<?>
            || c instanceof JTable
            || c instanceof JList<?>
            || (c instanceof JTextComponent t && t.isEditable()))
        && SwingUtilities.getAncestorOfClass(JComboBox.class, c) == null
        && SwingUtilities.getAncestorOfClass(javax.swing.JScrollBar.class, c) == null;
  }

  private void control(JComponent c) {
    AccessibleContext name = c.getAccessibleContext();
    if (name == null || name.getAccessibleName() == null || name.getAccessibleName().isBlank()) {
      faults.add(say(c) + " has no accessible name");
    }
    boolean clear = c instanceof JTable || c instanceof JList<?>;
    boolean inField = c.getParent() instanceof JTextComponent;
    if (!clear && !inField && c.getHeight() < 28) {
      faults.add(say(c) + " is only " + c.getHeight() + " px high");
    }
  }

  /** Where a component lies on the picture. */
  Rectangle bounds(Component c) {
    Point at = SwingUtilities.convertPoint(c, 0, 0, root);
    return new Rectangle(at.x, at.y, c.getWidth(), c.getHeight());
  }

  private boolean onImage(JComponent c) {
    return !seen(c).isEmpty();
  }

  /** The part of a component that nothing it lies in cuts off. */
  Rectangle seen(JComponent c) {
    Rectangle seen = bounds(c);
    for (Container p = c.getParent(); p != null && p != root.getParent(); p = p.getParent()) {
      seen = seen.intersection(bounds(p));
    }
    return seen;
  }

  private void inside(JComponent c) {
    Rectangle parent = new Rectangle(c.getParent().getSize());
    if (!parent.contains(c.getBounds())) {
      faults.add(say(c) + " reaches out of its parent: " + c.getBounds() + " in " + parent);
    }
  }

  private void text(JComponent c) {
    sizes.add(Math.round(c.getFont().getSize2D() * 10));
    boolean shortened = c.getWidth() < c.getPreferredSize().width && c.getToolTipText() == null;
    if (shortened || c.getHeight() + 1 < c.getFontMetrics(c.getFont()).getHeight()) {
      faults.add(
          say(c)
              + " is cut: "
              + c.getSize().width
              + " × "
              + c.getSize().height
              + " of "
              + c.getPreferredSize().width
              + " × "
              + c.getPreferredSize().height);
    }
    contrast(c);
  }

  private void lines(JTextArea area) {
    sizes.add(Math.round(area.getFont().getSize2D() * 10));
    if (area.getHeight() + 1 < area.getPreferredSize().height) {
      faults.add(say(area) + " is cut at " + area.getHeight() + " px");
    }
    contrast(area);
  }

  private void contrast(JComponent c) {
    // What is half scrolled away shows no ground to go by.
    if (!c.isEnabled() || seen(c).height < c.getHeight()) {
      return;
    }
    Color ground = ground(c);
    double ratio = Contrast.ratio(c.getForeground(), ground);
    if (ratio < 4.5) {
      faults.add(
          String.format(
              "%s has contrast %.2f (%06x on %06x)",
              say(c), ratio, c.getForeground().getRGB() & 0xffffff, ground.getRGB() & 0xffffff));
    }
  }

  /** The colour most of a component's box was painted in. */
  private Color ground(JComponent c) {
    Rectangle box =
        bounds(c).intersection(new Rectangle(0, 0, image.getWidth(), image.getHeight()));
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = box.y; y < box.y + box.height; y++) {
      for (int x = box.x; x < box.x + box.width; x++) {
        counts.merge(image.getRGB(x, y), 1, Integer::sum);
      }
    }
    return new Color(
        counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey());
  }

  static String say(JComponent c) {
    String text =
        c instanceof JLabel l
            ? l.getText()
            : c instanceof AbstractButton b
                ? b.getText()
                : c instanceof JTextComponent t ? t.getText() : String.valueOf(c.getName());
    return c.getClass().getSimpleName() + " \"" + text + "\"";
  }
}
