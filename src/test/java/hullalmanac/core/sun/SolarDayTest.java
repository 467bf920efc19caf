package hullalmanac.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.reference.Reference;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SolarDayTest {
  private static final int[] FIFTEENTHS = {15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349};

  /** FAO-56, example 8: 20° S, 3 September. */
  @Test
  void agreesWithExample8() {
    SolarDay day = new SolarDay(-20, 246);
    assertThat(day.inverseDistance()).isCloseTo(0.985, within(0.0005));
    assertThat(day.declination()).isCloseTo(0.120, within(0.0005));
    assertThat(day.sunsetAngle()).isCloseTo(1.527, within(0.0005));
    assertThat(day.extraterrestrial()).isCloseTo(32.2, within(0.05));
    assertThat(day.extraterrestrial()).isCloseTo(32.193996, within(1e-6));
    assertThat(day.extraterrestrialAsWater()).isCloseTo(13.1, within(0.05));
    assertThat(day.extraterrestrialAsWater()).isCloseTo(13.135150, within(1e-6));
  }

  /** FAO-56, example 9: the same day. */
  @Test
  void agreesWithExample9() {
    assertThat(new SolarDay(-20, 246).daylightHours()).isCloseTo(11.7, within(0.05));
  }

  /** FAO-56, examples 10 and 11: 22°54' S, 15 May, 7.1 hours of sun. */
  @Test
  void agreesWithExamples10And11() {
    SolarDay day = new SolarDay(-22.9, 135);
    assertThat(day.extraterrestrial()).isCloseTo(25.111028, within(1e-6));
    assertThat(day.daylightHours()).isCloseTo(10.895076, within(1e-6));
    assertThat(day.atGround(220.0 / 31 / day.daylightHours())).isCloseTo(14.456098, within(1e-6));
    assertThat(day.clearSky(0)).isCloseTo(18.833271, within(1e-6));
    assertThat(day.extraterrestrial()).isCloseTo(25.1, within(0.05));
    assertThat(day.daylightHours()).isCloseTo(10.9, within(0.05));
    assertThat(day.atGround(7.1 / 10.9)).isCloseTo(14.5, within(0.05));
    assertThat(day.clearSky(0)).isCloseTo(18.8, within(0.05));
  }

  /** FAO-56, example 18: Ra 41.09, 100 m above the sea; only the factor is ours. */
  @Test
  void agreesWithTheFactorOfExample18() {
    SolarDay day = new SolarDay(50.8, 187);
    assertThat(day.clearSky(100) / day.extraterrestrial() * 41.09).isCloseTo(30.90, within(0.005));
  }

  static Stream<List<String>> table26() {
    return Reference.read(SolarDayTest.class, "table-2-6.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("table26")
  void agreesWithTable26(List<String> row) {
    double latitude = Double.parseDouble(row.get(0));
    double tolerance = latitude == 60 ? 0.20 : 0.10;
    for (int month = 0; month < 12; month++) {
      assertThat(new SolarDay(latitude, FIFTEENTHS[month]).extraterrestrial())
          .isCloseTo(Double.parseDouble(row.get(month + 1)), within(tolerance));
    }
  }

  static Stream<List<String>> table27() {
    return Reference.read(SolarDayTest.class, "table-2-7.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("table27")
  void agreesWithTable27(List<String> row) {
    for (int month = 0; month < 12; month++) {
      assertThat(new SolarDay(Double.parseDouble(row.get(0)), FIFTEENTHS[month]).daylightHours())
          .isCloseTo(Double.parseDouble(row.get(month + 1)), within(0.06));
    }
  }

  static Stream<List<String>> independent() {
    return Reference.read(SolarDayTest.class, "independent.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("independent")
  void agreesWithAnIndependentComputation(List<String> row) {
    SolarDay day = new SolarDay(Double.parseDouble(row.get(0)), Integer.parseInt(row.get(1)));
    assertThat(day.extraterrestrial()).isCloseTo(Double.parseDouble(row.get(2)), within(1e-6));
    assertThat(day.daylightHours()).isCloseTo(Double.parseDouble(row.get(3)), within(1e-6));
  }

  /** FAO-56 Eq 21 with the sunset angle clamped, computed apart with R 4.2.2. */
  @Test
  void givesPolarDayAndNight() {
    assertThat(new SolarDay(70, 172).extraterrestrial()).isCloseTo(42.694986, within(1e-6));
    assertThat(new SolarDay(70, 172).daylightHours()).isEqualTo(24);
    assertThat(new SolarDay(70, 355).extraterrestrial()).isZero();
    assertThat(new SolarDay(70, 355).daylightHours()).isZero();
    assertThat(new SolarDay(66.5, 355).extraterrestrial()).isCloseTo(0.002414, within(1e-6));
    assertThat(new SolarDay(66.5, 355).daylightHours()).isCloseTo(0.610516, within(1e-6));
    assertThat(new SolarDay(66.5, 172).extraterrestrial()).isCloseTo(41.668892, within(1e-6));
    assertThat(new SolarDay(66.5, 172).daylightHours()).isCloseTo(23.393501, within(1e-6));
    assertThat(new SolarDay(-70, 355).extraterrestrial()).isCloseTo(45.560544, within(1e-6));
    assertThat(new SolarDay(-70, 355).daylightHours()).isEqualTo(24);
  }

  /** FAO-56 Eq 35 and 37 at 28° N on day 196, computed apart with R 4.2.2. */
  @ParameterizedTest
  @CsvSource({"0, 10.091202", "4, 16.023368", "8, 21.955533", "10, 24.921616"})
  void letsThroughMoreSunTheLongerItShines(double hours, double ground) {
    SolarDay day = new SolarDay(28, 196);
    assertThat(day.atGround(hours / day.daylightHours())).isCloseTo(ground, within(1e-6));
    assertThat(day.atGround(1)).isCloseTo(30.273607, within(1e-6));
    assertThat(day.clearSky(100)).isCloseTo(30.354336, within(1e-6));
    assertThat(day.clearSky(1000)).isCloseTo(31.080903, within(1e-6));
  }

  /** FAO-56 Eq 23 and 24, computed apart with R 4.2.2. */
  @ParameterizedTest
  @CsvSource({
    "15, 1.03190598, -0.37021582",
    "105, 0.99226178, 0.16583675",
    "196, 0.96788709, 0.37458075",
    "246, 0.98482882, 0.11965509",
    "288, 1.00801404, -0.16904851",
    "350, 1.03190598, -0.40777497"
  })
  void knowsDistanceAndDeclination(int day, double distance, double declination) {
    assertThat(new SolarDay(0, day).inverseDistance()).isCloseTo(distance, within(1e-8));
    assertThat(new SolarDay(0, day).declination()).isCloseTo(declination, within(1e-8));
  }

  /** The paper's divisor stays 365 in leap years. */
  @Test
  void takesTheLastDayOfALeapYearForTheFirst() {
    assertThat(new SolarDay(48.4, 366).extraterrestrial())
        .isCloseTo(new SolarDay(48.4, 1).extraterrestrial(), within(1e-9));
  }

  /** Sums over days of the year, computed apart with R 4.2.2. */
  @ParameterizedTest
  @CsvSource({
    "60, 1, 365, 7370.2694",
    "45, 1, 365, 9620.0558",
    "28, 1, 365, 11692.9279",
    "0, 1, 365, 13151.1441",
    "-20, 1, 365, 12479.0862",
    "-45, 1, 365, 9818.1681",
    "60, 105, 288, 5807.5286",
    "45, 105, 288, 6524.1882",
    "28, 105, 288, 6954.5321"
  })
  void addsUpOverTheYear(double latitude, int from, int to, double expected) {
    assertThat(sum(latitude, from, to)).isCloseTo(expected, within(1e-3));
  }

  private static double sum(double latitude, int from, int to) {
    double sum = 0;
    for (int day = from; day <= to; day++) {
      sum += new SolarDay(latitude, day).extraterrestrial();
    }
    return sum;
  }

  @Property
  void northAndSouthShareTheDay(
      @ForAll @DoubleRange(min = 0, max = 66) double latitude,
      @ForAll @IntRange(min = 1, max = 365) int day) {
    double both =
        new SolarDay(latitude, day).daylightHours() + new SolarDay(-latitude, day).daylightHours();
    assertThat(both).isCloseTo(24, within(1e-9));
    assertThat(new SolarDay(0, day).daylightHours()).isCloseTo(12, within(1e-9));
  }

  @Property
  void groundGetsAQuarterToThreeQuarters(
      @ForAll @DoubleRange(min = -90, max = 90) double latitude,
      @ForAll @IntRange(min = 1, max = 366) int day,
      @ForAll @DoubleRange(min = 0, max = 1) double sunshine) {
    SolarDay sun = new SolarDay(latitude, day);
    assertThat(sun.extraterrestrial()).isNotNegative();
    assertThat(sun.atGround(sunshine))
        .isBetween(0.25 * sun.extraterrestrial(), 0.75 * sun.extraterrestrial() + 1e-12);
  }

  @Test
  void refusesALatitudeBeyondThePoles() {
    assertThatThrownBy(() -> new SolarDay(91, 1))
        .hasMessage("latitude runs from -90 to 90, not 91.0");
    assertThatThrownBy(() -> new SolarDay(0, 367)).hasMessageContaining("367");
  }
}
