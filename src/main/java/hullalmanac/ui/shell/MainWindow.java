package hullalmanac.ui.shell;

import com.formdev.flatlaf.extras.FlatSVGUtils;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.ShellState;
import hullalmanac.present.shell.WindowMemory;
import hullalmanac.ui.ahead.AheadPanel;
import hullalmanac.ui.boats.BoatsPanel;
import hullalmanac.ui.theme.Theme;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.WindowConstants;

/** The one window: rail, places, status line. To be made on the event thread. */
public final class MainWindow {
  private final JFrame frame = new JFrame("Hull Almanac");
  private final ShellPresenter presenter;
  private final WindowMemory memory;
  private final Rail rail;
  private final StatusLine status;
  private final CardLayout cards = new CardLayout();
  private final JPanel places = new JPanel(cards);
  private final BoatsPanel boats;

  /**
   * Builds the window; {@link Theme#start} comes first.
   *
   * @param closed called when the window has been closed
   */
  public MainWindow(ShellPresenter presenter, WindowMemory memory, Runnable closed) {
    this.presenter = presenter;
    this.memory = memory;
    this.rail = new Rail(presenter::go);
    this.status = new StatusLine(this::toggleDark);
    this.boats = new BoatsPanel(presenter.boats());
    places.add(new AheadPanel(presenter.ahead()), Place.AHEAD.name());
    places.add(boats, Place.BOATS.name());
    JPanel content = new JPanel(new BorderLayout());
    content.add(rail, BorderLayout.WEST);
    content.add(places);
    content.add(status, BorderLayout.SOUTH);
    frame.setContentPane(content);
    frame.setIconImages(FlatSVGUtils.createWindowIconImages("/hullalmanac/ui/icons/program.svg"));
    frame.setMinimumSize(new Dimension(760, 520));
    frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            keepLook();
          }

          @Override
          public void windowClosed(WindowEvent e) {
            closed.run();
          }
        });
    new Keys(frame.getRootPane(), presenter, this::find, this::toggleDark).bind();
    place();
    presenter.onChange(this::render);
  }

  /** Shows the window and has the record read. */
  public void open() {
    frame.setVisible(true);
    places.setFocusable(true);
    places.requestFocusInWindow();
    presenter.load();
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

  private void find() {
    presenter.go(Place.BOATS);
    boats.startFinding();
  }

  private void toggleDark() {
    Theme.change(!Theme.isDark());
  }

  private void render(ShellState state) {
    rail.show(state.place());
    cards.show(places, state.place().name());
    status.show(state);
  }

  private void place() {
    frame.setBounds(centred());
    memory
        .recall()
        .ifPresent(
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

  private void keepLook() {
    boolean maximised = (frame.getExtendedState() & JFrame.MAXIMIZED_BOTH) == JFrame.MAXIMIZED_BOTH;
    Rectangle bounds = maximised ? centred() : frame.getBounds();
    memory.keep(
        new WindowMemory.Look(
            bounds.x,
            bounds.y,
            bounds.width,
            bounds.height,
            maximised,
            Theme.isDark(),
            Theme.zoom()));
  }
}
