package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.present.boats.BoatsState;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.WindowLook;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import hullalmanac.service.SampleService;
import hullalmanac.ui.shell.MainWindow;
import hullalmanac.ui.task.SwingTaskRunner;
import hullalmanac.ui.theme.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real window on a copy of the sample, used by real keys. */
@NeedsDisplay
class WindowIT {
  private static final int PATIENCE_MS = 20_000;

  @TempDir Path home;
  private final AtomicReference<WindowLook> left = new AtomicReference<>();
  private RecordService record;
  private SwingTaskRunner tasks;
  private ShellPresenter presenter;
  private MainWindow window;
  private Robot robot;
  private FilesOnEventThread files;

  private static void refuseEventThread() {
    if (EventQueue.isDispatchThread()) {
      throw new IllegalStateException("the record is touched on the event thread");
    }
  }

  @BeforeEach
  void open() throws Exception {
    Path folder = home.resolve("sample");
    SampleService.write(folder);
    record =
        RecordService.open(
            folder,
            new RecordService.Surroundings(
                Clock.systemUTC(),
                new Random(1)::nextLong,
                "desk",
                1,
                WindowIT::refuseEventThread));
    tasks = new SwingTaskRunner();
    presenter = new ShellPresenter(FleetService.of(record), new EditService(record), tasks);
    robot = new Robot();
    robot.setAutoDelay(20);
    files = new FilesOnEventThread();
    onEventThread(
        () -> {
          Theme.start(false, 1f);
          window = new MainWindow(presenter, Optional.empty(), left::set);
          window.open();
          return null;
        });
    await(() -> texts().contains("boats are due within ten weeks"));
  }

  @AfterEach
  void close() throws Exception {
    onEventThread(
        () -> {
          window.frame().dispose();
          return null;
        });
    tasks.close();
    record.close();
    files.close();
  }

