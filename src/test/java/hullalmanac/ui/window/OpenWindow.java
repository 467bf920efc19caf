package hullalmanac.ui.window;

import hullalmanac.core.record.Almanac;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.boats.BoatsState;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.WindowLook;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import hullalmanac.service.SampleService;
import hullalmanac.ui.owner.OwnerWindow;
import hullalmanac.ui.shell.MainWindow;
import hullalmanac.ui.task.SwingTaskRunner;
import hullalmanac.ui.theme.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** The real window on a record of its own, used by real keys and clicks, which are counted. */
final class OpenWindow {
  private static final int PATIENCE_MS = 120_000;

  /** What is asked leads to an answer, which may ask again. */
  private static final int ROUNDS = 5;

  private final RecordService record;
  private final SwingTaskRunner tasks = new SwingTaskRunner();
  private final FilesOnEventThread files = new FilesOnEventThread();
  private final Robot robot = new Robot();
  private final ShellPresenter presenter;
  private MainWindow window;
  private final AtomicReference<WindowLook> left = new AtomicReference<>();
  private int keys;
  private int clicks;

  private OpenWindow(RecordService record, Optional<WindowLook> look) throws Exception {
    this.record = record;
    presenter = new ShellPresenter(FleetService.of(record), new EditService(record), tasks);
    robot.setAutoDelay(20);
    onEventThread(
        () -> {
          Theme.start(false, 1f);
          window = new MainWindow(presenter, look, left::set);
          window.open();
          return null;
        });
    await(
        () -> onEventThread(() -> all(window.frame(), true)).contains("are due within ten weeks"));
    // The visits of care plans, which are planned after the first look, can be taken back.
    await(() -> onEventThread(() -> showing("Undo")));
  }

  private static void refuseEventThread() {
    if (EventQueue.isDispatchThread()) {
      throw new IllegalStateException("the record is touched on the event thread");
    }
  }

  /** Opens the window on a fresh copy of the sample in a folder. */
  static OpenWindow onSample(Path home) throws Exception {
    return onSample(home, Clock.systemUTC());
  }

  /** The same under a clock of one's own. */
  static OpenWindow onSample(Path home, Clock clock) throws Exception {
    SampleService.write(home.resolve("sample"));
    return again(home, clock);
  }

  /** Opens the window on the record that is in the folder already. */
  static OpenWindow again(Path home) throws Exception {
    return again(home, Optional.empty());
  }

  /** The same under a clock of one's own. */
  static OpenWindow again(Path home, Clock clock) throws Exception {
    return open(home.resolve("sample"), clock, OpenWindow::refuseEventThread, Optional.empty());
  }

  /** The same, with the window as it was left. */
  static OpenWindow again(Path home, Optional<WindowLook> look) throws Exception {
    return on(home.resolve("sample"), OpenWindow::refuseEventThread, look);
  }

  /**
   * Opens the window on a record.
   *
   * @param guard called before each use of the record's file
   */
  static OpenWindow on(Path record, Runnable guard, Optional<WindowLook> look) throws Exception {
    return open(record, Clock.systemUTC(), guard, look);
  }

  private static OpenWindow open(
      Path record, Clock clock, Runnable guard, Optional<WindowLook> look) throws Exception {
    return new OpenWindow(
        RecordService.open(
            record,
            new RecordService.Surroundings(clock, new Random()::nextLong, "desk", 1, guard)),
        look);
  }

  JFrame frame() {
    return window.frame();
  }

  /** Presses Tab and waits a little for the cursor to go on. */
  void tab() throws Exception {
    Component before = onEventThread(OpenWindow::focusOwner);
    press(KeyEvent.VK_TAB);
    for (int i = 0; i < 20 && onEventThread(OpenWindow::focusOwner) == before; i++) {
      Thread.sleep(20);
    }
  }

  /** What has the cursor, in whichever window. */
  static Component focusOwner() {
    return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
  }

  ShellPresenter presenter() {
    return presenter;
  }

