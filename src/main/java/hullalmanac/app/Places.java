package hullalmanac.app;

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
 * Remembers on this computer which record was opened last and where its second place is; a file
 * that cannot be read or written costs nothing but that.
 */
record Places(Path file) {
  private static final Logger LOG = Logger.getLogger(Places.class.getName());
  private static final String RECORD = "record";
  private static final String SECOND = "second";

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
    value.ifPresentOrElse(v -> p.setProperty(name, v), () -> p.remove(name));
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
