package hullalmanac.core.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateWordsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  private final DateWords words = new DateWords(TODAY);

  /**
   * No finer than a forecast carries: a day under three months, half a month under nine, a month.
   */
  @ParameterizedTest
  @CsvSource({
    "2026-05-14, by 14 May",
    "2026-07-31, by 31 July",
    "2026-08-01, in the first half of August",
    "2026-08-15, in the first half of August",
    "2026-08-16, in the second half of August",
    "2027-01-30, in the second half of January 2027",
    "2027-02-01, in February 2027",
    "2026-04-20, by 20 April",
    "2025-12-31, by 31 December 2025"
  })
  void saysWhenACoatIsBestRenewed(LocalDate day, String expected) {
    assertThat(words.bestWhen(day)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-06-10, early June",
    "2026-06-11, mid-June",
    "2026-06-20, mid-June",
    "2026-06-21, late June",
    "2027-02-03, February 2027",
    "2025-06-21, June 2025"
  })
  void roundsWhatIsOnlyRoughlyKnown(LocalDate day, String expected) {
    assertThat(words.rough(day)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-05-14, 2026-05-14, 14 May 2026",
    "2026-05-14, 2026-05-15, 14 and 15 May 2026",
    "2026-05-14, 2026-05-17, 14 to 17 May 2026",
    "2026-04-30, 2026-05-01, 30 April and 1 May 2026",
    "2025-12-29, 2026-01-02, 29 December 2025 to 2 January 2026"
  })
  void saysOnWhichDaysAVisitWas(LocalDate first, LocalDate last, String expected) {
    assertThat(DateWords.span(first, last)).isEqualTo(expected);
  }

  @Property
  void neverNamesADayOfAnotherYearWithoutTheYear(@ForAll @IntRange(min = -900, max = 900) int off) {
    LocalDate day = TODAY.plusDays(off);
    boolean named = words.exact(day).endsWith(String.valueOf(day.getYear()));
    assertThat(named).isEqualTo(day.getYear() != TODAY.getYear());
    assertThat(words.bestWhen(day).endsWith(" " + day.getYear()))
        .isEqualTo(day.getYear() != TODAY.getYear());
  }
}
