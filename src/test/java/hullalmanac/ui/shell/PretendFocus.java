package hullalmanac.ui.shell;

import java.awt.Component;
import java.awt.DefaultKeyboardFocusManager;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.JComboBox;
import javax.swing.JComponent;

/** Lets a component believe that it has the cursor, without a display. */
final class PretendFocus extends DefaultKeyboardFocusManager implements AutoCloseable {
  private final KeyboardFocusManager before = KeyboardFocusManager.getCurrentKeyboardFocusManager();
  private Component owner;

  PretendFocus() {
    KeyboardFocusManager.setCurrentKeyboardFocusManager(this);
  }

  /** Gives the cursor to a control; what is written in is what has it in an open box. */
  void give(JComponent control) {
    owner =
        control instanceof JComboBox<?> box && box.isEditable()
            ? box.getEditor().getEditorComponent()
            : control;
    for (FocusListener l : owner.getFocusListeners()) {
      l.focusGained(new FocusEvent(owner, FocusEvent.FOCUS_GAINED));
    }
  }

  void take() {
    Component had = owner;
    owner = null;
    for (FocusListener l : had.getFocusListeners()) {
      l.focusLost(new FocusEvent(had, FocusEvent.FOCUS_LOST));
    }
  }

  @Override
  public Component getFocusOwner() {
    return owner;
  }

  @Override
  public Component getPermanentFocusOwner() {
    return owner;
  }

  @Override
  public void close() {
    KeyboardFocusManager.setCurrentKeyboardFocusManager(before);
  }
}
