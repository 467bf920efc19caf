package hullalmanac.ui.shell;

import com.formdev.flatlaf.extras.FlatSVGUtils;
import hullalmanac.present.Look;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.WindowLook;
import hullalmanac.ui.card.CardWindow;
import hullalmanac.ui.find.FindPanel;
import hullalmanac.ui.owner.OwnerWindow;
import hullalmanac.ui.theme.Theme;
import java.awt.Dimension;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.Timer;
import javax.swing.WindowConstants;

/** The one window: rail, places, status line. To be made on the event thread. */
public final class MainWindow {
  private static final int A_MINUTE = 60_000;

  private final JFrame frame = new JFrame("Hull Almanac");
  private final ShellPresenter presenter;
  private final ShellPanel content;
  private final Timer clock;
  private final DesktopNotice notice;
  private WindowLook left;

  /**
   * Builds the window and has the record read meanwhile; {@link Theme#start} comes first.
   *
   * @param look how it was left the last time
   * @param closed called with how it is left, when it has been closed
   */
  public MainWindow(
      ShellPresenter presenter, Optional<WindowLook> look, Consumer<WindowLook> closed) {
    this.presenter = presenter;
    List<Image> icons = FlatSVGUtils.createWindowIconImages("/hullalmanac/ui/icons/program.svg");
    this.notice = new DesktopNotice(icons.get(0), this::showAhead, presenter::tell);
    presenter.onDue(notice::say);
    presenter.load();
    presenter.settings().seenBy(new ThemeLooks());
    this.clock = new Timer(A_MINUTE, e -> presenter.lookAtTheClock());
    look.ifPresent(l -> presenter.tables().begin(l.tables()));
    this.content = new ShellPanel(presenter, this::toggleDark);
    frame.setContentPane(content);
    frame.setGlassPane(new FindPanel(presenter.find(), content::takeFocus));
    frame.setIconImages(icons);
    frame.setMinimumSize(new Dimension(760, 520));
    frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            left = look();
          }

          @Override
          public void windowActivated(WindowEvent e) {
            presenter.lookAtTheClock();
          }

          @Override
          public void windowClosed(WindowEvent e) {
            presenter.owner().leave();
            presenter.card().leave();
            clock.stop();
            notice.close();
            closed.accept(left);
          }
        });
    new OwnerWindow(frame, presenter.owner(), presenter::openHelp).watch();
    new CardWindow(frame, presenter.card(), presenter::openHelp).watch();
    new Keys(frame.getRootPane(), presenter, this::find, this::toggleDark).bind();
    place(look);
    left = look();
    clock.start();
  }

  /** Shows the window. */
  public void open() {
    frame.setVisible(true);
    content.takeFocus();
  }

  /** Closes it as if its cross had been pressed. */
  public void close() {
    left = look();
    frame.dispose();
  }

  /** Brings the window before all others. */
  public void toFront() {
    if ((frame.getExtendedState() & JFrame.ICONIFIED) != 0) {
      frame.setExtendedState(frame.getExtendedState() & ~JFrame.ICONIFIED);
    }
    frame.toFront();
    frame.requestFocus();
  }

  /** The frame, for those who look at it from outside. */
  public JFrame frame() {
    return frame;
  }

  private void showAhead() {
    toFront();
    presenter.go(Place.AHEAD);
  }

  private void find() {
    presenter.go(Place.BOATS);
    content.startFinding();
  }

  private void toggleDark() {
    Theme.toggleDark();
  }

  private void place(Optional<WindowLook> before) {
    frame.setBounds(centred());
    before.ifPresent(
        look -> {
          Rectangle wanted = new Rectangle(look.x(), look.y(), look.width(), look.height());
          if (onScreen(wanted)) {
            frame.setBounds(wanted);
          }
          if (look.maximised()) {
            frame.setExtendedState(JFrame.MAXIMIZED_BOTH);
          }
        });
  }

  private static Rectangle centred() {
    Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    int width = Math.min(1280, screen.width);
    int height = Math.min(800, screen.height);
    return new Rectangle(
        screen.x + (screen.width - width) / 2,
        screen.y + (screen.height - height) / 2,
        width,
        height);
  }

  /** The window's look as settings change it. */
  private static final class ThemeLooks implements Look.Looks {
    @Override
    public Look now() {
      return Theme.look();
    }

    @Override
    public void become(Look look) {
      Theme.become(look);
    }
  }

  private static boolean onScreen(Rectangle wanted) {
    for (GraphicsDevice device :
        GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
      Rectangle seen = device.getDefaultConfiguration().getBounds().intersection(wanted);
      if (seen.width > 200 && seen.height > 100) {
        return true;
      }
    }
    return false;
  }

  private WindowLook look() {
    boolean maximised = (frame.getExtendedState() & JFrame.MAXIMIZED_BOTH) == JFrame.MAXIMIZED_BOTH;
    Rectangle bounds = maximised ? centred() : frame.getBounds();
    return new WindowLook(
        bounds.x,
        bounds.y,
        bounds.width,
        bounds.height,
        maximised,
        Theme.look(),
        presenter.tables().choices());
  }
}
