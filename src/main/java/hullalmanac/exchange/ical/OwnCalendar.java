package hullalmanac.exchange.ical;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalReader;
import biweekly.property.Description;
import biweekly.property.Location;
import biweekly.property.RecurrenceRule;
import biweekly.property.TextProperty;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import hullalmanac.core.calendar.CalendarEvent;
import hullalmanac.core.calendar.EventKind;
import hullalmanac.core.calendar.Revision;
import hullalmanac.core.record.Coded;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a calendar back that this program wrote. */
public final class OwnCalendar {
  private OwnCalendar() {}

  /**
   * The events of a text that {@link CalendarFile} made; nothing when it is another's calendar, or
   * none. An event that somebody else put in is left out.
   */
  public static Optional<List<CalendarEvent>> read(String text) {
    try (ICalReader reader = new ICalReader(text)) {
      ICalendar calendar = reader.readNext();
      if (calendar == null
          || calendar.getProductId() == null
          || !CalendarFile.PRODUCT.equals(calendar.getProductId().getValue())) {
        return Optional.empty();
      }
      List<CalendarEvent> events = new ArrayList<>();
      calendar.getEvents().forEach(e -> event(e).ifPresent(events::add));
      return Optional.of(events);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Optional<CalendarEvent> event(VEvent e) {
    Optional<EventKind> kind =
        e.getCategories().stream()
            .flatMap(c -> c.getValues().stream())
            .findFirst()
            .flatMap(c -> Coded.parse(EventKind.class, c));
    boolean whole =
        e.getUid() != null
            && e.getDateTimeStamp() != null
            && e.getSequence() != null
            && e.getDateStart() != null
            && e.getDateEnd() != null
            && e.getSummary() != null
            && e.getStatus() != null;
    if (kind.isEmpty() || !whole) {
      return Optional.empty();
    }
    LocalDate first = day(e.getDateStart().getValue());
    LocalDate until = day(e.getDateEnd().getValue());
    return until.isAfter(first)
        ? Optional.of(event(e, kind.get(), first, until))
        : Optional.empty();
  }

  private static CalendarEvent event(VEvent e, EventKind kind, LocalDate first, LocalDate until) {
    Location where = e.getLocation();
    Description text = e.getDescription();
    return new CalendarEvent(
        e.getUid().getValue(),
        kind,
        first,
        until,
        Optional.ofNullable(e.getRecurrenceRule()).map(OwnCalendar::again),
        new CalendarEvent.Words(e.getSummary().getValue(), orEmpty(where), orEmpty(text)),
        e.getStatus().isCancelled(),
        e.getAlarms().stream()
            .findFirst()
            .filter(a -> a.getTrigger() != null)
            .map(a -> a.getTrigger().getDuration())
            .map(d -> (int) Duration.ofMillis(d.toMillis()).toHours()),
        new Revision(e.getSequence().getValue(), e.getDateTimeStamp().getValue().toInstant()));
  }

  private static String orEmpty(TextProperty property) {
    return property == null ? "" : property.getValue();
  }

  private static CalendarEvent.Yearly again(RecurrenceRule rule) {
    return new CalendarEvent.Yearly(
        Optional.ofNullable(rule.getValue().getUntil()).map(OwnCalendar::day));
  }

  /** The day as it stands in the file, whatever the zone of this computer. */
  static LocalDate day(ICalDate date) {
    DateTimeComponents c = date.getRawComponents();
    return LocalDate.of(c.getYear(), c.getMonth(), c.getDate());
  }
}
