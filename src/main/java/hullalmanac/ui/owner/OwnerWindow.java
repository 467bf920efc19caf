package hullalmanac.ui.owner;

import hullalmanac.present.owner.OwnerPresenter;
import hullalmanac.present.owner.OwnerState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Cover;
import java.util.Optional;
import javax.swing.JFrame;

/** Covers the screen on which the main window is while a boat is shown to her owner. */
public final class OwnerWindow {
  /** Name of the frame, for those who look at it from outside. */
  public static final String NAME = "owner";

  private final JFrame main;
  private final OwnerPresenter presenter;
  private final Runnable help;
  private Optional<JFrame> frame = Optional.empty();
  private Optional<OwnerPanel> panel = Optional.empty();

  /**
   * @param help leaves it for what the guide says of it
   */
  public OwnerWindow(JFrame main, OwnerPresenter presenter, Runnable help) {
    this.main = main;
    this.presenter = presenter;
    this.help = help;
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
    OwnerPanel content = new OwnerPanel(presenter::picture, presenter::leave);
    JFrame made = Cover.over(main, NAME, content, presenter::leave);
    OwnerKeys.bind(
        made.getRootPane(), presenter::leave, help, direction -> zoom(content, direction));
    frame = Optional.of(made);
    panel = Optional.of(content);
    return made;
  }

  private static void zoom(OwnerPanel content, int direction) {
    Theme.zoom(direction);
    content.again();
  }

  private void close(JFrame open) {
    frame = Optional.empty();
    panel = Optional.empty();
    Cover.close(open, main);
  }
}
