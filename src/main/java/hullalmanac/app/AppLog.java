package hullalmanac.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import java.util.stream.Stream;

/**
 * A rotating log of at most three files of 256 KiB, and a file for each crash. Neither holds owner
 * data: of what was thrown only the class and the place are written.
 */
final class AppLog {
  /** Name of the newest log. */
  static final String NEWEST = "log-0.txt";

  private static final String CRASH = "crash-";
  private static final int MOST_CRASHES = 20;
  private static final int FILES = 3;
  private static final int BYTES_EACH = 256 * 1024;
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS").withZone(ZoneOffset.UTC);

  private final Path folder;
  private final Clock clock;
  private final String version;
  private final String machine;
  private final AtomicInteger crashes = new AtomicInteger();

  AppLog(Path folder, Clock clock, String version, String machine) {
    this.folder = folder;
    this.clock = clock;
    this.version = version;
    this.machine = machine;
  }

  /** Starts the rotating log; a folder that cannot be written to costs the log, not the program. */
  void start() {
    Logger root = Logger.getLogger("");
    for (Handler handler : root.getHandlers()) {
      root.removeHandler(handler);
    }
    try {
      Files.createDirectories(folder);
      FileHandler file =
          new FileHandler(folder.resolve("log-%g.txt").toString(), BYTES_EACH, FILES, true);
      file.setFormatter(new Lines());
      file.setLevel(Level.INFO);
      root.addHandler(file);
    } catch (IOException e) {
      root.setLevel(Level.OFF);
    }
  }

  /**
   * What became of a report.
   *
   * @param file where it lies; nothing when it could not be kept
   */
  record Kept(String text, Optional<Path> file) {
    /** The report, and where it lies. */
    String all() {
      return text
          + file.map(f -> "\nThis report is kept in " + f + "\n")
              .orElse("\nThis report could not be kept in a file.\n");
    }
  }

  /** Catches what any thread throws and nobody caught: a report is written, then shown. */
  void catchAll(Consumer<Kept> show) {
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, thrown) -> show.accept(crash(thread.getName(), thrown)));
  }

  /**
   * Writes a crash report. A fault that repeats without end fills no disk: after some reports in
   * one run no more are kept.
   */
  Kept crash(String thread, Throwable thrown) {
    Instant at = clock.instant();
    String text = new CrashReport(at, version, machine, thread, thrown).text();
    if (crashes.incrementAndGet() > MOST_CRASHES) {
      return new Kept(text, Optional.empty());
    }
    Path file = folder.resolve(CRASH + STAMP.format(at) + ".txt");
    try {
      Files.createDirectories(folder);
      Files.writeString(file, text, StandardCharsets.UTF_8);
      return new Kept(text, Optional.of(file));
    } catch (IOException | UncheckedIOException e) {
      return new Kept(text, Optional.empty());
    }
  }

  /** The files of crash reports in a folder, the newest first. */
  static List<Path> crashes(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.getFileName().toString().startsWith(CRASH))
          .sorted(Comparator.reverseOrder())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * One line a record; what was thrown by class and place alone. What a library words may quote a
   * file or a text, so of its lines only the name of the logger is kept.
   */
  private static final class Lines extends SimpleFormatter {
    private static boolean own(LogRecord entry) {
      return String.valueOf(entry.getLoggerName()).startsWith("hullalmanac.");
    }

    @Override
    public String format(LogRecord entry) {
      Throwable thrown = entry.getThrown();
      String where = "";
      if (thrown != null) {
        StackTraceElement[] frames = thrown.getStackTrace();
        where = " " + thrown.getClass().getName() + (frames.length == 0 ? "" : " at " + frames[0]);
      }
      return entry.getInstant()
          + " "
          + entry.getLevel()
          + " "
          + entry.getLoggerName()
          + " "
          + (own(entry) ? formatMessage(entry) : "(not kept)")
          + where
          + System.lineSeparator();
    }
  }
}
