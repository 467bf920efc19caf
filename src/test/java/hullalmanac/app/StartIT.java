package hullalmanac.app;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.cli.CliContext;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Made;
import hullalmanac.service.RecordService;
import hullalmanac.ui.window.NeedsDisplay;
import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first start, a record that is gone, and a conflicted copy, by real keys in real windows. */
@NeedsDisplay
class StartIT {
  private static final long PATIENCE_MS = 30_000;

  @TempDir Path home;
  private Path record;
  private final AtomicInteger exits = new AtomicInteger(Integer.MIN_VALUE);
  private RecordService.Surroundings surroundings;
  private Robot robot;

  @BeforeEach
  void prepare() throws Exception {
    record = home.resolve("HullAlmanac");
    surroundings =
        new RecordService.Surroundings(Clock.systemUTC(), new Random()::nextLong, "desk", 1);
    robot = new Robot();
    robot.setAutoDelay(20);
  }

  /** Closes what is open by its cross, and waits for what is written on leaving. */
  @AfterEach
  void close() throws Exception {
    boolean open =
        onEventThread(
            () -> {
              List<JFrame> all = frames().toList();
              all.forEach(f -> f.dispatchEvent(new WindowEvent(f, WindowEvent.WINDOW_CLOSING)));
              return !all.isEmpty();
            });
    if (open) {
      await(() -> exits.get() == 0);
    }
  }

  private void start() {
    AppFolders folders = new AppFolders(record, home.resolve("state"));
    AppLog log = new AppLog(folders.state(), Clock.systemUTC(), "test", "a machine");
    WindowStart window =
        new WindowStart(
            surroundings,
            folders,
            log,
            new Installed("test", "Java", "a machine", home, folders.state()),
            new PrintWriter(new StringWriter()),
            exits::set);
    assertThat(window.open(new CliContext.WindowRequest(record, false)))
        .isEqualTo(WindowStart.STAYS_OPEN);
  }

  private static <T> T onEventThread(Callable<T> work) throws Exception {
    FutureTask<T> task = new FutureTask<>(work);
    SwingUtilities.invokeLater(task);
    return task.get();
  }

  private static Stream<JFrame> frames() {
    return Stream.of(Frame.getFrames())
        .filter(f -> f instanceof JFrame && f.isShowing())
        .map(JFrame.class::cast);
  }

  private static String says(Container in) {
    StringBuilder all = new StringBuilder();
    for (Component c : in.getComponents()) {
      if (c.isShowing()) {
        if (c instanceof JTextComponent text) {
          all.append(text.getText()).append('\n');
        } else if (c instanceof JLabel label) {
          all.append(label.getText()).append('\n');
        }
        if (c instanceof Container inner) {
          all.append(says(inner));
        }
      }
    }
    return all.toString();
  }

  private static String says() throws Exception {
    return onEventThread(
        () ->
            Stream.of(Window.getWindows())
                .filter(Window::isShowing)
                .map(StartIT::says)
                .reduce("", String::concat));
  }

  private static void await(Callable<Boolean> met) throws Exception {
    long until = System.nanoTime() + PATIENCE_MS * 1_000_000L;
    while (!met.call()) {
      if (System.nanoTime() > until) {
        throw new AssertionError("what was waited for did not come; the windows say:\n" + says());
      }
      Thread.sleep(50);
    }
  }

  private static Optional<JButton> button(Container in, String name) {
    for (Component c : in.getComponents()) {
      if (c instanceof JButton b && name.equals(b.getName()) && b.isShowing()) {
        return Optional.of(b);
      }
      Optional<JButton> deeper =
          c instanceof Container inner ? button(inner, name) : Optional.empty();
      if (deeper.isPresent()) {
        return deeper;
      }
    }
    return Optional.empty();
  }

