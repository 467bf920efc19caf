package hullalmanac.ui.card;

import hullalmanac.present.card.CardPresenter;
import hullalmanac.present.card.CardState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Cover;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.Timer;

/**
 * Covers the screen on which the main window is while the card of a visit is shown. The clock is
 * looked at while a dwell is timed, whether a card is shown or not.
 */
public final class CardWindow {
  /** Name of the frame, for those who look at it from outside. */
  public static final String NAME = "card";

  private static final int OFTEN = 250;
  private final JFrame main;
  private final CardPresenter presenter;
  private final Runnable help;
  private final Timer clock;
  private Optional<JFrame> frame = Optional.empty();
  private Optional<CardPanel> panel = Optional.empty();

  /**
   * @param help leaves it for what the guide says of it
   */
  public CardWindow(JFrame main, CardPresenter presenter, Runnable help) {
    this.main = main;
    this.presenter = presenter;
    this.help = help;
    clock = new Timer(OFTEN, e -> presenter.lookAtTheClock());
  }

  /** Comes and goes as the presenter says, from now on. */
  public void watch() {
    presenter.onSound(Toolkit.getDefaultToolkit()::beep);
    presenter.onChange(this::render);
    presenter.onClock(now -> panel.ifPresent(p -> p.show(now)));
    main.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosed(WindowEvent e) {
            clock.stop();
          }
        });
  }

  private void render(Optional<CardState> state) {
    if (presenter.timing() && main.isDisplayable()) {
      clock.start();
    } else {
      clock.stop();
    }
    if (state.isEmpty()) {
      frame.ifPresent(this::close);
      return;
    }
    JFrame shown = frame.orElseGet(this::make);
    shown.setTitle(state.get().title());
    panel.orElseThrow().show(state.get());
    if (!shown.isVisible()) {
      shown.setVisible(true);
      panel.get().takeFocus();
      shown.toFront();
    }
  }

  private JFrame make() {
    CardPanel content = new CardPanel(presenter);
    JFrame made = Cover.over(main, NAME, content, presenter::leave);
    CardKeys.bind(made.getRootPane(), presenter, help, direction -> zoom(content, direction));
    frame = Optional.of(made);
    panel = Optional.of(content);
    return made;
  }

  private static void zoom(CardPanel content, int direction) {
    Theme.zoom(direction);
    content.again();
  }

  private void close(JFrame open) {
    frame = Optional.empty();
    panel = Optional.empty();
    Cover.close(open, main);
  }
}
