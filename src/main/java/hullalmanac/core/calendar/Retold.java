package hullalmanac.core.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What to tell a calendar after what it was told before. Who has read the earlier file must see
 * from the number of changes that something is newer, and that something is off; so what shows the
 * same stays as it was told, what shows something else counts at least one change more, and what is
 * told no more is told as cancelled.
 */
public final class Retold {
  private Retold() {}

  /**
   * @param before as it was told; empty for the first time
   * @param now as the record has it
   * @param newest time of the newest act of the record
   * @param since what ended before this day is told no more
   * @return in order of their days
   */
  public static List<CalendarEvent> of(
      List<CalendarEvent> before, List<CalendarEvent> now, Instant newest, LocalDate since) {
    Map<String, CalendarEvent> told = new LinkedHashMap<>();
    before.forEach(e -> told.put(e.uid(), e));
    List<CalendarEvent> next = new ArrayList<>();
    for (CalendarEvent event : now) {
      CalendarEvent last = told.remove(event.uid());
      next.add(last == null ? event : after(last, event, newest));
    }
    for (CalendarEvent gone : told.values()) {
      CalendarEvent away = gone.away();
      next.add(gone.shows(away) ? gone : after(gone, away, newest));
    }
    return next.stream()
        .filter(e -> lasts(e, since))
        .sorted(Comparator.comparing(CalendarEvent::first).thenComparing(CalendarEvent::uid))
        .toList();
  }

  private static CalendarEvent after(CalendarEvent last, CalendarEvent event, Instant newest) {
    if (event.shows(last)) {
      return last;
    }
    Revision seen = last.revision();
    Revision own = event.revision();
    int sequence = Math.max(own.sequence(), seen.sequence() + 1);
    return event.as(new Revision(sequence, own.at().isAfter(seen.at()) ? own.at() : newest));
  }

  private static boolean lasts(CalendarEvent event, LocalDate since) {
    boolean comesAgain =
        event.again().map(y -> y.last().map(l -> !l.isBefore(since)).orElse(true)).orElse(false);
    return comesAgain || event.until().isAfter(since);
  }
}
