package hullalmanac.app;

import hullalmanac.app.process.Aside;
import hullalmanac.app.process.BesideWindow;
import hullalmanac.app.process.FrontDoor;
import hullalmanac.app.process.SystemTint;
import hullalmanac.cli.CliContext;
import hullalmanac.core.record.RecordException;
import hullalmanac.present.Look;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.help.HelpPresenter;
import hullalmanac.present.house.Calendars;
import hullalmanac.present.house.House;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.WindowLook;
import hullalmanac.present.start.StartPresenter;
import hullalmanac.service.DueList;
import hullalmanac.service.EditService;
import hullalmanac.service.Fleet;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import hullalmanac.service.SampleService;
import hullalmanac.ui.shell.CrashDialog;
import hullalmanac.ui.shell.MainWindow;
import hullalmanac.ui.start.StartWindow;
import hullalmanac.ui.task.SwingTaskRunner;
import hullalmanac.ui.theme.Theme;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** Opens the window on a record, or prints what is due where there is no display. */
final class WindowStart {
  /** Returned in the place of an exit code while the window stays open. */
  static final int STAYS_OPEN = -1;

  private final RecordService.Surroundings surroundings;
  private final AppFolders folders;
  private final AppLog log;
  private final Installed installed;
  private final PrintWriter out;
  private final Places places;
  private final IntConsumer exit;

  /** The window that is open. */
  private volatile Optional<ShellPresenter> shown = Optional.empty();

  /** Whether a record that is opened becomes the one that is opened when none is named. */
  private boolean remembers = true;

  /**
   * @param exit ends the program with an exit code
   */
  WindowStart(
      RecordService.Surroundings surroundings,
      AppFolders folders,
      AppLog log,
      Installed installed,
      PrintWriter out,
      IntConsumer exit) {
    this.surroundings = surroundings;
    this.folders = folders;
    this.log = log;
    this.installed = installed;
    this.out = out;
    this.exit = exit;
    this.places = folders.places();
  }

  /** The record that is opened when none is named. */
  Path usual() {
    return places.record().orElse(folders.record());
  }

  int open(CliContext.WindowRequest request) {
    if (GraphicsEnvironment.isHeadless()) {
      Optional<Path> scratch = request.sample() ? Optional.of(scratchSample()) : Optional.empty();
      int code = print(scratch.orElse(request.record()));
      scratch.ifPresent(WindowStart::sweep);
      return code;
    }
    remembers = request.record().equals(usual());
    log.start();
    log.catchAll(this::crashed);
    Optional<WindowLook> look = memory().recall();
    // The look takes its time as well; the event thread sees to it while this one opens the record.
    SwingUtilities.invokeLater(() -> Theme.start(look.map(WindowLook::look).orElse(Look.USUAL)));
    SystemTint.ask(dark -> SwingUtilities.invokeLater(() -> Theme.systemIs(dark)));
    return request.sample() ? sample(request.record()) : begin(request.record(), Optional.empty());
  }

  /** Says it in the window; where there is none, in one of its own. */
  private void crashed(AppLog.Kept report) {
    Optional<ShellPresenter> window = shown;
    if (window.isPresent()) {
      SwingUtilities.invokeLater(() -> window.get().tellOfCrash(sentence(report)));
    } else {
      CrashDialog.show(report.all());
    }
  }

  private static String sentence(AppLog.Kept report) {
    return "Something went wrong that should not. What was saved is safe on the disk. "
        + report
            .file()
            .map(f -> "A report that names no owner and no boat lies in " + f + ".")
            .orElse("The report of it could not be kept.");
  }

  private FileWindowMemory memory() {
    return new FileWindowMemory(folders.state().resolve("window.properties"));
  }

  /** Opens a scratch copy of the sample; leaving it opens the record. */
  private int sample(Path record) {
    Path scratch = scratchSample();
    show(new Opened(record, Optional.of(scratch), RecordService.open(scratch, surroundings)));
    return STAYS_OPEN;
  }

  /**
   * Opens a record, or shows the ways to begin.
   *
   * @param said what came of a wish for which another window was closed
   */
  private int begin(Path record, Optional<String> said) {
    return begin(record, said, presenter -> {});
  }

  /** The same, and something that is done first in the window. */
  private int begin(Path record, Optional<String> said, Consumer<ShellPresenter> first) {
    if (!RecordService.isIn(record)) {
      ways(record, said);
      return STAYS_OPEN;
    }
    try {
      Optional<RecordService> open = openOrCall(record);
      if (open.isEmpty()) {
        return 0;
      }
      if (remembers) {
        places.record(record);
      }
      Opened opened = new Opened(record, Optional.empty(), open.get());
      opened.said = said;
      opened.first = first;
      show(opened);
    } catch (RecordException e) {
      ways(record, Optional.of(e.getMessage()));
    }
    return STAYS_OPEN;
  }

  private void ways(Path record, Optional<String> said) {
    StartPresenter presenter =
        new StartPresenter(
            new Ways(record),
            new StartPresenter.Found(
                record.toAbsolutePath().toString(),
                RecordService.isIn(record),
                places.knows(record),
                RecordService.copies(record).stream().findFirst().map(Path::toString)),
            said);
    SwingUtilities.invokeLater(
        () -> {
          SwingTaskRunner tasks = new SwingTaskRunner();
          HelpPresenter help = new HelpPresenter(tasks);
          help.of(installed);
          StartWindow window = new StartWindow(presenter, help, () -> exit.accept(0));
          presenter.onGone(
              () -> {
                window.close();
                tasks.close(() -> {});
              });
          window.open();
        });
  }

