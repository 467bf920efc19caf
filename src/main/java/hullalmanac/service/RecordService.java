package hullalmanac.service;

import hullalmanac.core.calendar.Revisions;
import hullalmanac.core.record.Act;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RowChange;
import hullalmanac.store.Copies;
import hullalmanac.store.Database;
import hullalmanac.store.Moving;
import hullalmanac.store.RecordLock;
import hullalmanac.store.Standing;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * An open record: what is in it, and adding to it. For one thread at a time; everything here may
 * touch the file.
 *
 * <p>Every failure of the machine is a {@link RecordException} that says in words what happened.
 */
public final class RecordService implements AutoCloseable {
  private final Surroundings surroundings;
  private final Database database;
  private final Optional<RecordLock> lock;
  private final Instant since;
  private Almanac contents;
  private Optional<LocalTime> saved = Optional.empty();

  /**
   * What a record is opened with.
   *
   * @param clock the system clock
   * @param random uniformly random 64-bit numbers, for ids
   * @param host name of this computer, for the lock and the change log
   * @param process this process, for the lock
   * @param guard called before each use of the file; refuses a thread that must not wait for it
   */
  public record Surroundings(
      Clock clock, LongSupplier random, String host, long process, Runnable guard) {
    /** Surroundings in which every thread may wait. */
    public Surroundings(Clock clock, LongSupplier random, String host, long process) {
      this(clock, random, host, process, () -> {});
    }

    Database.Setting setting() {
      return Database.Setting.of(host, random, guard);
    }

    LocalDate day() {
      return LocalDate.now(clock);
    }
  }

  private RecordService(Surroundings surroundings, Database database, Optional<RecordLock> lock) {
    this.surroundings = surroundings;
    this.database = database;
    this.lock = lock;
    this.since = surroundings.clock().instant();
  }

  /** Whether a folder holds a record. */
  public static boolean isIn(Path folder) {
    return Database.isIn(folder);
  }

  /** Makes a new record in a folder. */
  public static void create(Path folder, Surroundings surroundings) {
    Database.create(folder, surroundings.setting());
  }

  /** Opens a record to read and write; nobody else may have it open so. */
  public static RecordService open(Path folder, Surroundings surroundings) {
    if (!isIn(folder)) {
      return openReadOnly(folder, surroundings);
    }
    Instant now = surroundings.clock().instant();
    RecordLock lock =
        RecordLock.take(
            folder,
            new RecordLock.Holder(surroundings.host(), surroundings.process(), now, 0),
            now);
    try {
      Database database =
          Database.open(
              folder, Database.Mode.READ_WRITE, surroundings.day(), surroundings.setting());
      return new RecordService(surroundings, database, Optional.of(lock));
    } catch (RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /** Opens a record only to read; others may have it open. */
  public static RecordService openReadOnly(Path folder, Surroundings surroundings) {
    Database database =
        Database.open(folder, Database.Mode.READ_ONLY, surroundings.day(), surroundings.setting());
    return new RecordService(surroundings, database, Optional.empty());
  }

  /**
   * The port at which the window that has a record open can be called, where there is one on this
   * computer.
   */
  public static Optional<Integer> portOfHolder(Path folder, String host) {
    return RecordLock.holder(folder)
        .filter(h -> h.host().equals(host) && h.port() > 0)
        .map(RecordLock.Holder::port);
  }

  /** Says in the lock at which port this program's window can be called. */
  public void announce(int port) {
    lock.ifPresent(
        l ->
            l.announce(
                new RecordLock.Holder(surroundings.host(), surroundings.process(), since, port)));
  }

  /** What is in the record; read once, and again after each act. */
  public Almanac almanac() {
    if (contents == null) {
      contents = database.almanac();
    }
    return contents;
  }

  /** The day the record is worked on: today, or the day a sample is opened as of. */
  public LocalDate today() {
    return almanac().business().asOf().orElse(surroundings.day());
  }

  /** The record's folder. */
  public Path folder() {
    return database.folder();
  }

  /** The folder of its photos. */
  public Path photos() {
    return database.folder().resolve("photos");
  }

  /** Whether it is open only to read. */
  public boolean readOnly() {
    return lock.isEmpty();
  }

  /** The day of the newest verified copy. */
  public Optional<LocalDate> newestCopy() {
    return new Copies(database.folder()).newestDay();
  }

  Clock clock() {
    return surroundings.clock();
  }

  /** The zone of the clock on the wall. */
  public ZoneId zone() {
    return surroundings.clock().getZone();
  }

  /** The time by the clock on the wall; touches no file. */
  public ZonedDateTime wallTime() {
    return ZonedDateTime.now(surroundings.clock());
  }

  /** New ids. */
  public IdSource ids() {
    return new IdSource(surroundings.random());
  }

  /**
   * Applies a change in one act, all or nothing.
   *
   * @param what the act in words, for the change log
   */
  public void change(String what, Edit edit) {
    database.change(what, now(), surroundings.day(), edit);
    if (contents != null) {
      contents = contents.with(edit);
    }
  }

  /** When something was last written, by the clock on the wall; absent when nothing was. */
  public Optional<LocalTime> saved() {
    return saved;
  }

  private Instant now() {
    saved = Optional.of(LocalTime.now(surroundings.clock()));
    return surroundings.clock().instant();
  }

  /** Where undo and redo stand. */
  public Standing standing() {
    return database.standing();
  }

  /** Takes back the newest act; returns it in words, or nothing when there was none. */
  public Optional<String> undo() {
    contents = null;
    return database.undo(now(), surroundings.day()).map(Act::what);
  }

  /** Does again what was undone last; returns it in words, or nothing when there was nothing. */
  public Optional<String> redo() {
    contents = null;
    return database.redo(now(), surroundings.day()).map(Act::what);
  }

  /** What was changed of a row and of all that belongs to it, newest first. */
  public List<RowChange> history(Kind kind, Id<?> id) {
    return database.history(kind, id);
  }

  /** How often what a calendar shows of each visit and berth changed, and when last. */
  public Revisions revisions() {
    return database.revisions(
        almanac().business().asOf().map(d -> d.atStartOfDay(ZoneOffset.UTC).toInstant()));
  }

  /** Acts that took out rows which are not back, newest first. */
  public List<Act> bin() {
    return database.bin();
  }

  /** Puts back what an act of the bin took out. */
  public void putBack(Act act) {
    contents = null;
    database.putBack(act, now(), surroundings.day());
  }

  /** The copies of a record, newest first. */
  public static List<Path> copies(Path folder) {
    return new Copies(folder).all();
  }

  /**
   * Copies a record that nobody has open to a new or empty folder, whole or not at all; the old one
   * is left as it is.
   */
  public static void move(Path from, Path to) {
    Moving.copy(from, to);
  }

  /**
   * Puts a copy in the place of a record that nobody has open; the record as it stood is kept
   * beside it.
   *
   * @return where the record that stood there is kept
   */
  public static Optional<Path> restore(Path folder, Path copy, Surroundings surroundings) {
    Instant now = surroundings.clock().instant();
    RecordLock.Holder me =
        new RecordLock.Holder(surroundings.host(), surroundings.process(), now, 0);
    try (RecordLock lock = RecordLock.take(folder, me, now)) {
      lock.announce(me);
      return Copies.restore(folder, copy);
    }
  }

  @Override
  public void close() {
    database.close();
    lock.ifPresent(RecordLock::close);
  }
}
