package hullalmanac.app;

import hullalmanac.app.process.FrontDoor;
import hullalmanac.app.process.SystemTint;
import hullalmanac.cli.CliContext;
import hullalmanac.core.record.RecordException;
import hullalmanac.present.Look;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.WindowLook;
import hullalmanac.service.DueList;
import hullalmanac.service.EditService;
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
    FileWindowMemory memory = new FileWindowMemory(folders.state().resolve("window.properties"));
    Optional<WindowLook> look = memory.recall();
    Opened opened = new Opened(open.get(), new SwingTaskRunner(), memory, scratch);
    SwingUtilities.invokeLater(() -> show(opened, look));
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

  /** What is open while the window is; closed off the event thread. */
  private record Opened(
      RecordService record,
      SwingTaskRunner tasks,
      FileWindowMemory memory,
      Optional<Path> scratch) {
    void close(WindowLook look) {
      tasks.close(
          () -> {
            memory.keep(look);
            record.close();
            scratch.ifPresent(WindowStart::sweep);
            System.exit(0);
          });
    }
  }

  private void show(Opened opened, Optional<WindowLook> look) {
    Theme.start(look.map(WindowLook::look).orElse(Look.USUAL));
    SystemTint.ask(dark -> SwingUtilities.invokeLater(() -> Theme.systemIs(dark)));
    ShellPresenter presenter =
        new ShellPresenter(
            FleetService.of(opened.record()), new EditService(opened.record()), opened.tasks());
    MainWindow window = new MainWindow(presenter, look, opened::close);
    opened
        .tasks()
        .run(
            TaskRunner.Lane.DATABASE,
            () -> door(opened.record(), window),
            done -> {},
            WindowStart::noDoor);
    window.open();
  }

  /**
   * A second start can only call the window when there is a loopback address; without one it is
   * told who has it open.
   */
  private static FrontDoor door(RecordService record, MainWindow window) {
    try {
      FrontDoor door = FrontDoor.open(() -> SwingUtilities.invokeLater(window::toFront));
      record.announce(door.port());
      return door;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void noDoor(RuntimeException e) {
    java.util.logging.Logger.getLogger(WindowStart.class.getName())
        .log(java.util.logging.Level.INFO, "no door for a second start", e);
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