  /** What the ways to begin lead to. File work goes on a thread of its own. */
  private final class Ways implements StartPresenter.Beginning {
    private final Path record;

    Ways(Path record) {
      this.record = record;
    }

    private void aside(IntSupplier work) {
      Aside.run(
          "beginning",
          () -> {
            int code = work.getAsInt();
            if (code != STAYS_OPEN) {
              exit.accept(code);
            }
          });
    }

    @Override
    public void lookAround() {
      aside(() -> sample(record));
    }

    @Override
    public void startEmpty() {
      startEmpty(presenter -> {});
    }

    @Override
    public void startWithAList() {
      startEmpty(ShellPresenter::openList);
    }

    private void startEmpty(Consumer<ShellPresenter> first) {
      aside(
          () -> {
            try {
              RecordService.create(record, surroundings);
            } catch (RecordException e) {
              ways(record, Optional.of(e.getMessage()));
              return STAYS_OPEN;
            }
            return begin(record, Optional.empty(), first);
          });
    }

    @Override
    public void lookAgain() {
      aside(() -> begin(record, Optional.empty()));
    }

    @Override
    public void open(String folder) {
      remembers = true;
      aside(() -> begin(Path.of(folder), Optional.empty()));
    }

    @Override
    public void putBack(String copy) {
      aside(() -> putInPlace(record, Path.of(copy)));
    }
  }

  private int putInPlace(Path record, Path copy) {
    Optional<String> said;
    try {
      said =
          RecordService.restore(record, copy, surroundings)
              .map(kept -> "The record as it stood is kept in " + kept + ".");
    } catch (RecordException e) {
      said = Optional.of(e.getMessage());
    }
    return begin(record, said);
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
  private final class Opened implements House {
    private final Path own;
    private final Optional<Path> scratch;
    private final RecordService record;
    private final SwingTaskRunner tasks = new SwingTaskRunner();
    private Optional<String> said = Optional.empty();
    private Consumer<ShellPresenter> first = presenter -> {};

    /** Kept here as well: its file is not to be asked on the event thread. */
    private volatile Optional<String> second = places.second().map(Path::toString);

    private volatile Calendars calendars;

    private IntSupplier next = () -> 0;
    private MainWindow window;

    /**
     * @param own one's own record
     * @param scratch the copy of the sample that is open instead
     */
    Opened(Path own, Optional<Path> scratch, RecordService record) {
      this.own = own;
      this.calendars = places.calendars(own);
      this.scratch = scratch;
      this.record = record;
    }

    void close(WindowLook look) {
      shown = Optional.empty();
      tasks.close(
          () -> {
            memory().keep(look);
            record.close();
            scratch.ifPresent(WindowStart::sweep);
            int code = next.getAsInt();
            if (code != STAYS_OPEN) {
              exit.accept(code);
            }
          });
    }

    /** Closes the window, and does something before another is opened. */
    private void after(IntSupplier work) {
      next = work;
      window.close();
    }

    @Override
    public boolean isSample() {
      return scratch.isPresent();
    }

    @Override
    public void leaveSample() {
      after(() -> begin(own, Optional.empty()));
    }

    @Override
    public void moveTo(String folder) {
      remembers = true;
      after(
          () -> {
            try {
              RecordService.move(record.folder(), Path.of(folder));
              places.moved(own, Path.of(folder));
            } catch (RecordException | InvalidPathException e) {
              return begin(own, Optional.of(e.getMessage()));
            }
            return begin(
                Path.of(folder),
                Optional.of(
                    "The record is here now. The old folder, "
                        + own
                        + ", was left as it is; take it away when you are sure."));
          });
    }

    @Override
    public void open(String folder) {
      remembers = true;
      after(() -> begin(Path.of(folder), Optional.empty()));
    }

    @Override
    public void putInPlace(String file) {
      after(() -> WindowStart.this.putInPlace(own, Path.of(file)));
    }

    @Override
    public Optional<String> secondPlace() {
      return second;
    }

    @Override
    public void secondPlace(Optional<String> folder) {
      second = folder;
      remember(() -> places.second(folder));
    }

    @Override
    public Calendars calendars() {
      return calendars;
    }

    @Override
    public void calendars(Calendars now) {
      calendars = now;
      remember(() -> places.calendars(own, now));
    }

    private void remember(Runnable what) {
      tasks.run(
          TaskRunner.Lane.DATABASE,
          () -> {
            what.run();
            return what;
          },
          done -> {},
          failed -> {
            throw failed;
          });
    }
  }

  private void show(Opened opened) {
    Optional<WindowLook> look = memory().recall();
    SwingUtilities.invokeLater(() -> showNow(opened, look));
  }

  private void showNow(Opened opened, Optional<WindowLook> look) {
    ShellPresenter presenter =
        new ShellPresenter(
            FleetService.of(opened.record), new EditService(opened.record), opened.tasks);
    presenter.livesIn(opened);
    presenter.reaches(new BesideWindow());
    presenter.help().of(installed.on(opened.record.folder()));
    shown = Optional.of(presenter);
    opened.said.ifPresent(presenter::tell);
    MainWindow window = new MainWindow(presenter, look, opened::close);
    opened.window = window;
    opened.tasks.run(
        TaskRunner.Lane.DATABASE,
        () -> door(opened.record, window),
        done -> {},
        WindowStart::noDoor);
    window.open();
    opened.first.accept(presenter);
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
