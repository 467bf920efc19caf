package hullalmanac.exchange.ical;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.calendar.CalendarEvent;
import hullalmanac.core.calendar.EventKind;
import hullalmanac.core.calendar.Revision;
import hullalmanac.core.exposure.Stay;
import hullalmanac.core.exposure.Stays;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Water;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.Recur;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.RRule;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** ical4j is the second reader: a general-purpose calendar library that shares no code. */
class CalendarFileTest {
  private static final LocalDate DAY = LocalDate.of(2007, 6, 28);
  private static final Revision REVISION = new Revision(2, Instant.parse("2026-05-01T12:34:56Z"));

  private static CalendarEvent event(String summary, LocalDate until) {
    return new CalendarEvent(
        "48756c6c-0001-8000-8000-000000000001",
        EventKind.VISIT,
        DAY,
        until,
        Optional.empty(),
        new CalendarEvent.Words(summary, "Quillhaven", ""),
        false,
        Optional.of(-15),
        REVISION);
  }

  private static String text(CalendarEvent... events) {
    return CalendarFile.text("Tern & Tide, Boat; Care", List.of(events));
  }

  private static String unfolded(CalendarEvent... events) {
    return text(events).replace("\r\n ", "");
  }

  private static Calendar second(String text) throws Exception {
    return new CalendarBuilder().build(new StringReader(text));
  }

  private static VEvent only(String text) throws Exception {
    List<VEvent> events = second(text).getComponents(Component.VEVENT);
    assertThat(events).hasSize(1);
    return events.get(0);
  }

  private static String value(VEvent event, String property) {
    return event.getProperty(property).map(Property::getValue).orElse("");
  }

  /** RFC 5545, section 3.3.11; the last is a backslash and an n that are meant so. */
  static Stream<List<String>> escapes() {
    return Stream.of(
        List.of("Wash, polish; seal", "Wash\\, polish\\; seal"),
        List.of("C:\\boats\\Ada", "C:\\\\boats\\\\Ada"),
        List.of("line1\nline2", "line1\\nline2"),
        List.of("50% off; \"quote\": ok", "50% off\\; \"quote\": ok"),
        List.of("a\\nb", "a\\\\nb"));
  }

  @ParameterizedTest
  @MethodSource("escapes")
  void escapesAsTheStandardDemands(List<String> vector) throws Exception {
    CalendarEvent plain = event("x", DAY.plusDays(1));
    CalendarEvent event =
        new CalendarEvent(
            plain.uid(),
            plain.kind(),
            plain.first(),
            plain.until(),
            plain.again(),
            new CalendarEvent.Words("x", "", vector.get(0)),
            false,
            plain.alarmHours(),
            plain.revision());
    assertThat(unfolded(event)).contains("\r\nDESCRIPTION:" + vector.get(1) + "\r\n");
    assertThat(value(only(text(event)), Property.DESCRIPTION)).isEqualTo(vector.get(0));
    assertThat(OwnCalendar.read(text(event))).contains(List.of(event));
  }

  /** RFC 5545, section 3.6.1: its own example runs from 28 June to 8 July 2007, both included. */
  @Test
  void theEndOfWholeDaysIsNotIncluded() throws Exception {
    String text = text(event("Festival", LocalDate.of(2007, 7, 8).plusDays(1)));
    assertThat(text)
        .contains("\r\nDTSTART;VALUE=DATE:20070628\r\n", "\r\nDTEND;VALUE=DATE:20070709\r\n");
    assertThat(only(text).<LocalDate>getEndDate().orElseThrow().getDate())
        .isEqualTo(LocalDate.of(2007, 7, 9));
  }

  @Test
  void holdsAllThatTheStandardDemands() throws Exception {
    String text = text(event("Arctic Tern: polish", DAY.plusDays(1)));
    Calendar calendar = second(text);
    assertThat(calendar.validate().hasErrors()).isFalse();
    assertThat(text)
        .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:")
        .endsWith("END:VCALENDAR\r\n")
        .contains(
            "\r\nNAME:Tern & Tide\\, Boat\\; Care\r\n",
            "\r\nX-WR-CALNAME:Tern & Tide\\, Boat\\; Care\r\n",
            "\r\nREFRESH-INTERVAL;VALUE=DURATION:PT1H\r\n",
            "\r\nUID:48756c6c-0001-8000-8000-000000000001\r\n",
            "\r\nDTSTAMP:20260501T123456Z\r\n",
            "\r\nLAST-MODIFIED:20260501T123456Z\r\n",
            "\r\nSEQUENCE:2\r\n",
            "\r\nSTATUS:CONFIRMED\r\n",
            "\r\nTRANSP:OPAQUE\r\n",
            "\r\nTRIGGER:-PT15H\r\n");
    assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
    VAlarm alarm = (VAlarm) only(text).getComponents(Component.VALARM).get(0);
    assertThat(alarm.getProperties()).hasSize(3);
  }

