package hullalmanac.core.calendar;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Uid;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * When a boat is best worked on again, one event for all surfaces of hers that fall due together.
 * It is named after the one of them with the lowest id, and so stays the same event when the day
 * moves, also over a renewal.
 */
record ReminderEvents(RowsByOwner rows, Revisions revisions) {
  /** Nine in the morning two weeks before (common practice, no source). */
  private static final int TWO_WEEKS_BEFORE = -14 * 24 + 9;

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

  /** Nothing where no day can be given. */
  Optional<CalendarEvent> of(BoatDue due) {
    return due.workBy().map(day -> event(due, day));
  }

  private CalendarEvent event(BoatDue due, LocalDate day) {
    Id<Surface> lowest =
        due.coats().stream()
            .map(f -> f.surface().id())
            .min(Comparator.naturalOrder())
            .orElseThrow();
    String surfaces =
        RowsByOwner.few(
            RowsByOwner.names(due.coats().stream().map(CoatForecast::surface).toList()));
    String coats = due.coats().stream().map(ReminderEvents::line).collect(Collectors.joining("\n"));
    return new CalendarEvent(
        Uid.of(Uid.Of.REMINDER, lowest),
        EventKind.REMINDER,
        day,
        day.plusDays(1),
        Optional.empty(),
        new CalendarEvent.Words(
            due.boat().name() + ": renew " + surfaces,
            rows.berth(due.boat().id(), day).map(rows::where).orElse(""),
            "Best renewed by "
                + DAY.format(day)
                + ".\n"
                + coats
                + "\nA forecast, not a guarantee: it does not replace looking, nor the product's"
                + " label."),
        false,
        Optional.of(TWO_WEEKS_BEFORE),
        new Revision(0, revisions.newest()));
  }

  private static String line(CoatForecast f) {
    return Texts.capital(f.surface().words()) + ", " + f.product().name() + ": " + when(f);
  }

  private static String when(CoatForecast f) {
    if (f.outcome() instanceof Outcome.Dated d) {
      return "likely bare between "
          + DAY.format(d.early())
          + " and "
          + d.late().map(DAY::format).orElse("later");
    }
    if (f.outcome() instanceof Outcome.AlreadyLapsed a) {
      return "seen bare on " + DAY.format(a.seenOn());
    }
    return "due by its plain interval";
  }
}