  /** Goes to a button by Tab and presses it by the space bar. */
  private void press(String name) throws Exception {
    await(() -> onEventThread(() -> frames().anyMatch(f -> f.getFocusOwner() != null)));
    for (int i = 0; i < 60; i++) {
      if (onEventThread(
          () ->
              frames()
                  .flatMap(f -> button(f.getContentPane(), name).stream())
                  .anyMatch(Component::isFocusOwner))) {
        pressUntilItActs(KeyEvent.VK_SPACE);
        return;
      }
      key(KeyEvent.VK_TAB);
      Thread.sleep(40);
    }
    throw new AssertionError("no Tab leads to " + name + "; the windows say:\n" + says());
  }

  /** Without a window manager the first key in a new window may reach nobody. */
  private void pressUntilItActs(int code) throws Exception {
    String before = says();
    for (int i = 0; i < 4 && says().equals(before); i++) {
      key(code);
      for (int wait = 0; wait < 40 && says().equals(before); wait++) {
        Thread.sleep(50);
      }
    }
  }

  private void key(int code) {
    robot.keyPress(code);
    robot.keyRelease(code);
    robot.waitForIdle();
  }

  @Test
  void theFirstStartMakesNothingUntilAWayIsChosenAndStartsEmpty() throws Exception {
    start();
    await(() -> says().contains("Welcome to Hull Almanac"));
    assertThat(record).doesNotExist();
    pressUntilItActs(KeyEvent.VK_F1);
    await(() -> says().contains("in the order in which one"));
    pressUntilItActs(KeyEvent.VK_ESCAPE);
    await(() -> says().contains("Welcome to Hull Almanac"));
    press("empty");
    await(() -> says().contains("No coat is in service yet"));
    assertThat(RecordService.isIn(record)).isTrue();
  }

  @Test
  void aListIsBroughtIntoARecordThatIsMadeForIt() throws Exception {
    start();
    await(() -> says().contains("Welcome to Hull Almanac"));
    press("list");
    await(() -> says().contains("Nothing comes in before you say so"));
    assertThat(RecordService.isIn(record)).isTrue();
  }

  @Test
  void theSampleIsMarkedAndLeftInOneAct() throws Exception {
    start();
    await(() -> says().contains("Welcome to Hull Almanac"));
    press("sample");
    await(() -> says().contains("This is the sample"));
    await(() -> says().contains("boats are due"));
    press("Leave the sample");
    await(() -> says().contains("Welcome to Hull Almanac"));
    assertThat(record).doesNotExist();
  }

  @Test
  void aRecordThatIsGoneIsNotReplacedByAnEmptyOneAndIsFoundAgain() throws Exception {
    RecordService.create(record, surroundings);
    new AppFolders(record, home.resolve("state")).places().record(record);
    Path stick = home.resolve("pulled out");
    Files.move(record, stick);
    start();
    await(() -> says().contains("Where is your record?"));
    assertThat(record).doesNotExist();
    Files.move(stick, record);
    press("again");
    await(() -> says().contains("No coat is in service yet"));
  }

  @Test
  void aConflictedCopyIsSaidComparedAndLaidAside() throws Exception {
    RecordService.create(record, surroundings);
    Made made = new Made(48.4);
    try (RecordService open = RecordService.open(record, surroundings)) {
      open.change("a harbour written down", Edit.put(made.harbour()));
    }
    Path other = record.resolve("almanac (conflicted copy).db");
    Files.copy(record.resolve("almanac.db"), other);
    try (RecordService open = RecordService.open(record, surroundings)) {
      open.change("Wheatear written down", Edit.put(made.boat()));
    }
    start();
    await(() -> says().contains("Another almanac lies in the record’s folder"));
    press("Compare them");
    await(() -> says().contains("Only in this record: 1 act"));
    press("aside");
    await(() -> !says().contains("Another almanac lies"));
    assertThat(other).doesNotExist();
    assertThat(record.resolve("copies").resolve("aside-1.db")).exists();
  }
}
