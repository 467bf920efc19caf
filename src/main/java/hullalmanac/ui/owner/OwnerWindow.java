package hullalmanac.ui.owner;

import hullalmanac.present.owner.OwnerPresenter;
import hullalmanac.present.owner.OwnerState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;
import javax.swing.WindowConstants;

/**
 * Covers the screen on which the main window is while a boat is shown to her owner. A plain window
 * without a frame: the full-screen mode of Java is not to be relied on everywhere. The main window
 * stays as it is.
 */
public final class OwnerWindow {
  /** Name of the frame, for those who look at it from outside. */
  public static final String NAME = "owner";

  private final JFrame main;
  private final OwnerPresenter presenter;
  private Optional<JFrame> frame = Optional.empty();
  private Optional<OwnerPanel> panel = Optional.empty();

  public OwnerWindow(JFrame main, OwnerPresenter presenter) {
    this.main = main;
    this.presenter = presenter;
  }

  /** Comes and goes as the presenter says, from now on. */
  public void watch() {
    presenter.onChange(this::render);
  }

  private void render(Optional<OwnerState> state) {
    if (state.isEmpty()) {
      frame.ifPresent(this::close);
      return;
    }
    JFrame shown = frame.orElseGet(this::make);
    shown.setTitle(state.get().name());
    panel.get().show(state.get());
    if (!shown.isVisible()) {
      shown.setVisible(true);
      panel.get().takeFocus();
    }
    shown.toFront();
  }

  private JFrame make() {
    JFrame made = new JFrame(main.getGraphicsConfiguration());
    made.setName(NAME);
    made.setUndecorated(true);
    made.setIconImages(main.getIconImages());
    made.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    made.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            presenter.leave();
          }
        });
    OwnerPanel content = new OwnerPanel(presenter::picture, presenter::leave);
    made.setContentPane(content);
    made.setBounds(main.getGraphicsConfiguration().getBounds());
    bind(made.getRootPane(), content);
    frame = Optional.of(made);
    panel = Optional.of(content);
    return made;
  }

  private void bind(JRootPane root, OwnerPanel content) {
    int menu = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    key(root, KeyEvent.VK_ESCAPE, 0, presenter::leave);
    key(root, KeyEvent.VK_F11, 0, presenter::leave);
    for (int plus : new int[] {KeyEvent.VK_PLUS, KeyEvent.VK_EQUALS, KeyEvent.VK_ADD}) {
      key(root, plus, menu, () -> zoom(content, 1));
    }
    for (int minus : new int[] {KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT}) {
      key(root, minus, menu, () -> zoom(content, -1));
    }
    key(root, KeyEvent.VK_0, menu, () -> zoom(content, 0));
  }

  private static void key(JRootPane root, int code, int modifiers, Runnable act) {
    Act.on(root, JComponent.WHEN_IN_FOCUSED_WINDOW, KeyStroke.getKeyStroke(code, modifiers), act);
  }

  private static void zoom(OwnerPanel content, int direction) {
    Theme.zoom(direction);
    content.again();
  }

  private void close(JFrame open) {
    frame = Optional.empty();
    panel = Optional.empty();
    open.dispose();
    if (main.isDisplayable()) {
      main.toFront();
      main.requestFocus();
    }
  }
}
