package hullalmanac.exchange.ical;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.TimezoneAssignment;
import biweekly.io.TimezoneInfo;
import biweekly.io.text.ICalReader;
import biweekly.property.DateStart;
import biweekly.property.RecurrenceRule;
import biweekly.util.Frequency;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import biweekly.util.com.google.ical.compat.javautil.DateIterator;
import hullalmanac.core.calendar.BusyDay;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Date;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;

/**
 * Reads on which days another calendar says that one is busy. Events that are cancelled, or that
 * say they take no time (TRANSP), are none; what comes again is followed by its rule as far as
 * asked for.
 *
 * <p>Reference: RFC 5545, sections 3.3.10 (rules), 3.6.1 (whole days, the end not included),
 * 3.8.2.7 (TRANSP), 3.8.4.4 (one of a row that was changed).
 */
public final class BusyDays {
  /** One event is not followed over more turns; a rule that asks for more is a mistake. */
  private static final int MOST_TURNS = 5000;

  private static final int NO_TIMEZONE = 38;

  private final LocalDate from;
  private final LocalDate until;
  private final ZoneId zone;
  private final List<BusyDay> days = new ArrayList<>();
  private final List<String> problems = new ArrayList<>();

  private BusyDays(LocalDate from, LocalDate until, ZoneId zone) {
    this.from = from;
    this.until = until;
    this.zone = zone;
  }

