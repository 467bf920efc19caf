package hullalmanac.ui.widget;

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
