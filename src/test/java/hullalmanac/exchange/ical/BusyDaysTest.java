package hullalmanac.exchange.ical;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.calendar.BusyDay;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TimeZone;
import net.fortuna.ical4j.model.Recur;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BusyDaysTest {
  private static final LocalDate FROM = LocalDate.of(2026, 1, 1);
  private static final LocalDate UNTIL = LocalDate.of(2026, 8, 1);

  private static BusyDays.Read read(String zone, String... lines) {
    String text =
        "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\nUID:1\r\n"
            + "DTSTAMP:20260101T000000Z\r\nSUMMARY:x\r\n"
            + String.join("\r\n", lines)
            + "\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";
    return BusyDays.read(text, FROM, UNTIL, ZoneId.of(zone));
  }

  private static List<LocalDate> days(String... lines) {
    BusyDays.Read read = read("UTC", lines);
    assertThat(read.problems()).isEmpty();
    return read.days().stream().map(BusyDay::day).toList();
  }

  private static BusyDay day(int month, int day, int minutes, String what) {
    return new BusyDay(LocalDate.of(2026, month, day), minutes, what);
  }

  /**
   * icalendar.ics was written by the general-purpose library icalendar 4.0.3 for Python: whole
   * days, nights in New York over the change of its clocks, one of them taken out and one moved, a
   * birthday that takes no time, something cancelled, and every first Monday.
   */
  @ParameterizedTest
  @ValueSource(strings = {"UTC", "Pacific/Auckland", "America/Los_Angeles"})
  void readsACalendarOfAnotherProgramWhereverThisComputerStands(String computer) throws Exception {
    TimeZone before = TimeZone.getDefault();
    try (InputStream in = getClass().getResourceAsStream("icalendar.ics")) {
      TimeZone.setDefault(TimeZone.getTimeZone(computer));
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      ZoneId newYork = ZoneId.of("America/New_York");
      BusyDays.Read spring = BusyDays.read(text, FROM, LocalDate.of(2026, 4, 1), newYork);
      assertThat(spring.problems()).isEmpty();
      assertThat(spring.days())
          .containsExactly(
              day(2, 2, 1440, "Rowing"),
              day(2, 3, 45, "Dentist"),
              day(3, 1, 120, "Night class"),
              day(3, 2, 60, "Night class"),
              day(3, 2, 1440, "Rowing"),
              day(3, 17, 90, "Night class, moved"),
              day(3, 22, 120, "Night class"),
              day(3, 23, 60, "Night class"));
      BusyDays.Read summer = BusyDays.read(text, LocalDate.of(2026, 6, 10), UNTIL, newYork);
      assertThat(summer.days())
          .filteredOn(d -> d.what().equals("Away, sailing"))
          .extracting(BusyDay::day)
          .isEqualTo(LocalDate.of(2026, 6, 28).datesUntil(LocalDate.of(2026, 7, 9)).toList());
    } finally {
      TimeZone.setDefault(before);
    }
  }

  /** RFC 5545, section 3.6.1: a whole day without an end is one day, and an end is not included. */
  @Test
  void countsWholeDays() {
    LocalDate first = LocalDate.of(2026, 5, 4);
    assertThat(days("DTSTART;VALUE=DATE:20260504")).containsExactly(first);
    assertThat(days("DTSTART;VALUE=DATE:20260504", "DTEND;VALUE=DATE:20260505"))
        .containsExactly(first);
    assertThat(days("DTSTART;VALUE=DATE:20260504", "DTEND;VALUE=DATE:20260506"))
        .containsExactly(first, first.plusDays(1));
    assertThat(days("DTSTART;VALUE=DATE:20260504", "DURATION:P2D"))
        .containsExactly(first, first.plusDays(1));
    assertThat(days("DTSTART;VALUE=DATE:20260504", "DTEND;VALUE=DATE:20260501"))
        .containsExactly(first);
  }

  @Test
  void countsMinutesOfTheDaysOfItsOwnZone() {
    String[] night = {"DTSTART:20260504T220000Z", "DURATION:PT3H"};
    assertThat(read("UTC", night).days()).containsExactly(day(5, 4, 120, "x"), day(5, 5, 60, "x"));
    assertThat(read("Asia/Tokyo", night).days()).containsExactly(day(5, 5, 180, "x"));
    assertThat(read("Asia/Tokyo", "DTSTART:20260504T220000", "DURATION:PT2H").days())
        .containsExactly(day(5, 4, 120, "x"));
    assertThat(read("UTC", "DTSTART:20260504T220000Z", "DTEND:20260505T000000Z").days())
        .containsExactly(day(5, 4, 120, "x"));
    assertThat(read("UTC", "DTSTART:20260504T100000Z").days()).containsExactly(day(5, 4, 1, "x"));
    assertThat(read("Europe/London", "DTSTART:20260328T000000", "DTEND:20260330T000000").days())
        .as("a day of 23 hours is taken whole")
        .containsExactly(day(3, 28, 1440, "x"), day(3, 29, 1380, "x"));
  }

  @Test
  void whatBeganBeforeOrEndsAfterCountsWithinOnly() {
    assertThat(days("DTSTART;VALUE=DATE:20251230", "DTEND;VALUE=DATE:20260103"))
        .containsExactly(FROM, FROM.plusDays(1));
    assertThat(days("DTSTART;VALUE=DATE:20260730", "DTEND;VALUE=DATE:99991231"))
        .containsExactly(UNTIL.minusDays(2), UNTIL.minusDays(1));
    assertThat(days("DTSTART;VALUE=DATE:19700101", "RRULE:FREQ=DAILY")).hasSize(212);
    assertThat(read("UTC", "DTSTART:20251231T230000Z", "DURATION:PT3H").days())
        .containsExactly(day(1, 1, 120, "x"));
  }

  @Test
  void saysWhatItCannotRead() {
    assertThat(BusyDays.read("a shopping list", FROM, UNTIL, ZoneOffset.UTC).problems())
        .containsExactly("It is no calendar. Choose a file that a calendar wrote as .ics.");
    BusyDays.Read broken = read("UTC", "DTSTART:tomorrow");
    assertThat(broken.days()).isEmpty();
    assertThat(broken.problems())
        .containsExactly("When \"x\" begins cannot be read; it was left out.");
    BusyDays.Read often = read("UTC", "DTSTART:20260101T000000Z", "RRULE:FREQ=SECONDLY");
    assertThat(often.problems()).singleElement().asString().contains("too often");
    BusyDays.Read odd =
        read("UTC", "DTSTART;VALUE=DATE:20260105", "RRULE:FREQ=DAILY;INTERVAL=2;BYDAY=MO,TH");
    assertThat(odd.days()).containsExactly(day(1, 5, 1440, "x"));
    assertThat(odd.problems()).singleElement().asString().contains("comes again");
    BusyDays.Read zone = read("UTC", "DTSTART;TZID=Nowhere:20260504T220000", "DURATION:PT1H");
    assertThat(zone.days()).containsExactly(day(5, 4, 60, "x"));
    assertThat(zone.problems()).singleElement().asString().contains("zone");
  }

  @Provide
  Arbitrary<String> rules() {
    return Combinators.combine(
            Arbitraries.of("DAILY", "WEEKLY", "MONTHLY", "YEARLY"),
            Arbitraries.integers().between(1, 4),
            Arbitraries.of("", ";COUNT=9", ";UNTIL=20260619"),
            Arbitraries.of("", ";BYDAY=MO,TH", ";BYMONTHDAY=-1", ";BYMONTHDAY=13,31"))
        .as((freq, interval, end, by) -> "FREQ=" + freq + ";INTERVAL=" + interval + end + by)
        .filter(rule -> !(rule.contains("WEEKLY") && rule.contains("BYMONTHDAY")))
        .filter(rule -> !(rule.contains("YEARLY") && rule.contains("BYMONTHDAY")))
        .filter(rule -> !(rule.contains("DAILY") && rule.contains("BY")));
  }

  /**
   * Rules of section 3.3.10, with ical4j as reference: it reckons them by code of its own. A day of
   * the month in a rule of every year is left out: the two read it differently, and calendars name
   * the month as well.
   */
  @Property(tries = 150)
  void followsRulesAsAnotherLibraryDoes(
      @ForAll("rules") String rule, @ForAll("starts") LocalDate start) {
    List<LocalDate> reference =
        new Recur<LocalDate>(rule).getDates(start, FROM, UNTIL.minusDays(1));
    String first = start.toString().replace("-", "");
    // A first day that its own rule does not name is counted here and not by the reference.
    assertThat(days("DTSTART;VALUE=DATE:" + first, "RRULE:" + rule))
        .filteredOn(d -> !d.equals(start))
        .isEqualTo(reference.stream().filter(d -> !d.equals(start)).toList());
  }

  @Provide
  Arbitrary<LocalDate> starts() {
    return Arbitraries.integers().between(0, 700).map(LocalDate.of(2024, 9, 1)::plusDays);
  }
}
