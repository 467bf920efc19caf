package hullalmanac.app;

import hullalmanac.app.process.FrontDoor;
import hullalmanac.cli.CliContext;
import hullalmanac.core.record.RecordException;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.WindowMemory;
import hullalmanac.service.DueList;
import hullalmanac.service.Fleet;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import hullalmanac.service.SampleService;
import hullalmanac.ui.shell.CrashDialog;
import hullalmanac.ui.shell.MainWindow;
import hullalmanac.ui.task.SwingTaskRunner;
import hullalmanac.ui.theme.Theme;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** Opens the window on a record, or prints what is due where there is no display. */
final class WindowStart {
  /** Returned in the place of an exit code while the window stays open. */
  static final int STAYS_OPEN = -1;

  private final RecordService.Surroundings surroundings;
  private final AppFolders folders;
  private final AppLog log;
  private final PrintWriter out;

  WindowStart(
      RecordService.Surroundings surroundings, AppFolders folders, AppLog log, PrintWriter out) {
    this.surroundings = surroundings;
    this.folders = folders;
    this.log = log;
    this.out = out;
  }

  int open(CliContext.WindowRequest request) {
    Optional<Path> scratch = request.sample() ? Optional.of(scratchSample()) : Optional.empty();
    Path record = scratch.orElse(request.record());
    if (GraphicsEnvironment.isHeadless()) {
      int code = print(record);
      scratch.ifPresent(WindowStart::sweep);
      return code;
    }
    log.start();
    log.catchAll(CrashDialog::show);
    if (!RecordService.isIn(record)) {
      RecordService.create(record, surroundings);
    }
    Optional<RecordService> open = openOrCall(record);
    if (open.isEmpty()) {
      return 0;
    }
    SwingUtilities.invokeLater(() -> show(open.get(), scratch));
    return STAYS_OPEN;
  }

  /** Opens the record, or calls the window that has it open already. */
  private Optional<RecordService> openOrCall(Path record) {
    try {
      return Optional.of(RecordService.open(record, surroundings));
    } catch (RecordException e) {
      boolean called =
          e.kind() == RecordException.Kind.LOCKED
              && RecordService.portOfHolder(record, surroundings.host())
                  .map(FrontDoor::knock)
                  .orElse(false);
      if (called) {
        out.println("The record is open already; its window comes to the front.");
        return Optional.empty();
      }
      throw e;
    }
  }

  private void show(RecordService record, Optional<Path> scratch) {
    WindowMemory memory = new FileWindowMemory(folders.state().resolve("window.properties"));
    Optional<WindowMemory.Look> look = memory.recall();
    Theme.start(
        look.map(WindowMemory.Look::dark).orElse(false),
        look.map(WindowMemory.Look::zoom).orElse(1f));
    SwingTaskRunner tasks = new SwingTaskRunner();
    ShellPresenter presenter = new ShellPresenter(FleetService.of(record), tasks);
    MainWindow window = new MainWindow(presenter, memory, () -> close(record, tasks, scratch));
    door(record, window);
    window.open();
  }

  /**
   * A second start can only call the window when there is a loopback address; without one it is
   * told who has it open.
   */
  private void door(RecordService record, MainWindow window) {
    try {
      FrontDoor door = FrontDoor.open(() -> SwingUtilities.invokeLater(window::toFront));
      record.announce(door.port());
    } catch (IOException e) {
      java.util.logging.Logger.getLogger(WindowStart.class.getName())
          .log(java.util.logging.Level.INFO, "no door for a second start", e);
    }
  }

  private static void close(RecordService record, SwingTaskRunner tasks, Optional<Path> scratch) {
    tasks.close();
    record.close();
    scratch.ifPresent(WindowStart::sweep);
    System.exit(0);
  }

  private int print(Path record) {
    out.println("There is no display, so the window cannot open. What is due in " + record + ":");
    out.println();
    try (RecordService open = RecordService.openReadOnly(record, surroundings)) {
      out.print(DueList.of(Fleet.of(open.almanac(), open.today())).text());
    }
    out.flush();
    return 0;
  }

  private static Path scratchSample() {
    try {
      Path scratch = Files.createTempDirectory("hull-almanac-sample-");
      SampleService.write(scratch);
      return scratch;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void sweep(Path scratch) {
    try (Stream<Path> all = Files.walk(scratch)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      java.util.logging.Logger.getLogger(WindowStart.class.getName())
          .log(java.util.logging.Level.INFO, "a scratch copy stays behind", e);
    }
  }
}
