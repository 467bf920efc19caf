package hullalmanac.app;

import hullalmanac.present.house.Calendars;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Remembers on this computer which record was opened last, where its second place is and which
 * calendars it has; a file that cannot be read or written costs nothing but that.
 */
record Places(Path file) {
  private static final Logger LOG = Logger.getLogger(Places.class.getName());
  private static final String RECORD = "record";
  private static final String SECOND = "second";
  private static final String CALENDAR = "calendar";
  private static final String CALENDAR_OF = "calendar.record";
  private static final String CALENDAR_PRIVATE = "calendar.private";
  private static final String BUSY = "calendar.read";

  /** The record that is opened when none is named. */
  Optional<Path> record() {
    return path(RECORD);
  }

  /** Whether a record was opened there before. */
  boolean knows(Path folder) {
    return record().filter(folder.toAbsolutePath()::equals).isPresent();
  }

  /** Remembers the record that is opened when none is named. */
  void record(Path folder) {
    if (!knows(folder)) {
      set(RECORD, Optional.of(folder.toAbsolutePath().toString()));
    }
  }

  Optional<Path> second() {
    return path(SECOND);
  }

  void second(Optional<String> folder) {
    set(SECOND, folder);
  }

  /**
   * The calendars of this computer. The one that is written is that of one record: another record
   * would call off all that it tells.
   */
  Calendars calendars(Path record) {
    Properties p = read();
    boolean own = record.toAbsolutePath().toString().equals(p.getProperty(CALENDAR_OF));
    return new Calendars(
        Optional.ofNullable(p.getProperty(CALENDAR)).filter(file -> own),
        own && Boolean.parseBoolean(p.getProperty(CALENDAR_PRIVATE)),
        Optional.ofNullable(p.getProperty(BUSY)));
  }

  void calendars(Path record, Calendars now) {
    Properties p = read();
    boolean own = record.toAbsolutePath().toString().equals(p.getProperty(CALENDAR_OF));
    if (own || now.written().isPresent()) {
      put(p, CALENDAR, now.written());
      put(p, CALENDAR_OF, now.written().map(file -> record.toAbsolutePath().toString()));
      put(p, CALENDAR_PRIVATE, now.written().map(file -> String.valueOf(now.withPrivate())));
    }
    put(p, BUSY, now.read());
    store(p);
  }

  /** A record that moved takes its calendar along. */
  void moved(Path from, Path to) {
    Calendars its = calendars(from);
    if (its.written().isPresent()) {
      calendars(to, its);
    }
  }

  private Optional<Path> path(String name) {
    try {
      return Optional.ofNullable(read().getProperty(name)).map(Path::of);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private Properties read() {
    Properties p = new Properties();
    if (Files.exists(file)) {
      try (Reader in = Files.newBufferedReader(file)) {
        p.load(in);
      } catch (IOException | IllegalArgumentException e) {
        LOG.log(Level.INFO, "the places were not remembered", e);
      }
    }
    return p;
  }

  private void set(String name, Optional<String> value) {
    Properties p = read();
    put(p, name, value);
    store(p);
  }

  private static void put(Properties p, String name, Optional<String> value) {
    value.ifPresentOrElse(v -> p.setProperty(name, v), () -> p.remove(name));
  }

  private void store(Properties p) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      try (Writer out = Files.newBufferedWriter(file)) {
        p.store(out, "Where the record of this computer is");
      }
    } catch (IOException e) {
      LOG.log(Level.INFO, "the places are not remembered", e);
    }
  }
}
