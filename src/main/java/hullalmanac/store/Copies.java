package hullalmanac.store;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Verified copies of a record's database, in its folder {@code copies}: one before the first change
 * of each day and one before any schema step. Seven days, four weeks and twelve months of them are
 * kept.
 */
public final class Copies {
  private static final Pattern NAME =
      Pattern.compile("almanac-(\\d{4}-\\d{2}-\\d{2})(-before-step-\\d+)?\\.db");
  private static final int DAYS = 7;
  private static final int WEEKS = 4;
  private static final int MONTHS = 12;

  private final Path folder;

  /**
   * @param record the record's folder
   */
  public Copies(Path record) {
    this.folder = record.resolve("copies");
  }

  /** The copies there are, newest first. */
  public List<Path> all() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> NAME.matcher(f.getFileName().toString()).matches())
          .sorted(Comparator.comparing((Path f) -> f.getFileName().toString()).reversed())
          .toList();
    } catch (IOException e) {
      throw new RecordException(Kind.OTHER, "The folder " + folder + " cannot be read.", e);
    }
  }

  /** The day of the newest copy. */
  public Optional<LocalDate> newestDay() {
    return all().stream().findFirst().map(Copies::day);
  }

  /** Lays the copy of a day, unless there is one already. */
  void ofDay(Connection connection, LocalDate day) throws SQLException {
    Path target = folder.resolve("almanac-" + day + ".db");
    if (!Files.exists(target)) {
      lay(connection, target);
      prune();
    }
  }

  /** Lays a copy before a schema step. */
  void beforeStep(Connection connection, LocalDate day, int step) throws SQLException {
    Path target = folder.resolve("almanac-" + day + "-before-step-" + step + ".db");
    if (!Files.exists(target)) {
      lay(connection, target);
    }
  }

  private void lay(Connection connection, Path target) throws SQLException {
    Path record = folder.resolveSibling(Database.FILE);
    if (!Files.exists(record)) {
      // Where a stick was pulled out, nothing is laid in the place where it was.
      throw Failures.gone(record, null);
    }
    Path rough = folder.resolve("copy.tmp");
    try {
      Files.createDirectories(folder);
      Files.deleteIfExists(rough);
      try (PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
        statement.setString(1, rough.toString());
        statement.execute();
      }
      try (FileChannel channel = FileChannel.open(rough, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
      verify(rough);
      Files.move(rough, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new RecordException(
          Kind.OTHER, "No copy could be laid in " + folder + ", so nothing was changed.", e);
    }
  }

  /**
   * Looks whether a file is a whole record.
   *
   * @throws RecordException when it is not
   */
  static void verify(Path file) {
    Header.read(file).require(file, Integer.MAX_VALUE);
    try (Connection connection = Connections.readOnly(file);
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("PRAGMA quick_check")) {
      if (!rows.next() || !rows.getString(1).equals("ok")) {
        throw Failures.corrupt(file, null);
      }
    } catch (SQLException e) {
      throw Failures.of(file, e);
    }
  }

  private void prune() {
    List<Path> newestFirst = all();
    Set<Path> keep = new HashSet<>();
    keepNewest(newestFirst, keep, DAYS, LocalDate::toString);
    keepNewest(
        newestFirst,
        keep,
        WEEKS,
        d -> d.get(IsoFields.WEEK_BASED_YEAR) + "-" + d.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    keepNewest(newestFirst, keep, MONTHS, d -> d.getYear() + "-" + d.getMonthValue());
    for (Path copy : newestFirst) {
      if (!keep.contains(copy)) {
        try {
          Files.deleteIfExists(copy);
        } catch (IOException e) {
          return;
        }
      }
    }
  }

  private static void keepNewest(
      List<Path> newestFirst, Set<Path> keep, int periods, Function<LocalDate, String> period) {
    Set<String> seen = new HashSet<>();
    for (Path copy : newestFirst) {
      if (seen.size() < periods && seen.add(period.apply(day(copy)))) {
        keep.add(copy);
      }
    }
  }

  private static LocalDate day(Path copy) {
    Matcher matcher = NAME.matcher(copy.getFileName().toString());
    if (!matcher.matches()) {
      throw new IllegalArgumentException("not a copy: " + copy);
    }
    return LocalDate.parse(matcher.group(1));
  }

  /**
   * Puts a copy in the place of the record. The record as it stands is kept beside it.
   *
   * @param record the record's folder, which nobody has open
   * @param copy the copy to restore
   * @return where the record that stood there is kept, where there was one
   */
  public static Optional<Path> restore(Path record, Path copy) {
    verify(copy);
    Path file = record.resolve(Database.FILE);
    Path rough = record.resolve("restore.tmp");
    try {
      Files.copy(copy, rough, StandardCopyOption.REPLACE_EXISTING);
      try (FileChannel channel = FileChannel.open(rough, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
      Optional<Path> aside = Optional.empty();
      if (Files.exists(file)) {
        Path kept = free(record);
        for (String tail : List.of("-journal", "")) {
          Path part = record.resolve(Database.FILE + tail);
          if (Files.exists(part)) {
            Files.copy(
                part,
                record.resolve(kept.getFileName() + tail),
                StandardCopyOption.COPY_ATTRIBUTES);
          }
        }
        aside = Optional.of(kept);
      }
      Files.deleteIfExists(record.resolve(Database.FILE + "-journal"));
      Files.move(rough, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      return aside;
    } catch (IOException e) {
      throw new RecordException(
          Kind.OTHER, "The copy " + copy + " could not be put in the place of " + file + ".", e);
    }
  }

  private static Path free(Path record) {
    for (int n = 1; ; n++) {
      Path kept = record.resolve("almanac-before-restore-" + n + ".db");
      if (!Files.exists(kept)) {
        return kept;
      }
    }
  }
}
