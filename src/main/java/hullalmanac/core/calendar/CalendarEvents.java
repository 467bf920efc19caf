package hullalmanac.core.calendar;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Visit;
import java.util.ArrayList;
import java.util.List;

/**
 * What a record tells a calendar. Notes, names of people and what they pay are never told; keys,
 * gate codes and absences only when asked for.
 */
public final class CalendarEvents {
  private CalendarEvents() {}

  /**
   * All visits, how long their coats cure, when boats are best worked on again, and lay-ups.
   *
   * @param due as forecast, joined by boat
   * @param withPrivate whether keys, gate codes and absences are told with visits
   * @return in no particular order; each with a name of its own
   */
  public static List<CalendarEvent> of(
      Almanac almanac, List<BoatDue> due, Revisions revisions, boolean withPrivate) {
    RowsByOwner rows = new RowsByOwner(almanac);
    VisitEvents visits = new VisitEvents(rows, revisions, withPrivate);
    ReminderEvents reminders = new ReminderEvents(rows, revisions);
    LayUpEvents layUps = new LayUpEvents(rows, revisions);
    List<CalendarEvent> events = new ArrayList<>();
    for (Visit visit : almanac.visits()) {
      events.add(visits.visit(visit));
      visits.cure(visit).ifPresent(events::add);
    }
    due.forEach(d -> reminders.of(d).ifPresent(events::add));
    for (Berth berth : almanac.berths()) {
      if (rows.boat(berth.boat()).status() == BoatStatus.ACTIVE) {
        events.addAll(layUps.of(berth));
      }
    }
    return List.copyOf(events);
  }
}
