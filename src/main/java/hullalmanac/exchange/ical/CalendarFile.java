package hullalmanac.exchange.ical;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.RefreshInterval;
import biweekly.property.Status;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.Frequency;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import com.github.mangstadt.vinnie.io.VObjectPropertyValues;
import hullalmanac.core.calendar.CalendarEvent;
import hullalmanac.exchange.FoldedLines;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Date;
import java.util.List;

/**
 * The calendar that a record tells, as a file that others subscribe to. The same events always give
 * the same text: no time of the run stands in it.
 *
 * <p>References: RFC 5545, sections 3.1 (folding), 3.3.11 (escapes), 3.6.1 (whole days, the end not
 * included), 3.6.6 (alarms), 3.8.7 (DTSTAMP, SEQUENCE); RFC 7986, section 5 (NAME,
 * REFRESH-INTERVAL).
 */
public final class CalendarFile {
  /** Names the program that wrote a calendar, not its version: another version changes no byte. */
  static final String PRODUCT = "-//Hull Almanac//Hull Almanac//EN";

  private static final int HOURS_A_DAY = 24;

  private CalendarFile() {}

  /**
   * The text of a calendar.
   *
   * @param name of the calendar
   * @param events in the order in which they shall stand
   */
  public static String text(String name, List<CalendarEvent> events) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    CalendarEvent.Words words = new CalendarEvent.Words(name, "", "");
    calendar.setName(words.summary());
    calendar.setExperimentalProperty("X-WR-CALNAME", VObjectPropertyValues.escape(words.summary()));
    RefreshInterval hourly = new RefreshInterval(Duration.builder().hours(1).build());
    hourly.setParameter("VALUE", "DURATION");
    calendar.addProperty(hourly);
    events.forEach(e -> calendar.addEvent(event(e)));
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return FoldedLines.of(text.toString());
  }

  private static VEvent event(CalendarEvent e) {
    VEvent event = new VEvent();
    event.setUid(e.uid());
    Date at = Date.from(e.revision().at());
    event.setDateTimeStamp(at);
    event.setLastModified(at);
    event.setSequence(e.revision().sequence());
    event.setDateStart(new DateStart(day(e.first())));
    event.setDateEnd(new DateEnd(day(e.until())));
    e.again().ifPresent(y -> event.setRecurrenceRule(yearly(e.first(), y)));
    event.setSummary(e.words().summary());
    if (!e.words().where().isEmpty()) {
      event.setLocation(e.words().where());
    }
    if (!e.words().text().isEmpty()) {
      event.setDescription(e.words().text());
    }
    event.addCategories(e.kind().code());
    event.setStatus(e.cancelled() ? Status.cancelled() : Status.confirmed());
    event.setTransparency(!e.busy());
    e.alarmHours()
        .ifPresent(
            hours ->
                event.addAlarm(
                    VAlarm.display(new Trigger(duration(hours), null), e.words().summary())));
    return event;
  }

  private static ICalDate day(LocalDate day) {
    return new ICalDate(
        new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
  }

  /** The last of February is 28 February in common years, which a rule must be told. */
  private static Recurrence yearly(LocalDate first, CalendarEvent.Yearly again) {
    Recurrence.Builder rule = new Recurrence.Builder(Frequency.YEARLY);
    if (first.getMonth() == Month.FEBRUARY && first.getDayOfMonth() == Month.FEBRUARY.maxLength()) {
      rule.byMonth(Month.FEBRUARY.getValue()).byMonthDay(-1);
    }
    again.last().ifPresent(last -> rule.until(day(last)));
    return rule.build();
  }

  private static Duration duration(int hours) {
    int size = Math.abs(hours);
    Duration.Builder duration = Duration.builder().prior(hours < 0);
    if (size >= HOURS_A_DAY) {
      duration.days(size / HOURS_A_DAY);
    }
    if (size % HOURS_A_DAY != 0 || size == 0) {
      duration.hours(size % HOURS_A_DAY);
    }
    return duration.build();
  }
}
