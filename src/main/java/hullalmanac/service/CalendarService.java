package hullalmanac.service;

import hullalmanac.core.calendar.CalendarEvent;
import hullalmanac.core.calendar.CalendarEvents;
import hullalmanac.core.calendar.Retold;
import hullalmanac.core.calendar.Revisions;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.RecordException;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.ical.BusyDays;
import hullalmanac.exchange.ical.CalendarFile;
import hullalmanac.exchange.ical.OwnCalendar;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * The calendar of a record as one file that others subscribe to, in a folder that is kept in step
 * with a phone, say; and the busy days of another calendar. Everything here touches files.
 *
 * <p>The file is its own memory: what was told in it before says what is newer now (see decision
 * 12). So it can be written while the record is open elsewhere, and nothing of it is in the record.
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
   * @param events how many it holds
   * @param privateLeftOut how many berths have keys, gate codes or absences that were not written
   */
  public record Written(boolean changed, int events, int privateLeftOut) {}

  /**
   * Writes the calendar into a file that is new, or that it was written into before.
   *
   * @param fleet the record's boats and forecasts
   * @param withPrivate whether keys, gate codes and absences are written with visits
   */
  public Written write(Fleet fleet, Path file, boolean withPrivate) {
    Revisions revisions = record.revisions();
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
      return new Written(changed, events.size(), withPrivate ? 0 : secrets(fleet));
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
}
