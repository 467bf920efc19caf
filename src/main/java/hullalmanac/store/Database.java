package hullalmanac.store;

import hullalmanac.core.calendar.Revisions;
import hullalmanac.core.record.Act;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import hullalmanac.core.record.RowChange;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;

/**
 * The database file of a record. One connection, so for one thread at a time.
 *
 * <p>Every failure comes as a {@link RecordException} that says in words what happened.
 */
public final class Database implements AutoCloseable {
  /** Name of the file in a record's folder. */
  public static final String FILE = "almanac.db";

  private static final long QUICK_CHECK_UP_TO = 50L * 1024 * 1024;

  private final Path folder;
  private final Path file;
  private final Connection connection;
  private final Setting setting;

  /**
   * What the database is given by the program.
   *
   * @param device name of this computer, for the change log
   * @param random uniformly random 64-bit numbers, for the ids of acts
   * @param steps all schema steps, in order
   * @param decorate wraps each connection that writes; tests count statements with it
   * @param guard called before each use of the file; refuses a thread that must not wait for it
   */
  public record Setting(
      String device,
      LongSupplier random,
      List<SchemaStep> steps,
      UnaryOperator<Connection> decorate,
      Runnable guard) {
    /** A setting in which every thread may wait. */
    Setting(
        String device,
        LongSupplier random,
        List<SchemaStep> steps,
        UnaryOperator<Connection> decorate) {
      this(device, random, steps, decorate, () -> {});
    }

    /** The setting of the program itself. */
    public static Setting of(String device, LongSupplier random) {
      return of(device, random, () -> {});
    }

    /** The same with a guard. */
    public static Setting of(String device, LongSupplier random, Runnable guard) {
      return new Setting(device, random, SchemaStep.all(), UnaryOperator.identity(), guard);
    }

    int newest() {
      return steps.get(steps.size() - 1).number();
    }
  }

  /** Whether to write. */
  public enum Mode {
    READ_ONLY,
    READ_WRITE
  }

  /** An act's work. */
  interface Work<R> {
    R in(Tx tx) throws SQLException;
  }

  private Database(Path folder, Path file, Connection connection, Setting setting) {
    this.folder = folder;
    this.file = file;
    this.connection = connection;
    this.setting = setting;
  }

  /** Whether a folder holds a record's file. */
  public static boolean isIn(Path folder) {
    return Files.isRegularFile(folder.resolve(FILE));
  }

  /**
   * Makes a new record in a folder, which is made if it is not there, and never writes over
   * another.
   */
  public static void create(Path folder, Setting setting) {
    if (isIn(folder)) {
      throw new RecordException(Kind.IN_THE_WAY, "There is a record in " + folder + " already.");
    }
    Path rough = folder.resolve("almanac.new");
    try {
      Files.createDirectories(folder.resolve("photos"));
      Files.createDirectories(folder.resolve("copies"));
      Files.deleteIfExists(rough);
      Files.deleteIfExists(folder.resolve("almanac.new-journal"));
      try (Connection connection = setting.decorate().apply(Connections.creating(rough))) {
        Migrator.run(connection, setting.steps(), 0);
      }
      Files.move(rough, folder.resolve(FILE), StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new RecordException(
          Kind.READ_ONLY,
          "No record can be made in " + folder + ". Choose a folder of your own.",
          e);
    } catch (SQLException e) {
      throw Failures.of(folder.resolve(FILE), e);
    }
  }

  /**
   * Opens a record. One of an older program is brought up to date, after a verified copy; one that
   * is only read must be up to date already.
   *
   * @param day the day of a copy that may have to be laid
   */
  public static Database open(Path folder, Mode mode, LocalDate day, Setting setting) {
    setting.guard().run();
    if (!isIn(folder)) {
      throw new RecordException(
          Kind.MISSING,
          "There is no record in " + folder + ". Name the folder that holds " + FILE + ".");
    }
    Path real = real(folder);
    Path file = real.resolve(FILE);
    Header header = Header.read(file);
    header.require(file, setting.newest());
    boolean old = header.userVersion() < setting.newest();
    if (old && mode == Mode.READ_ONLY) {
      throw new RecordException(
          Kind.OTHER,
          "The record "
              + file
              + " was written by an older Hull Almanac. Open it once in the window first.");
    }
    try {
      Connection connection =
          mode == Mode.READ_ONLY
              ? Connections.readOnly(file)
              : setting.decorate().apply(Connections.writing(file));
      try {
        quickCheck(file, connection);
        if (old) {
          new Copies(real).beforeStep(connection, day, header.userVersion() + 1);
          Migrator.run(connection, setting.steps(), header.userVersion());
        }
        if (mode == Mode.READ_WRITE) {
          ChangeLog.watch(connection);
        }
        return new Database(real, file, connection, setting);
      } catch (SQLException | RuntimeException e) {
        connection.close();
        throw e;
      }
    } catch (SQLException e) {
      throw Failures.of(file, e);
    }
  }

  private static Path real(Path folder) {
    try {
      return folder.toRealPath();
    } catch (IOException e) {
      throw new RecordException(Kind.MISSING, "The folder " + folder + " cannot be reached.", e);
    }
  }

  private static void quickCheck(Path file, Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      if (Files.size(file) < QUICK_CHECK_UP_TO) {
        try (ResultSet rows = statement.executeQuery("PRAGMA quick_check(1)")) {
          if (!rows.next() || !rows.getString(1).equals("ok")) {
            throw Failures.corrupt(file, null);
          }
        }
      }
    } catch (IOException e) {
      throw new RecordException(Kind.OTHER, "The record " + file + " cannot be read.", e);
    }
  }

