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
import java.util.function.Consumer;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/**
 * A rotating log of at most three files of 256 KiB, and a file for each crash. Neither holds owner
 * data: of what was thrown only the class and the place are written.
 */
final class AppLog {
  private static final int FILES = 3;
  private static final int BYTES_EACH = 256 * 1024;
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS").withZone(ZoneOffset.UTC);

  private final Path folder;
  private final Clock clock;
  private final String version;
  private final String machine;

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

  /** Catches what any thread throws and nobody caught: a report is written, then shown. */
  void catchAll(Consumer<String> show) {
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, thrown) -> show.accept(crash(thread.getName(), thrown)));
  }

  /** Writes a crash report and returns its text with the place of its file. */
  String crash(String thread, Throwable thrown) {
    Instant at = clock.instant();
    String text = new CrashReport(at, version, machine, thread, thrown).text();
    Path file = folder.resolve("crash-" + STAMP.format(at) + ".txt");
    try {
      Files.createDirectories(folder);
      Files.writeString(file, text, StandardCharsets.UTF_8);
      return text + "\nThis report is kept in " + file + "\n";
    } catch (IOException | UncheckedIOException e) {
      return text + "\nThis report could not be kept in " + file + "\n";
    }
  }

  /** One line a record; what was thrown by class and place alone. */
  private static final class Lines extends SimpleFormatter {
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
          + formatMessage(entry)
          + where
          + System.lineSeparator();
    }
  }
}
