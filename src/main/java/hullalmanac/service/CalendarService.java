package hullalmanac.service;

import hullalmanac.core.calendar.BusyDay;
import hullalmanac.core.calendar.CalendarEvent;
import hullalmanac.core.calendar.CalendarEvents;
import hullalmanac.core.calendar.Retold;
import hullalmanac.core.calendar.Revisions;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.RecordException;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.ical.BusyDays;
import hullalmanac.exchange.ical.CalendarFile;
import hullalmanac.exchange.ical.OwnCalendar;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * The calendar of a record as one file that others subscribe to, in a folder that is kept in step
 * with a phone, say; and the busy days of another calendar. Everything here touches files.
 *
 * <p>The file is its own memory: what was told in it before says what is newer now (see decision
 * 15). So it can be written while the record is open elsewhere, and nothing of it is in the record.
 */
public final class CalendarService {
  /** What ended longer ago is told no more. */
  private static final int YEARS_BACK = 1;

  private final RecordService record;

  public CalendarService(RecordService record) {
    this.record = record;
  }

  /**
   * What came of writing.
   *
   * @param changed whether the file was written; not where it held the same already
   * @param at when it was written last
   * @param events how many it holds
   * @param privateLeftOut how many berths have keys, gate codes or absences that were not written
   */
  public record Written(boolean changed, Instant at, int events, int privateLeftOut) {}

  /**
   * Busy days of another calendar.
   *
   * @param mark tells this state of its file from a later one; empty when it could not be read
   * @param problems what could not be read, a sentence each
   */
  public record Busy(String mark, List<BusyDay> days, List<String> problems) {
    /** Of no calendar. */
    public static final Busy NONE = new Busy("", List.of(), List.of());

    public Busy {
      days = List.copyOf(days);
      problems = List.copyOf(problems);
    }

    private static Busy problem(String sentence) {
      return new Busy("", List.of(), List.of(sentence));
    }
  }

  /**
   * What the change log says of a record as it was read; nothing where the record was changed
   * since, so that somebody who reads it again will ask again.
   */
  public Optional<Revisions> revisionsOf(Almanac read) {
    return record.almanac().equals(read) ? Optional.of(record.revisions()) : Optional.empty();
  }

  /**
   * Writes the calendar into a file that is new, or that it was written into before.
   *
   * @param fleet the record's boats and forecasts
   * @param withPrivate whether keys, gate codes and absences are written with visits
   */
  public Written write(Fleet fleet, Path file, boolean withPrivate) {
    return write(fleet, record.revisions(), file, withPrivate);
  }

  /** The same into a file named by its path as text; touches no other file, nor the record's. */
  public Written write(Fleet fleet, Revisions revisions, String file, boolean withPrivate) {
    try {
      return write(fleet, revisions, Path.of(file), withPrivate);
    } catch (InvalidPathException e) {
      throw new RecordException(
          RecordException.Kind.MISSING,
          "No calendar can be called \"" + file + "\". Write a file that ends with .ics.",
          e);
    }
  }

  private Written write(Fleet fleet, Revisions revisions, Path file, boolean withPrivate) {
    LocalDate since =
        revisions.newest().atZone(ZoneOffset.UTC).toLocalDate().minusYears(YEARS_BACK);
    try {
      List<CalendarEvent> events =
          Retold.of(
              told(file),
              CalendarEvents.of(fleet.almanac(), fleet.due(), revisions, withPrivate),
              revisions.newest(),
              since);
      String text = CalendarFile.text(fleet.almanac().business().name(), events);
      boolean changed = WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
      Instant at = changed ? record.clock().instant() : Files.getLastModifiedTime(file).toInstant();
      return new Written(changed, at, events.size(), withPrivate ? 0 : secrets(fleet));
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The calendar cannot be written to "
              + file
              + ". Choose a folder that is there, with room in it.",
          e);
    }
  }

  private static List<CalendarEvent> told(Path file) throws IOException {
    if (!Files.exists(file) || (Files.isRegularFile(file) && Files.size(file) == 0)) {
      return List.of();
    }
    Optional<List<CalendarEvent>> told =
        Files.isRegularFile(file) ? OwnCalendar.read(text(file)) : Optional.empty();
    return told.orElseThrow(
        () ->
            new RecordException(
                RecordException.Kind.IN_THE_WAY,
                file + " is something else than a calendar of this program. Choose another name."));
  }

  private static String text(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }

  private static int secrets(Fleet fleet) {
    return (int)
        fleet.almanac().berths().stream()
            .filter(b -> !b.secrets().equals(Berth.Private.NOTHING))
            .count();
  }

  /**
   * The days on which a calendar says that one is busy.
   *
   * @param from the first day to look at
   * @param until the first day not to look at
   */
  public BusyDays.Read busyDays(Path file, LocalDate from, LocalDate until) {
    try {
      return BusyDays.read(text(file), from, until, record.zone());
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.MISSING,
          "The calendar " + file + " cannot be read. Name a file that ends with .ics.",
          e);
    }
  }

  /**
   * The busy days of another calendar, where it has changed since it was read last.
   *
   * @param file its path as text
   * @param before its mark when it was read last
   * @return nothing when it is as it was
   */
  public Optional<Busy> busyDays(String file, String before, LocalDate from, LocalDate until) {
    try {
      Path path = Path.of(file);
      String mark =
          String.join(
              " ",
              file,
              Files.getLastModifiedTime(path).toString(),
              String.valueOf(Files.size(path)),
              from.toString());
      if (mark.equals(before)) {
        return Optional.empty();
      }
      String text = text(path);
      if (OwnCalendar.read(text).isPresent()) {
        return Optional.of(
            Busy.problem(file + " is a calendar that this program writes. Choose another."));
      }
      BusyDays.Read read = BusyDays.read(text, from, until, record.zone());
      return Optional.of(new Busy(mark, read.days(), read.problems()));
    } catch (IOException | InvalidPathException e) {
      return Optional.of(
          Busy.problem("The calendar " + file + " cannot be read. Look whether it is there."));
    }
  }
}
