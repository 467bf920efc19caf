package hullalmanac.core.entry;

import static hullalmanac.core.entry.Entries.assertAnswered;
import static hullalmanac.core.entry.Entries.echoOf;
import static hullalmanac.core.entry.Entries.readIn;
import static hullalmanac.core.entry.Entries.refusalOf;
import static hullalmanac.core.entry.Entries.under;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Business.DayOrder;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateEntryTest {
  /** A Friday. */
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-05-14 | 2026-05-14",
        "2026-5-14 | 2026-05-14",
        "2026/05/14 | 2026-05-14",
        "2026.5.14 | 2026-05-14",
        "1900-01-01 | 1900-01-01",
        "2199-12-31 | 2199-12-31",
        "14 May | 2026-05-14",
        "May 14 | 2026-05-14",
        "14 may 2026 | 2026-05-14",
        "  14   MAY   26 | 2026-05-14",
        "14May2026 | 2026-05-14",
        "14-May-2026 | 2026-05-14",
        "14. May 2026 | 2026-05-14",
        "14th May | 2026-05-14",
        "may 14th, 2026 | 2026-05-14",
        "May 14 2026 | 2026-05-14",
        "3 sep | 2026-09-03",
        "3 Sept. 2027 | 2027-09-03",
        "3 september 99 | 1999-09-03",
        "Thursday, 14 May 2026 | 2026-05-14",
        "thu 14 may | 2026-05-14",
        "Thu, 2026-05-14 | 2026-05-14",
        "31 dec | 2025-12-31",
        "29 feb | 2028-02-29",
        "feb 29 2028 | 2028-02-29",
        "today | 2026-05-01",
        "Tomorrow | 2026-05-02",
        "YESTERDAY | 2026-04-30",
        "+3m | 2026-08-01",
        "-2w | 2026-04-17",
        "\u22122w | 2026-04-17",
        "+10d | 2026-05-11",
        "+1y | 2027-05-01",
        "+ 3 months | 2026-08-01",
        "-1 week | 2026-04-24",
        "fri | 2026-05-08",
        "friday | 2026-05-08",
        "Next  Fri | 2026-05-08",
        "this fri | 2026-05-01",
        "last fri | 2026-04-24",
        "thu | 2026-05-07",
        "thurs. | 2026-05-07",
        "last thu | 2026-04-30",
        "this thu | 2026-05-07",
        "sat | 2026-05-02",
        "\u0661\u0664 May | 2026-05-14",
        "\uFF12\uFF10\uFF12\uFF16\uFF0D\uFF10\uFF15\uFF0D\uFF11\uFF14 | 2026-05-14"
      })
  void readsDatesThatNoOrderOfDayAndMonthTouches(String typed, LocalDate expected) {
    for (DayOrder order : DayOrder.values()) {
      assertThat(readIn(DateEntry.read(typed, TODAY, order))).isEqualTo(expected);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "12/5, 2026-05-12, 2025-12-05",
    "12.5., 2026-05-12, 2025-12-05",
    "12. 5., 2026-05-12, 2025-12-05",
    "12.5, 2026-05-12, 2025-12-05",
    "12-5, 2026-05-12, 2025-12-05",
    "12 / 5, 2026-05-12, 2025-12-05",
    "12/5/27, 2027-05-12, 2027-12-05",
    "12.05.2027, 2027-05-12, 2027-12-05",
    "12-5-98, 1998-05-12, 1998-12-05",
    "1/2/1950, 1950-02-01, 1950-01-02",
    "Tue 12/5/26, 2026-05-12, "
  })
  void readsShortDatesInTheOrderThatIsSet(String typed, LocalDate dayFirst, LocalDate monthFirst) {
    assertThat(readIn(DateEntry.read(typed, TODAY, DayOrder.DAY_FIRST))).isEqualTo(dayFirst);
    Entry<LocalDate> other = DateEntry.read(typed, TODAY, DayOrder.MONTH_FIRST);
    if (monthFirst == null) {
      assertThat(refusalOf(other))
          .isEqualTo(
              "That day is Saturday, 5 December 2026, not a Tuesday; write it without the weekday");
    } else {
      assertThat(readIn(other)).isEqualTo(monthFirst);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "MONTH_FIRST, 25/12, There is no month 25; write 12/25 or 25 Dec",
    "MONTH_FIRST, 25.12.2026, There is no month 25; write 12/25/2026 or 25 Dec 2026",
    "DAY_FIRST, 12/25, There is no month 25; write 25/12 or 25 Dec",
    "DAY_FIRST, 2/29/28, There is no month 29; write 29/2/28 or 29 Feb 28",
    "DAY_FIRST, 2/29/27, There is no month 29; write 14/5 or 14 May",
    "DAY_FIRST, 13/13, There is no month 13; write 14/5 or 14 May",
    "MONTH_FIRST, 13/32, There is no month 13; write 5/14 or 14 May",
    "DAY_FIRST, 12/0, There is no month 0; write 14/5 or 14 May",
    "DAY_FIRST, 31/4, There is no 31 April; write a day from 1 to 30",
    "DAY_FIRST, 0/5, There is no 0 May; write a day from 1 to 31",
    "DAY_FIRST, 30 feb, There is no 30 February; write a day from 1 to 29",
    "DAY_FIRST, 29 feb 2027, There is no 29 February 2027; write a day from 1 to 28",
    "DAY_FIRST, 29 feb 2100, There is no 29 February 2100; write a day from 1 to 28",
    "DAY_FIRST, 2026-02-30, There is no 30 February 2026; write a day from 1 to 28",
    "DAY_FIRST, 2026-13-01, There is no month 13; write 2026-05-14"
  })
  void refusesRatherThanGuessesTheOtherOrder(DayOrder order, String typed, String sentence) {
    assertThat(refusalOf(DateEntry.read(typed, TODAY, order))).isEqualTo(sentence);
  }

  @Test
  void takesADayOverTwelveInTheOrderThatIsSet() {
    assertThat(readIn(DateEntry.read("25/12", TODAY, DayOrder.DAY_FIRST)))
        .isEqualTo(LocalDate.of(2025, 12, 25));
    assertThat(readIn(DateEntry.read("12/25", TODAY, DayOrder.MONTH_FIRST)))
        .isEqualTo(LocalDate.of(2025, 12, 25));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-05-01, 31 Oct, 2025-10-31",
    "2026-05-01, 30 Oct, 2026-10-30",
    "2026-05-02, 31 Oct, 2026-10-31",
    "2027-11-13, 14 May, 2028-05-14",
    "2027-11-12, 14 May, 2027-05-14",
    "2027-11-14, 14 May, 2028-05-14",
    "2026-03-01, 29 Feb, 2028-02-29",
    "2026-02-28, 29 Feb, 2024-02-29",
    "2100-03-01, 29 Feb, 2104-02-29",
    "2100-02-28, 29 Feb, 2096-02-29",
    "1900-01-05, 31 Dec, 1900-12-31",
    "2199-12-25, 1 Jan, 2199-01-01",
    "2199-12-25, 29 Feb, 2196-02-29"
  })
  void takesADateWithoutAYearAsTheNearestToToday(
      LocalDate today, String typed, LocalDate expected) {
    assertThat(readIn(DateEntry.read(typed, today, DayOrder.DAY_FIRST))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"26, 2026", "00, 2000", "75, 2075", "76, 2076", "77, 1977", "99, 1999"})
  void takesTwoDigitsOfAYearAsTheNearestSuchYear(String digits, int year) {
    assertThat(readIn(DateEntry.read("14/5/" + digits, TODAY, DayOrder.DAY_FIRST)))
        .isEqualTo(LocalDate.of(year, 5, 14));
  }

  @Test
  void countsMonthsToTheLastDayOfAShorterOne() {
    assertThat(readIn(DateEntry.read("+3m", LocalDate.of(2026, 1, 31), DayOrder.DAY_FIRST)))
        .isEqualTo(LocalDate.of(2026, 4, 30));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1899-12-31",
        "2200-01-01",
        "0001-01-01",
        "14 May 2200",
        "1/1/1899",
        "+9999y",
        "-200y",
        "+9999m"
      })
  void refusesYearsOutsideTheRange(String typed) {
    assertThat(refusalOf(DateEntry.read(typed, TODAY, DayOrder.DAY_FIRST)))
        .isEqualTo("Dates run from 1900 to 2199; write a year between them");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "abc",
        "14",
        "May",
        "may 2026",
        "may-2026",
        "14 mai",
        "14 m",
        "14 ma",
        "14/5/6",
        "14/5/026",
        "14/5-26",
        "2026",
        "20260514",
        "3m",
        "+3",
        "+3x",
        "+99999d",
        "next",
        "fr",
        "freitag",
        "next 14 may",
        "mon 3",
        "xyz 14 may",
        "12,5",
        "14 May 2026 x",
        "14 May 20 26",
        "//",
        "32 6 2026",
        "14\u200B May",
        "tod\u0430y"
      })
  void refusesWhatIsNoDateAndSaysWhatCanBeWritten(String typed) {
    assertThat(refusalOf(DateEntry.read(typed, TODAY, DayOrder.DAY_FIRST)))
        .endsWith(" is not a date; write it as 14 May, 14/5/2026, fri or +3m");
    assertThat(refusalOf(DateEntry.read(typed, TODAY, DayOrder.MONTH_FIRST)))
        .endsWith(" is not a date; write it as 14 May, 5/14/2026, fri or +3m");
  }

  @Test
  void takesBlanksForNothing() {
    assertThat(DateEntry.read(" \u00A0\t", TODAY, DayOrder.DAY_FIRST))
        .isEqualTo(new Entry.Empty<LocalDate>());
  }

  @Test
  void demandsATodayOfTheYearsItReads() {
    assertThatThrownBy(() -> DateEntry.read("fri", LocalDate.MAX, DayOrder.DAY_FIRST))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1900 to 2199");
  }

  @Property
  void readsAnyDayBackInEverySpellingWithItsYear(
      @ForAll("days") LocalDate day, @ForAll("days") LocalDate today) {
    int d = day.getDayOfMonth();
    int m = day.getMonthValue();
    int y = day.getYear();
    String name = day.getMonth().name();
    List<String> either =
        List.of(
            day.toString(),
            d + " " + name + " " + y,
            d + " " + name.substring(0, 3) + " " + y,
            name.toLowerCase(Locale.ROOT) + " " + d + ", " + y);
    for (DayOrder order : DayOrder.values()) {
      for (String typed : either) {
        assertThat(readIn(DateEntry.read(typed, today, order))).isEqualTo(day);
      }
      for (String sign : List.of("/", ".", "-")) {
        String typed =
            order == DayOrder.DAY_FIRST ? d + sign + m + sign + y : m + sign + d + sign + y;
        assertThat(readIn(DateEntry.read(typed, today, order))).isEqualTo(day);
      }
    }
  }

  @Property
  void readsItsOwnEchoBackAsTheSame(
      @ForAll("days") LocalDate day, @ForAll("days") LocalDate today, @ForAll DayOrder order) {
    Entry<LocalDate> entry = DateEntry.read(day.toString(), today, order);
    assertThat(DateEntry.read(echoOf(entry), today, order)).isEqualTo(entry);
  }

  @Property
  void findsNoNearerDayOfThatNameWithoutAYear(
      @ForAll("days") LocalDate any, @ForAll("days") LocalDate today) {
    String typed = any.getDayOfMonth() + " " + any.getMonth();
    LocalDate found = readIn(DateEntry.read(typed, today, DayOrder.DAY_FIRST));
    long distance = Math.abs(today.until(found, ChronoUnit.DAYS));
    assertThat(found.getMonth()).isEqualTo(any.getMonth());
    assertThat(found.getDayOfMonth()).isEqualTo(any.getDayOfMonth());
    for (int year = 1900; year <= 2199; year++) {
      LocalDate same = any.withYear(year);
      if (same.getDayOfMonth() == any.getDayOfMonth()) {
        long other = Math.abs(today.until(same, ChronoUnit.DAYS));
        assertThat(other).isGreaterThanOrEqualTo(distance);
        assertThat(other == distance && same.isAfter(found)).isFalse();
      }
    }
  }

  @Property
  void findsWeekdaysWithinAWeek(
      @ForAll("daysWellInside") LocalDate today, @ForAll DayOfWeek day, @ForAll DayOrder order) {
    String name = day.name().substring(0, 3);
    LocalDate next = readIn(DateEntry.read("next " + name, today, order));
    LocalDate last = readIn(DateEntry.read("last " + name, today, order));
    LocalDate this1 = readIn(DateEntry.read("this " + name, today, order));
    assertThat(List.of(next.getDayOfWeek(), last.getDayOfWeek(), this1.getDayOfWeek()))
        .containsOnly(day);
    assertThat(today.until(next, ChronoUnit.DAYS)).isBetween(1L, 7L);
    assertThat(last.until(today, ChronoUnit.DAYS)).isBetween(1L, 7L);
    assertThat(today.until(this1, ChronoUnit.DAYS)).isBetween(0L, 6L);
    assertThat(readIn(DateEntry.read(day.name(), today, order))).isEqualTo(next);
  }

  @Property
  void answersToAnythingTyped(
      @ForAll("garbage") String typed, @ForAll("days") LocalDate today, @ForAll DayOrder order) {
    assertAnswered(typed, DateEntry.read(typed, today, order));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "tr", "ar", "ar-EG-u-nu-arab", "th-TH-u-ca-buddhist"})
  void readsTheSameInEveryCountry(String language) {
    for (String typed :
        List.of("14 MAY", "FRI", "12/5", "25/12", "+3M", "FRIDAY", "30 apr", "x", "", "THIS FRI")) {
      for (DayOrder order : DayOrder.values()) {
        assertThat(under(language, () -> DateEntry.read(typed, TODAY, order)))
            .isEqualTo(under("en", () -> DateEntry.read(typed, TODAY, order)));
      }
    }
    assertThat(under(language, () -> echoOf(DateEntry.read("14/5", TODAY, DayOrder.DAY_FIRST))))
        .isEqualTo("Thursday, 14 May 2026");
  }

  @Provide
  Arbitrary<LocalDate> days() {
    return between(LocalDate.of(1900, 1, 1), LocalDate.of(2199, 12, 31));
  }

  @Provide
  Arbitrary<LocalDate> daysWellInside() {
    return between(LocalDate.of(1900, 1, 8), LocalDate.of(2199, 12, 24));
  }

  @Provide
  Arbitrary<String> garbage() {
    return Arbitraries.oneOf(
        Arbitraries.strings().ofMaxLength(80),
        Arbitraries.of(
                "0", "2", "9", "14", "31", "2026", "/", ".", "-", "+", " ", ",", "may", "feb",
                "fri", "next ", "last ", "m", "y", "th", "\u0661", "\u200F")
            .list()
            .ofMaxSize(10)
            .map(parts -> String.join("", parts)));
  }

  private static Arbitrary<LocalDate> between(LocalDate first, LocalDate last) {
    return Arbitraries.longs()
        .between(first.toEpochDay(), last.toEpochDay())
        .map(LocalDate::ofEpochDay);
  }
}
