package hullalmanac.core.calendar;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Uid;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The days on which a lay-up begins and ends: two events of one day each. One event for all the
 * days between would stand on every page of the winter, once for each boat.
 */
record LayUpEvents(RowsByOwner rows, Revisions revisions) {
  /** Nine in the morning a week before (common practice, no source). */
  private static final int WEEK_BEFORE = -7 * 24 + 9;

  /** Nothing for a berth afloat, ashore without an end, or over before it began. */
  List<CalendarEvent> of(Berth berth) {
    boolean never = berth.lastYear().map(y -> y < berth.from().getYear()).orElse(false);
    if (berth.water() != Water.ASHORE || berth.until().isEmpty() || never) {
      return List.of();
    }
    Boat boat = rows.boat(berth.boat());
    String cover = berth.cover() == Cover.OPEN ? "" : ", " + berth.cover().words();
    List<CalendarEvent> events = new ArrayList<>();
    events.add(
        event(berth, Uid.Of.LAY_UP_BEGINS, berth.from(), boat.name() + ": lay-up begins" + cover));
    events.add(
        event(berth, Uid.Of.LAY_UP_ENDS, berth.until().get(), boat.name() + ": lay-up ends"));
    return events;
  }

  private CalendarEvent event(Berth berth, Uid.Of what, LocalDate day, String summary) {
    Optional<LocalDate> last =
        berth.lastYear().map(y -> day.plusYears(y - (long) berth.from().getYear()));
    return new CalendarEvent(
        Uid.of(what, berth.id()),
        EventKind.LAY_UP,
        day,
        day.plusDays(1),
        berth.yearly() ? Optional.of(new CalendarEvent.Yearly(last)) : Optional.empty(),
        new CalendarEvent.Words(summary, rows.where(berth), ""),
        false,
        Optional.of(WEEK_BEFORE),
        revisions.of(berth));
  }
}
