package hullalmanac.ui.shell;

import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;

/** The keys that work everywhere in the window. */
final class Keys {
  private final JRootPane root;
  private final ShellPresenter presenter;
  private final Runnable find;
  private final Runnable toggleDark;

  Keys(JRootPane root, ShellPresenter presenter, Runnable find, Runnable toggleDark) {
    this.root = root;
    this.presenter = presenter;
    this.find = find;
    this.toggleDark = toggleDark;
  }

  void bind() {
    int menu = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    for (Place place : Place.values()) {
      key(KeyEvent.VK_0 + place.number(), menu, () -> presenter.go(place));
    }
    key(KeyEvent.VK_K, menu, presenter::startFinding);
    key(KeyEvent.VK_F, menu, find);
    key(KeyEvent.VK_LEFT, InputEvent.ALT_DOWN_MASK, presenter::back);
    key(KeyEvent.VK_RIGHT, InputEvent.ALT_DOWN_MASK, presenter::forward);
    key(KeyEvent.VK_N, menu, presenter.boats()::newBoat);
    key(KeyEvent.VK_E, menu, () -> presenter.onBoat(presenter.boats()::change));
    key(KeyEvent.VK_E, menu | InputEvent.SHIFT_DOWN_MASK, presenter::openCatchUp);
    key(KeyEvent.VK_M, menu | InputEvent.SHIFT_DOWN_MASK, presenter.timed()::open);
    key(KeyEvent.VK_T, menu, () -> presenter.onBoat(presenter.boats()::beginVisit));
    key(KeyEvent.VK_L, menu, () -> presenter.onBoat(presenter.boats()::washed));
    key(KeyEvent.VK_F11, 0, () -> presenter.onBoat(presenter.boats()::showOwner));
    key(KeyEvent.VK_Z, menu, presenter::undo);
    key(KeyEvent.VK_Z, menu | InputEvent.SHIFT_DOWN_MASK, presenter::redo);
    key(KeyEvent.VK_Y, menu, presenter::redo);
    key(KeyEvent.VK_B, menu | InputEvent.SHIFT_DOWN_MASK, presenter::openBin);
    key(KeyEvent.VK_F5, 0, presenter::load);
    key(KeyEvent.VK_PLUS, menu, () -> Theme.zoom(1));
    key(KeyEvent.VK_EQUALS, menu, () -> Theme.zoom(1));
    key(KeyEvent.VK_ADD, menu, () -> Theme.zoom(1));
    key(KeyEvent.VK_MINUS, menu, () -> Theme.zoom(-1));
    key(KeyEvent.VK_SUBTRACT, menu, () -> Theme.zoom(-1));
    key(KeyEvent.VK_0, menu, () -> Theme.zoom(0));
    key(KeyEvent.VK_D, menu | InputEvent.SHIFT_DOWN_MASK, toggleDark);
    key(KeyEvent.VK_W, menu | InputEvent.SHIFT_DOWN_MASK, () -> Theme.wetHands(!Theme.wetHands()));
  }

  private void key(int code, int modifiers, Runnable act) {
    Act.on(root, JComponent.WHEN_IN_FOCUSED_WINDOW, KeyStroke.getKeyStroke(code, modifiers), act);
  }
}
