package hullalmanac.ui.widget;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Something done by a key. */
public final class Act extends AbstractAction {
  private static final long serialVersionUID = 1L;

  private final transient Runnable act;
  private final transient BooleanSupplier when;

  private Act(Runnable act, BooleanSupplier when) {
    this.act = act;
    this.when = when;
  }

  @Override
  public boolean isEnabled() {
    return when.getAsBoolean();
  }

  @Override
  public void actionPerformed(ActionEvent e) {
    act.run();
  }

  /**
   * Binds a key.
   *
   * @param condition one of the three of {@link JComponent#getInputMap(int)}
   */
  public static void on(JComponent component, int condition, KeyStroke key, Runnable act) {
    component.getInputMap(condition).put(key, key.toString());
    component.getActionMap().put(key.toString(), new Act(act, () -> true));
  }

  /**
   * Binds a key to a component that has the cursor, while something holds; else the key goes on to
   * what the component lies in.
   */
  public static void when(JComponent component, String key, BooleanSupplier holds, Runnable act) {
    KeyStroke stroke = stroke(key);
    component.getInputMap(JComponent.WHEN_FOCUSED).put(stroke, stroke.toString());
    component.getActionMap().put(stroke.toString(), new Act(act, holds));
  }

  /**
   * Binds a key for as long as a component's window has the cursor.
   *
   * @param stroke {@code menu} in it is Ctrl, or Command on a Mac
   */
  public static void inWindow(JComponent component, String stroke, Runnable act) {
    on(component, JComponent.WHEN_IN_FOCUSED_WINDOW, stroke(stroke), act);
  }

  /** The key of a stroke in which {@code menu} is Ctrl, or Command on a Mac. */
  public static KeyStroke stroke(String stroke) {
    boolean menu = stroke.startsWith("menu ");
    KeyStroke plain = KeyStroke.getKeyStroke(menu ? stroke.substring("menu ".length()) : stroke);
    return menu
        ? KeyStroke.getKeyStroke(plain.getKeyCode(), plain.getModifiers() | menuMask())
        : plain;
  }

  private static int menuMask() {
    return GraphicsEnvironment.isHeadless()
        ? InputEvent.CTRL_DOWN_MASK
        : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
  }

  /** Lets a component do this by whatever key its theme has for what has a name, such as "copy". */
  public static void named(JComponent component, String name, Runnable act) {
    component.getActionMap().put(name, new Act(act, () -> true));
  }

  /** Binds a key to a component that has the cursor. */
  public static void on(JComponent component, String key, Runnable act) {
    on(component, JComponent.WHEN_FOCUSED, KeyStroke.getKeyStroke(key), act);
  }

  /** Binds a key to a component that has the cursor in it. */
  public static void within(JComponent component, String key, Runnable act) {
    on(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, stroke(key), act);
  }
}