  /**
   * What was found in a calendar.
   *
   * @param days in order; an event has an entry for each day that it touches
   * @param problems what could not be read, a sentence each; the rest was read all the same
   */
  public record Read(List<BusyDay> days, List<String> problems) {
    public Read {
      days = List.copyOf(days);
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads a calendar.
   *
   * @param text of the file
   * @param from the first day to look at
   * @param until the first day not to look at
   * @param zone in which days begin, and of times that name no zone
   */
  public static Read read(String text, LocalDate from, LocalDate until, ZoneId zone) {
    BusyDays reader = new BusyDays(from, until, zone);
    reader.read(text);
    reader.days.sort(Comparator.comparing(BusyDay::day).thenComparing(BusyDay::what));
    return new Read(reader.days, reader.problems);
  }

  private void read(String text) {
    boolean any = false;
    try (ICalReader reader = new ICalReader(text)) {
      reader.setDefaultTimezone(TimeZone.getTimeZone(zone));
      for (ICalendar c = reader.readNext(); c != null; c = reader.readNext()) {
        any = true;
        calendar(c);
        if (reader.getWarnings().stream()
            .anyMatch(w -> Integer.valueOf(NO_TIMEZONE).equals(w.getCode()))) {
          problems.add(
              "A time zone that it names is not known; its times were read as local ones.");
        }
      }
    } catch (IOException e) {
      any = false;
    }
    if (!any) {
      problems.add("It is no calendar. Choose a file that a calendar wrote as .ics.");
    }
  }

  private void calendar(ICalendar calendar) {
    Map<String, Set<Instant>> changed = new HashMap<>();
    for (VEvent e : calendar.getEvents()) {
      if (e.getRecurrenceId() != null && e.getRecurrenceId().getValue() != null) {
        changed
            .computeIfAbsent(uid(e), u -> new HashSet<>())
            .add(e.getRecurrenceId().getValue().toInstant());
      }
    }
    for (VEvent e : calendar.getEvents()) {
      boolean cancelled = e.getStatus() != null && e.getStatus().isCancelled();
      boolean free = e.getTransparency() != null && e.getTransparency().isTransparent();
      if (cancelled || free) {
        continue;
      }
      if (e.getDateStart() == null || e.getDateStart().getValue() == null) {
        problems.add("When " + name(e) + " begins cannot be read; it was left out.");
        continue;
      }
      boolean first = e.getRecurrenceId() == null;
      event(
          e, calendar.getTimezoneInfo(), first ? changed.getOrDefault(uid(e), Set.of()) : Set.of());
    }
  }

  private static String uid(VEvent e) {
    return e.getUid() == null ? "" : e.getUid().getValue();
  }

  private static String name(VEvent e) {
    String what = what(e);
    return what.isEmpty() ? "an event without a name" : "\"" + what + "\"";
  }

  private static String what(VEvent e) {
    boolean named = e.getSummary() != null && e.getSummary().getValue() != null;
    return named ? e.getSummary().getValue().strip() : "";
  }

  private void event(VEvent e, TimezoneInfo zones, Set<Instant> changed) {
    boolean wholeDays = !e.getDateStart().getValue().hasTime();
    // The library keeps the day of a DATE as the midnight of this computer's zone.
    TimeZone own = wholeDays ? TimeZone.getDefault() : zoneOf(e.getDateStart(), zones);
    Duration length = length(e, wholeDays);
    if (misread(e)) {
      problems.add("How " + name(e) + " comes again cannot be followed; it was read once.");
      e.setRecurrenceRule((RecurrenceRule) null);
    }
    DateIterator turns = e.getDateIterator(own);
    Instant end = until.atStartOfDay(zone).toInstant().plus(Duration.ofDays(1));
    Instant begin = from.atStartOfDay(zone).toInstant().minus(length).minus(Duration.ofDays(1));
    Instant start = e.getDateStart().getValue().toInstant();
    if (begin.isAfter(start)) {
      turns.advanceTo(Date.from(begin));
    }
    for (int n = 0; turns.hasNext(); n++) {
      Instant turn = turns.next().toInstant();
      if (!turn.isBefore(end)) {
        return;
      }
      if (n == MOST_TURNS) {
        problems.add(name(e) + " comes again too often; the rest of it was left out.");
        return;
      }
      if (changed.contains(turn)) {
        continue;
      }
      if (wholeDays) {
        whole(turn.atZone(own.toZoneId()).toLocalDate(), (int) length.toDays(), what(e));
      } else {
        timed(turn, length, what(e));
      }
    }
  }

  /**
   * Whether the library would follow a rule wrongly: it takes no notice of "every n days" where
   * days are named as well. Hardly a calendar writes such.
   */
  private static boolean misread(VEvent e) {
    if (e.getRecurrenceRule() == null || e.getRecurrenceRule().getValue() == null) {
      return false;
    }
    Recurrence rule = e.getRecurrenceRule().getValue();
    boolean named = !rule.getByDay().isEmpty() || !rule.getByMonthDay().isEmpty();
    boolean everyFew = rule.getInterval() != null && rule.getInterval() > 1;
    return rule.getFrequency() == Frequency.DAILY && named && everyFew;
  }

  private TimeZone zoneOf(DateStart start, TimezoneInfo zones) {
    TimezoneAssignment named = zones.getTimezone(start);
    if (named != null) {
      return named.getTimeZone();
    }
    boolean utc = start.getValue().getRawComponents().isUtc();
    return TimeZone.getTimeZone(utc ? ZoneOffset.UTC : zone);
  }

  /** A day where whole days have no end, nothing where times have none. */
  private static Duration length(VEvent e, boolean wholeDays) {
    Duration given = Duration.ZERO;
    if (e.getDateEnd() != null && e.getDateEnd().getValue() != null) {
      ICalDate start = e.getDateStart().getValue();
      ICalDate end = e.getDateEnd().getValue();
      given =
          wholeDays
              ? Duration.ofDays(
                  ChronoUnit.DAYS.between(OwnCalendar.day(start), OwnCalendar.day(end)))
              : Duration.between(start.toInstant(), end.toInstant());
    } else if (e.getDuration() != null && e.getDuration().getValue() != null) {
      given = Duration.ofMillis(e.getDuration().getValue().toMillis());
    }
    if (wholeDays) {
      return given.toDays() < 1 ? Duration.ofDays(1) : given;
    }
    return given.isNegative() ? Duration.ZERO : given;
  }

  private void whole(LocalDate first, int length, String what) {
    LocalDate end = first.plusDays(length);
    for (LocalDate day = begin(first); day.isBefore(end) && day.isBefore(until); ) {
      days.add(new BusyDay(day, BusyDay.WHOLE_DAY, what));
      day = day.plusDays(1);
    }
  }

  private void timed(Instant start, Duration length, String what) {
    Instant end = start.plus(length);
    LocalDate first = start.atZone(zone).toLocalDate();
    for (LocalDate day = begin(first); day.isBefore(until); day = day.plusDays(1)) {
      Instant morning = day.atStartOfDay(zone).toInstant();
      if (day.isAfter(first) && !morning.isBefore(end)) {
        return;
      }
      Instant night = day.plusDays(1).atStartOfDay(zone).toInstant();
      long minutes = Duration.between(later(start, morning), earlier(end, night)).toMinutes();
      days.add(new BusyDay(day, (int) Math.min(Math.max(minutes, 1), BusyDay.WHOLE_DAY), what));
    }
  }

  private LocalDate begin(LocalDate first) {
    return first.isBefore(from) ? from : first;
  }

  private static Instant later(Instant a, Instant b) {
    return a.isAfter(b) ? a : b;
  }

  private static Instant earlier(Instant a, Instant b) {
    return a.isBefore(b) ? a : b;
  }
}
