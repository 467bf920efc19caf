package hullalmanac.core.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.With;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoatingWindowTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);
  private static final LocalDateTime HALF_PAST_TEN = DAY.atTime(10, 30);
  private static final Product.Handling ANY = Product.Handling.UNKNOWN;
  private static final Product.Handling LABEL =
      With.component(
          With.component(
              With.component(ANY, "minCelsius", Optional.of(10)), "maxCelsius", Optional.of(30)),
          "maxHumidity",
          Optional.of(75));

  private static CoatingWindow then(double air, double humidity, double surface) {
    return CoatingWindow.then(new Climate(air, humidity, surface, HALF_PAST_TEN), ANY, false);
  }

  /**
   * The 3 °C margin of coating guides, on both sides of it; margins by the coefficients of Alduchov
   * and Eskridge, computed with R 4.2.2.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 50, 12.3, 3.038893, true",
    "20, 50, 12.2, 2.938893, false",
    "25, 60, 19.7, 3.002336, true",
    "25, 60, 19.6, 2.902336, false",
    "15, 85, 15.6, 3.101728, true",
    "15, 85, 15.4, 2.901728, false"
  })
  void opensAtThreeDegreesAboveTheDewPoint(
      double air, double humidity, double surface, double margin, boolean open) {
    CoatingWindow window = then(air, humidity, surface);
    assertThat(window.margin()).isCloseTo(margin, within(1e-6));
    assertThat(window.open()).isEqualTo(open);
  }

  @Test
  void saysTheMarginRoundedTowardsTheDewPoint() {
    assertThat(then(20, 50, 13.4).words()).isEqualTo("Surface 4.1 °C above the dew point, open");
    assertThat(then(20, 50, 12.26).words())
        .isEqualTo(
            "Closed: the surface is 2.9 °C above the dew point, and at least 3 °C are needed");
    assertThat(then(20, 50, 9.2).words())
        .isEqualTo("Closed: the surface is 0.1 °C below the dew point, so dew forms on it");
  }

  private static List<String> reasons(Climate climate, boolean sun, LocalDateTime now) {
    return CoatingWindow.of(climate, LABEL, sun, now) instanceof CoatingWindow.Closed closed
        ? closed.reasons()
        : List.of();
  }

  @Test
  void aReadingIsStaleAfterTwoHoursAndNotBefore() {
    Climate climate = new Climate(20, 50, 20, HALF_PAST_TEN);
    assertThat(reasons(climate, false, HALF_PAST_TEN.plusHours(2))).isEmpty();
    assertThat(reasons(climate, false, HALF_PAST_TEN.plusHours(2).plusMinutes(1)))
        .containsExactly("the reading is older than two hours; take another");
    assertThat(reasons(climate, false, HALF_PAST_TEN.plusDays(1))).hasSize(1);
  }

  @Test
  void keepsWithinTheLabelsLimitsAndTheyAreAllowed() {
    assertThat(reasons(new Climate(20, 75, 30, HALF_PAST_TEN), false, HALF_PAST_TEN)).isEmpty();
    assertThat(reasons(new Climate(12, 40, 10, HALF_PAST_TEN), false, HALF_PAST_TEN)).isEmpty();
    assertThat(reasons(new Climate(9, 40, 9.9, HALF_PAST_TEN), false, HALF_PAST_TEN))
        .containsExactly("the surface has 9.9 °C; the label wants at least 10 °C");
    assertThat(reasons(new Climate(25, 40, 30.5, HALF_PAST_TEN), false, HALF_PAST_TEN))
        .containsExactly("the surface has 30.5 °C; the label allows at most 30 °C");
    assertThat(reasons(new Climate(20, 76, 25, HALF_PAST_TEN), false, HALF_PAST_TEN))
        .containsExactly("the air has 76 % humidity; the label allows at most 75 %");
  }

  @Test
  void namesEveryReasonAtOnce() {
    assertThat(reasons(new Climate(8, 95, 8, HALF_PAST_TEN), true, HALF_PAST_TEN.plusHours(3)))
        .hasSize(5)
        .contains("the sun is on the surface; wait for shade");
  }

  @Property
  void aWarmerSurfaceNeverClosesAWindowThatTheDewPointAloneDecides(
      @ForAll @DoubleRange(min = 0, max = 35) double air,
      @ForAll @DoubleRange(min = 20, max = 100) double humidity,
      @ForAll @DoubleRange(min = -5, max = 40) double surface,
      @ForAll @DoubleRange(min = 0, max = 20) double warmer) {
    if (then(air, humidity, surface).open()) {
      assertThat(then(air, humidity, surface + warmer).open()).isTrue();
    }
  }

  private static Climate at(int hour, int minute, double surface) {
    return new Climate(20, 50, surface, DAY.atTime(hour, minute));
  }

  private static CoatingHours.Span span(int from, int fromMinute, int to, int toMinute) {
    return new CoatingHours.Span(DAY.atTime(from, fromMinute), DAY.atTime(to, toMinute));
  }

  /** At 20 °C and 50 % the dew point is 9.26 °C, so a window opens at a surface of 12.26 °C. */
  @Test
  void joinsOpenReadingsToWindowsWhateverTheirOrder() {
    CoatingHours hours =
        CoatingHours.of(
            List.of(
                at(12, 0, 16),
                at(9, 0, 11),
                at(10, 30, 13),
                at(15, 0, 14),
                at(13, 30, 18),
                at(16, 30, 12),
                at(18, 0, 13)),
            ANY,
            false);
    assertThat(hours.open()).containsExactly(span(10, 30, 15, 0), span(18, 0, 18, 0));
  }

  @Test
  void knowsNothingBetweenReadingsFurtherApartThanTwoHours() {
    CoatingHours hours =
        CoatingHours.of(List.of(at(8, 0, 15), at(10, 0, 15), at(12, 1, 15)), ANY, false);
    assertThat(hours.open()).containsExactly(span(8, 0, 10, 0), span(12, 1, 12, 1));
    assertThat(CoatingHours.of(List.of(), ANY, false).open()).isEmpty();
  }

  @Test
  void findsTheFirstDewAfterATimeWithinAnother() {
    CoatingHours hours =
        CoatingHours.of(List.of(at(12, 0, 15), at(20, 0, 9), at(23, 0, 8)), ANY, false);
    assertThat(hours.dewAfter(DAY.atTime(12, 0), DAY.atTime(22, 0))).contains(DAY.atTime(20, 0));
    assertThat(hours.dewAfter(DAY.atTime(12, 0), DAY.atTime(19, 0))).isEmpty();
    assertThat(hours.dewAfter(DAY.atTime(20, 0), DAY.atTime(23, 0))).contains(DAY.atTime(23, 0));
  }
}