  /** The record as it stands, read on its own lane. */
  Almanac almanac() {
    FutureTask<Almanac> read = new FutureTask<>(record::almanac);
    tasks.run(
        TaskRunner.Lane.DATABASE,
        () -> {
          read.run();
          return true;
        },
        done -> {},
        failed -> {});
    try {
      return read.get(PATIENCE_MS, TimeUnit.MILLISECONDS);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** Keys pressed so far; one with others held down is one. */
  int keys() {
    return keys;
  }

  int clicks() {
    return clicks;
  }

  List<String> filesTouched() throws IOException {
    return files.touched();
  }

  /** The place that is shown; absent while a sheet lies over it. */
  Place place() throws Exception {
    return onEventThread(
        () ->
            Arrays.stream(Place.values())
                .filter(p -> showing("place " + p.name()))
                .findFirst()
                .orElse(null));
  }

  /** Whether a text stands somewhere in the window. */
  boolean says(String text) throws Exception {
    return onEventThread(() -> all(window.frame(), true).contains(text));
  }

  /** Whether something of that name is seen. */
  boolean shows(String name) throws Exception {
    return onEventThread(() -> showing(name));
  }

  private boolean showing(String name) {
    Component c = named(window.frame(), name);
    return c != null && c.isShowing();
  }

  /** How many items a list shows; −1 while it is not seen. */
  int listed(String list) throws Exception {
    return onEventThread(
        () -> {
          JList<?> items = (JList<?>) named(window.frame(), list);
          return items != null && items.isShowing() ? items.getModel().getSize() : -1;
        });
  }

  /** The name of the boat whose page is chosen. */
  String boatChosen() throws Exception {
    return onEventThread(
        () -> {
          JList<?> boats = (JList<?>) named(window.frame(), "boats");
          BoatsState.Item chosen = (BoatsState.Item) boats.getSelectedValue();
          return chosen == null ? "" : chosen.name();
        });
  }

  /** The name of what has the cursor; empty when nothing has it. */
  String focused() throws Exception {
    return onEventThread(
        () -> {
          Component owner = window.frame().getFocusOwner();
          while (owner != null && owner.getName() == null) {
            owner = owner.getParent();
          }
          return owner == null ? "" : owner.getName();
        });
  }

  /** What stands in the field that has the cursor; empty when it is no field. */
  String focusedText() throws Exception {
    return onEventThread(
        () -> {
          Component owner = focusOwner();
          if (owner instanceof JComboBox<?> box) {
            return String.valueOf(box.getSelectedItem());
          }
          return owner instanceof JTextComponent text ? text.getText() : "";
        });
  }

  /** The windows that show a boat to her owner. */
  static List<JFrame> owners() throws Exception {
    return onEventThread(
        () ->
            Arrays.stream(Frame.getFrames())
                .filter(f -> f.isShowing() && OwnerWindow.NAME.equals(f.getName()))
                .map(JFrame.class::cast)
                .toList());
  }

  /** All that a window says. */
  static String texts(JFrame in) throws Exception {
    return onEventThread(() -> all(in, true));
  }

  /** All that Ahead says, also while it is not seen. */
  String rowsAhead() throws Exception {
    return onEventThread(() -> all((Container) named(window.frame(), "place AHEAD"), false));
  }

  static Component named(Container in, String name) {
    for (Component c : in.getComponents()) {
      if (name.equals(c.getName())) {
        return c;
      }
      Component deeper = c instanceof Container inner ? named(inner, name) : null;
      if (deeper != null) {
        return deeper;
      }
    }
    return null;
  }

  private static String all(Container in, boolean seen) {
    StringBuilder all = new StringBuilder();
    for (Component c : in.getComponents()) {
      if (seen && !c.isShowing()) {
        continue;
      }
      if (c instanceof JTextComponent area) {
        all.append(area.getText()).append('\n');
      } else if (c instanceof JLabel label) {
        all.append(label.getText()).append('\n');
      }
      if (c instanceof Container inner) {
        all.append(all(inner, seen));
      }
    }
    return all.toString();
  }

  void type(String text) {
    text.chars().forEach(c -> press(KeyEvent.getExtendedKeyCodeForChar(c)));
  }

  /** Presses a key while the ones before it are held down. */
  void press(int... chord) {
    keys++;
    for (int key : chord) {
      robot.keyPress(key);
    }
    for (int i = chord.length - 1; i >= 0; i--) {
      robot.keyRelease(chord[i]);
    }
  }

  /** Clicks a button, which is waited for. */
  void click(String name) throws Exception {
    clicks++;
    await(() -> onEventThread(() -> showing(name)));
    Point at =
        onEventThread(
            () -> {
              Component c = named(window.frame(), name);
              Point corner = c.getLocationOnScreen();
              return new Point(corner.x + c.getWidth() / 2, corner.y + c.getHeight() / 2);
            });
    robot.mouseMove(at.x, at.y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
  }

  /** Waits until both lanes and the event thread have done what was asked of them so far. */
  void settle() throws Exception {
    for (int i = 0; i < ROUNDS; i++) {
      for (TaskRunner.Lane lane : TaskRunner.Lane.values()) {
        CountDownLatch answered = new CountDownLatch(1);
        tasks.run(lane, () -> true, done -> answered.countDown(), failed -> {});
        if (!answered.await(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
          throw new AssertionError("the lane " + lane + " did not come to rest");
        }
      }
      // Not the robot's wait for the display too: a second each where a choice of text went by.
      SwingUtilities.invokeAndWait(() -> {});
    }
  }

  /** Does something on the event thread. */
  void run(Runnable act) throws Exception {
    onEventThread(
        () -> {
          act.run();
          return null;
        });
  }

  static <T> T onEventThread(Callable<T> work) throws Exception {
    FutureTask<T> task = new FutureTask<>(work);
    SwingUtilities.invokeAndWait(task);
    return task.get();
  }

  void await(Callable<Boolean> met) throws Exception {
    long until = System.nanoTime() + PATIENCE_MS * 1_000_000L;
    while (!met.call()) {
      if (System.nanoTime() > until) {
        throw new AssertionError(
            "what was waited for did not come; the cursor is in "
                + focused()
                + ", and the window says:\n"
                + onEventThread(() -> all(window.frame(), true)));
      }
      Thread.sleep(50);
    }
  }

  /** Closes the window as a person does, and says how it was left. */
  WindowLook leave() throws Exception {
    run(
        () ->
            window
                .frame()
                .dispatchEvent(new WindowEvent(window.frame(), WindowEvent.WINDOW_CLOSING)));
    await(() -> left.get() != null);
    close();
    return left.get();
  }

  /** What is chosen in the menu that is open; empty when nothing is or there is none. */
  String chosenInMenu() throws Exception {
    return onEventThread(
        () -> {
          MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
          return path.length > 0 && path[path.length - 1] instanceof JMenuItem item
              ? item.getText()
              : "";
        });
  }

  /** All that the menu that is open offers; empty while there is none. */
  List<String> menu() throws Exception {
    return onEventThread(
        () -> {
          MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
          return path.length == 0
              ? List.of()
              : Arrays.stream(path[0].getSubElements())
                  .filter(JMenuItem.class::isInstance)
                  .map(e -> ((JMenuItem) e).getText())
                  .toList();
        });
  }

  void close() throws Exception {
    run(() -> window.frame().dispose());
    tasks.close();
    record.close();
    files.close();
  }
}