  /** The record's folder, with links resolved. */
  public Path folder() {
    return folder;
  }

  /** Reads all there is. */
  public Almanac almanac() {
    return read(tx -> new AlmanacStore(tx).readAll());
  }

  /**
   * Applies a change in one act, all or nothing.
   *
   * @param what the act in words, for the change log
   * @param at the time of the act
   * @param day the local day, for the day's copy
   */
  public void change(String what, Instant at, LocalDate day, Edit edit) {
    write(
        new Deed(what, at, Optional.empty()),
        day,
        tx -> {
          new AlmanacStore(tx).apply(edit);
          return null;
        });
  }

  /** Number of acts in the change log. */
  public int acts() {
    return read(tx -> tx.list("SELECT count(*) AS n FROM act", row -> row.whole("n")).get(0));
  }

  /** Where undo and redo stand. */
  public Standing standing() {
    return read(tx -> new Acts(tx).standing(setting.newest()));
  }

  /** Takes back the newest act that holds; returns it, or nothing when there was none. */
  public Optional<Act> undo(Instant at, LocalDate day) {
    return takeBack(standing().undo(), at, day);
  }

  /** Does again what was undone last; returns its undoing, or nothing when there was none. */
  public Optional<Act> redo(Instant at, LocalDate day) {
    return takeBack(standing().redo(), at, day);
  }

  private Optional<Act> takeBack(Optional<Act> act, Instant at, LocalDate day) {
    act.ifPresent(
        a ->
            write(
                new Deed(a.what(), at, Optional.of(a.id())),
                day,
                tx -> {
                  Undo.apply(connection, a.id().value());
                  return null;
                }));
    return act;
  }

  /** What was changed of a row and of all that belongs to it, newest first. */
  public List<RowChange> history(hullalmanac.core.record.Kind kind, Id<?> id) {
    return read(tx -> new Acts(tx).history(kind, id));
  }

  /**
   * How often what a calendar shows of each visit and berth changed, and when last.
   *
   * @param before since when rows are there that are older than the log; absent: since its first
   *     act
   */
  public Revisions revisions(Optional<Instant> before) {
    return read(tx -> new CalendarLog(tx).revisions(before));
  }

  /** Acts that took out rows which are not back, newest first. */
  public List<Act> bin() {
    return read(tx -> new Acts(tx).bin(setting.newest()));
  }

  /** Puts back what an act of the bin took out, as an act of its own. */
  public void putBack(Act act, Instant at, LocalDate day) {
    write(
        new Deed("put back: " + act.what(), at, Optional.empty()),
        day,
        tx -> {
          if (Undo.putBack(connection, act.id().value()) == 0) {
            throw new RecordException(
                Kind.OTHER,
                "Nothing of it can come back: something else stands in its place by now. Take that"
                    + " out first.",
                null);
          }
          return null;
        });
  }

  <R> R read(Work<R> work) {
    setting.guard().run();
    try {
      return work.in(new Tx(connection));
    } catch (SQLException e) {
      throw Failures.of(file, e);
    }
  }

  /**
   * Does work in one transaction and one act of the change log; any failure leaves everything as it
   * was.
   */
  <R> R write(Deed deed, LocalDate day, Work<R> work) {
    try {
      if (holdsSomething()) {
        new Copies(folder).ofDay(connection, day);
      }
      connection.setAutoCommit(false);
      try {
        R result = inAct(deed, work);
        connection.commit();
        return result;
      } catch (SQLException | RuntimeException | Error e) {
        connection.rollback();
        throw e;
      } finally {
        connection.setAutoCommit(true);
      }
    } catch (SQLException e) {
      throw Failures.of(file, e);
    }
  }

  private boolean holdsSomething() {
    return read(
        tx ->
            tx.list(
                        "SELECT count(*) AS n FROM (SELECT id FROM business UNION ALL SELECT id FROM act)",
                        row -> row.whole("n"))
                    .get(0)
                > 0);
  }

  /** An act that is about to happen. */
  record Deed(String what, Instant at, Optional<Id<Act>> undoes) {}

  private <R> R inAct(Deed deed, Work<R> work) throws SQLException {
    Tx tx = new Tx(connection);
    Id<Act> act = new IdSource(setting.random()).next();
    Map<String, Object> row = new HashMap<>();
    row.put("id", act);
    row.put("at", deed.at().toString());
    row.put("device", setting.device());
    row.put("what", deed.what());
    row.put("step", setting.newest());
    row.put("undoes", deed.undoes());
    tx.run("PRAGMA defer_foreign_keys = ON", Map.of());
    tx.run(
        """
        INSERT INTO act (id, at, device, what, schema_step, undoes, place)
        VALUES (:id, :at, :device, :what, :step, :undoes, (SELECT 1 + coalesce(max(place), 0) FROM act))
        """,
        row);
    tx.run("INSERT INTO current_act (act_id, place) VALUES (:act, 0)", Map.of("act", act));
    R result = work.in(tx);
    tx.run("DELETE FROM current_act", Map.of());
    return result;
  }

  @Override
  public void close() {
    setting.guard().run();
    try {
      connection.close();
    } catch (SQLException e) {
      throw Failures.of(file, e);
    }
  }
}
