package hullalmanac.ui.widget;

import java.awt.Component;
import java.awt.Window;
import javax.swing.SwingUtilities;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Says when the text of a field changes. */
public final class Typing implements DocumentListener {
  private final Runnable changed;

  private Typing(Runnable changed) {
    this.changed = changed;
  }

  /** Calls back after each change of a field's text. */
  public static void in(JTextComponent field, Runnable changed) {
    field.getDocument().addDocumentListener(new Typing(changed));
  }

  /**
   * What has the cursor in a component's window, or is about to get it; nothing where the component
   * is in none.
   */
  public static Component place(Component in) {
    Window window = SwingUtilities.getWindowAncestor(in);
    return window == null ? null : window.getMostRecentFocusOwner();
  }

  @Override
  public void insertUpdate(DocumentEvent e) {
    changed.run();
  }

  @Override
  public void removeUpdate(DocumentEvent e) {
    changed.run();
  }

  @Override
  public void changedUpdate(DocumentEvent e) {
    changed.run();
  }
}