  @Test
  void whatIsCancelledSaysSoAndTakesNoTime() throws Exception {
    String text = text(event("Arctic Tern: polish", DAY.plusDays(1)).away());
    VEvent event = only(text);
    assertThat(value(event, Property.STATUS)).isEqualTo("CANCELLED");
    assertThat(value(event, Property.TRANSP)).isEqualTo("TRANSPARENT");
    assertThat(value(event, Property.SUMMARY)).isEqualTo("Cancelled: Arctic Tern: polish");
    assertThat(event.getComponents(Component.VALARM)).isEmpty();
  }

  private static CalendarEvent layUp(LocalDate first, Optional<LocalDate> last) {
    return new CalendarEvent(
        "48756c6c-0004-8000-8000-000000000001",
        EventKind.LAY_UP,
        first,
        first.plusDays(1),
        Optional.of(new CalendarEvent.Yearly(last)),
        new CalendarEvent.Words("Arctic Tern: lay-up begins", "", ""),
        false,
        Optional.of(-159),
        REVISION);
  }

  /** A lay-up of 29 February begins on the day on which the record has it, in every year. */
  @Test
  void aRuleOfEveryYearMeansTheDaysOfTheRecord() throws Exception {
    for (LocalDate first : List.of(LocalDate.of(2024, 2, 29), LocalDate.of(2025, 11, 14))) {
      Made made = new Made(48);
      made.open(first.minusYears(1));
      Berth berth =
          made.berth(
              Cover.SHRINK_WRAP, Water.ASHORE, first, Optional.of(first.plusMonths(4)), true);
      List<LocalDate> record =
          Stays.of(made.almanac().berths(), first, first.plusYears(9)).stream()
              .filter(s -> s.berth().equals(berth))
              .map(Stay::from)
              .toList();
      String text = text(layUp(first, Optional.empty()));
      RRule<LocalDate> rule =
          only(text).<RRule<LocalDate>>getProperty(Property.RRULE).orElseThrow();
      Recur<LocalDate> recur = rule.getRecur();
      assertThat(recur.getDates(first, first, first.plusYears(9).minusDays(1)))
          .isEqualTo(record)
          .hasSize(9);
    }
  }

  @Test
  void aRuleEndsWithTheLastYearOfTheRecord() {
    CalendarEvent event = layUp(LocalDate.of(2024, 11, 3), Optional.of(LocalDate.of(2027, 11, 3)));
    assertThat(text(event)).contains("\r\nRRULE:FREQ=YEARLY;UNTIL=20271103\r\n");
    assertThat(OwnCalendar.read(text(event))).contains(List.of(event));
  }

  @Provide
  Arbitrary<String> oddTexts() {
    return Arbitraries.strings()
        .withChars("\\;,:\"n\n\r\t\u0000\u0007\u0085\u2028= äЖλ船~aB1 ")
        .ofMaxLength(120)
        .map(text -> text.replace("~", "🚤"));
  }

  @net.jqwik.api.Property(tries = 300)
  void bothReadersGiveBackWhateverIsWritten(
      @ForAll("oddTexts") String summary,
      @ForAll("oddTexts") String where,
      @ForAll("oddTexts") String lines)
      throws Exception {
    CalendarEvent event =
        new CalendarEvent(
            "48756c6c-0002-8000-8000-000000000001",
            EventKind.REMINDER,
            DAY,
            DAY.plusDays(3),
            Optional.empty(),
            new CalendarEvent.Words("s" + summary, where, lines),
            false,
            Optional.of(9),
            REVISION);
    String text = text(event);
    assertThat(OwnCalendar.read(text)).contains(List.of(event));
    VEvent second = only(text);
    assertThat(value(second, Property.SUMMARY)).isEqualTo(event.words().summary());
    assertThat(value(second, Property.LOCATION)).isEqualTo(event.words().where());
    // ical4j 4.2.3 misreads a backslash before a line break, "\\\\\\n", which section 3.3.11
    // allows.
    if (!event.words().text().contains("\\\n")) {
      assertThat(value(second, Property.DESCRIPTION)).isEqualTo(event.words().text());
    }
    assertThat(Stream.of(text.split("\r\n")))
        .allMatch(l -> l.getBytes(StandardCharsets.UTF_8).length <= 75);
  }

  @Test
  void knowsItsOwnCalendarsFromOthers() {
    String own = text(event("x", DAY.plusDays(1)));
    assertThat(OwnCalendar.read(own)).isPresent();
    assertThat(OwnCalendar.read(own.replace("PRODID:-//Hull", "PRODID:-//Another"))).isEmpty();
    assertThat(OwnCalendar.read("a shopping list")).isEmpty();
    assertThat(OwnCalendar.read("")).isEmpty();
    String mended = own.replaceAll("DTEND[^\r]*", "DTEND;VALUE=DATE:20010101");
    assertThat(OwnCalendar.read(mended)).contains(List.of());
  }
}