  @Test
  void findsABoatAndGoesBackByKeysAloneWithoutTouchingAFile() throws Exception {
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_2);
    await(() -> place() == Place.BOATS);
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_F);
    type("siskin");
    await(() -> listed() == 1);
    press(KeyEvent.VK_DOWN);
    await(() -> texts().contains("The label says 12 months"));
    press(KeyEvent.VK_ALT, KeyEvent.VK_LEFT);
    await(() -> place() == Place.AHEAD);
    press(KeyEvent.VK_ALT, KeyEvent.VK_RIGHT);
    await(() -> place() == Place.BOATS);
    assertThat(files.touched()).isEmpty();
  }

  @Test
  void opensWhatItFindsFromAnywhereAndGivesTheFocusBack() throws Exception {
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_F);
    await(() -> "find boats".equals(focused()));
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    await(() -> "find anything".equals(focused()));
    type("zzzz");
    await(() -> texts().contains("begins with “zzzz”"));
    press(KeyEvent.VK_ESCAPE);
    await(() -> "find boats".equals(focused()));
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_1);
    await(() -> place() == Place.AHEAD);
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    await(() -> "find anything".equals(focused()));
    type("sand");
    await(() -> found() >= 2);
    press(KeyEvent.VK_DOWN);
    press(KeyEvent.VK_ENTER);
    await(() -> place() == Place.BOATS);
    await(() -> boatChosen().equals("Sandpiper"));
    await(() -> focused() != null && !"find anything".equals(focused()));
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_5);
    await(() -> place() == Place.SHELF);
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    await(() -> "find anything".equals(focused()) && found() == 2);
    press(KeyEvent.VK_ENTER);
    await(() -> place() == Place.BOATS);
    assertThat(boatChosen()).isEqualTo("Sandpiper");
    assertThat(files.touched()).isEmpty();
  }

  /** Six presses of keys, a key held down with another counted as one. */
  @Test
  void findsABoatAndShowsItToItsOwnerInSixKeysAndGoesBack() throws Exception {
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    await(() -> "find anything".equals(focused()));
    int keys = 1 + type("sis");
    await(() -> found() > 0);
    press(KeyEvent.VK_ENTER);
    await(() -> place() == Place.BOATS);
    press(KeyEvent.VK_F11);
    keys += 2;
    await(() -> OpenWindow.owners().stream().anyMatch(JFrame::isFocused));
    assertThat(keys).isLessThanOrEqualTo(6);
    JFrame owner = OpenWindow.owners().get(0);
    assertThat(owner.getTitle()).isEqualTo("Siskin");
    assertThat(textsOf(owner)).startsWith("Siskin\n").contains("A forecast, not a guarantee.");
    assertThat(owner.getBounds()).isEqualTo(window.frame().getGraphicsConfiguration().getBounds());
    press(KeyEvent.VK_ESCAPE);
    await(() -> OpenWindow.owners().isEmpty());
    assertThat(place()).isEqualTo(Place.BOATS);
    assertThat(boatChosen()).isEqualTo("Siskin");
    await(() -> window.frame().isFocused());
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_1);
    await(() -> place() == Place.AHEAD);
    press(KeyEvent.VK_F11);
    press(KeyEvent.VK_ALT, KeyEvent.VK_LEFT);
    await(() -> place() == Place.BOATS);
    assertThat(OpenWindow.owners()).as("F11 shows nothing where no boat's page is open").isEmpty();
    assertThat(files.touched()).isEmpty();
  }

  @Test
  void movesTheDividerOfTwoPhotosByKeysAndByMouse() throws Exception {
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    await(() -> "find anything".equals(focused()));
    type("black g");
    await(() -> found() > 0);
    press(KeyEvent.VK_ENTER);
    await(() -> place() == Place.BOATS);
    press(KeyEvent.VK_F11);
    await(() -> OpenWindow.owners().stream().anyMatch(JFrame::isFocused));
    JFrame owner = OpenWindow.owners().get(0);
    await(() -> named(owner, "pair") != null);
    JComponent pair = (JComponent) onEventThread(() -> named(owner, "pair"));
    press(KeyEvent.VK_TAB);
    press(KeyEvent.VK_TAB);
    await(pair::isFocusOwner);
    press(KeyEvent.VK_LEFT);
    await(() -> before(pair) == 45);
    Rectangle seen = onEventThread(() -> new Rectangle(pair.getLocationOnScreen(), pair.getSize()));
    robot.mouseMove(seen.x + seen.width / 2, seen.y + seen.height / 2);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseMove(seen.x + seen.width / 4, seen.y + seen.height / 2);
    await(() -> Math.abs(before(pair) - 25) <= 1);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    press(KeyEvent.VK_F11);
    await(() -> OpenWindow.owners().isEmpty());
    assertThat(files.touched()).isEmpty();
  }

  /** How many per cent are seen of the picture before, as it is read out. */
  private static int before(JComponent pair) throws Exception {
    return onEventThread(
        () ->
            pair.getAccessibleContext()
                .getAccessibleValue()
                .getCurrentAccessibleValue()
                .intValue());
  }

  @Test
  void growsAndShrinksAndTurnsDark() throws Exception {
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_EQUALS);
    await(() -> Theme.look().zoom() > 1f);
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_0);
    await(() -> Theme.look().zoom() == 1f);
    press(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_D);
    await(Theme::isDark);
  }

  @Test
  void saysOnClosingHowItWasLeft() throws Exception {
    onEventThread(
        () -> {
          window.frame().setBounds(40, 30, 1000, 700);
          return null;
        });
    robot.waitForIdle();
    onEventThread(
        () -> {
          window
              .frame()
              .dispatchEvent(
                  new java.awt.event.WindowEvent(
                      window.frame(), java.awt.event.WindowEvent.WINDOW_CLOSING));
          return null;
        });
    await(() -> left.get() != null);
    assertThat(left.get().width()).isEqualTo(1000);
    assertThat(left.get().height()).isEqualTo(700);
  }

  /** The guard at the door of the record. */
  @Test
  void refusesTheRecordOnTheEventThread() throws Exception {
    assertThatThrownBy(
            () ->
                onEventThread(
                    () ->
                        RecordService.openReadOnly(
                            record.folder(),
                            new RecordService.Surroundings(
                                Clock.systemUTC(),
                                () -> 1,
                                "desk",
                                1,
                                WindowIT::refuseEventThread))))
        .hasRootCauseMessage("the record is touched on the event thread");
  }

  private Place place() throws Exception {
    return onEventThread(
        () ->
            Arrays.stream(Place.values())
                .filter(
                    p -> {
                      Component c = named(window.frame(), "place " + p.name());
                      return c != null && c.isShowing();
                    })
                .findFirst()
                .orElse(null));
  }

  private int listed() throws Exception {
    return onEventThread(() -> ((JList<?>) named(window.frame(), "boats")).getModel().getSize());
  }

  /** How many hits finding shows; −1 while it is not seen. */
  private int found() throws Exception {
    return onEventThread(
        () -> {
          JList<?> found = (JList<?>) named(window.frame(), "found");
          return found.isShowing() ? found.getModel().getSize() : -1;
        });
  }

  /** The name of the boat whose page is chosen. */
  private String boatChosen() throws Exception {
    return onEventThread(
        () -> {
          JList<?> boats = (JList<?>) named(window.frame(), "boats");
          return ((BoatsState.Item) boats.getSelectedValue()).name();
        });
  }

  /** The name of what has the focus; null when nothing has it. */
  private String focused() throws Exception {
    return onEventThread(
        () -> {
          Component owner = window.frame().getFocusOwner();
          return owner == null ? null : String.valueOf(owner.getName());
        });
  }

  private static Component named(Container in, String name) {
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

  /** All running text on the window. */
  private String texts() throws Exception {
    return textsOf(window.frame());
  }

  private static String textsOf(Container in) throws Exception {
    return onEventThread(
        () -> {
          StringBuilder all = new StringBuilder();
          collect(in, all);
          return all.toString();
        });
  }

  private static void collect(Container in, StringBuilder all) {
    for (Component c : in.getComponents()) {
      if (c instanceof JTextArea area && area.isShowing()) {
        all.append(area.getText()).append('\n');
      }
      if (c instanceof Container inner) {
        collect(inner, all);
      }
    }
  }

  /** Types; returns how many keys that took. */
  private int type(String text) {
    text.chars().forEach(c -> press(KeyEvent.getExtendedKeyCodeForChar(c)));
    return text.length();
  }

  private void press(int... keys) {
    for (int key : keys) {
      robot.keyPress(key);
    }
    for (int i = keys.length - 1; i >= 0; i--) {
      robot.keyRelease(keys[i]);
    }
  }

  private static <T> T onEventThread(Callable<T> work) throws Exception {
    FutureTask<T> task = new FutureTask<>(work);
    SwingUtilities.invokeAndWait(task);
    return task.get();
  }

  private static void await(Callable<Boolean> met) throws Exception {
    long until = System.nanoTime() + PATIENCE_MS * 1_000_000L;
    while (!met.call()) {
      assertThat(System.nanoTime()).as("what was waited for came in time").isLessThan(until);
      Thread.sleep(50);
    }
  }
}
