package hullalmanac.core.calendar;

import hullalmanac.core.record.Texts;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Something in the calendar that takes whole days.
 *
 * @param uid its name for other programs, the same for ever
 * @param first day
 * @param until the first day after it
 * @param again whether and how long it comes again each year; absent: it is there once
 * @param cancelled whether it was told and does not hold any more
 * @param alarmHours hours from the beginning of its first day at which to be reminded, negative
 *     before it; absent: not at all
 */
public record CalendarEvent(
    String uid,
    EventKind kind,
    LocalDate first,
    LocalDate until,
    Optional<Yearly> again,
    Words words,
    boolean cancelled,
    Optional<Integer> alarmHours,
    Revision revision) {
  private static final String CANCELLED = "Cancelled: ";

  public CalendarEvent {
    if (!until.isAfter(first)) {
      throw new IllegalArgumentException(
          "an event takes a day at least, not " + first + " to " + until);
    }
  }

  /**
   * That it comes again on the same days of each year; one of 29 February on 28 February of common
   * years.
   *
   * @param last the last day on which it begins; absent: it goes on
   */
  public record Yearly(Optional<LocalDate> last) {}

  /**
   * What is said of it, without control characters; lines are parted by a line feed.
   *
   * @param summary one line
   * @param where one line; empty when unknown
   * @param text any number of lines
   */
  public record Words(String summary, String where, String text) {
    public Words {
      summary = Texts.oneLine(summary);
      where = Texts.oneLine(where);
      text = Texts.lines(text);
    }
  }

  /** Whether it takes the day for work. */
  public boolean busy() {
    return kind == EventKind.VISIT && !cancelled;
  }

  /** Whether another shows the same, whenever it came to be so. */
  public boolean shows(CalendarEvent other) {
    return equals(other.as(revision));
  }

  /** The same after another number of changes. */
  public CalendarEvent as(Revision other) {
    return new CalendarEvent(uid, kind, first, until, again, words, cancelled, alarmHours, other);
  }

  /** The same, cancelled: it says so in words too, for calendars that show no status. */
  public CalendarEvent away() {
    return cancelled
        ? this
        : new CalendarEvent(
            uid,
            kind,
            first,
            until,
            again,
            new Words(CANCELLED + words.summary(), words.where(), words.text()),
            true,
            Optional.empty(),
            revision);
  }
}
