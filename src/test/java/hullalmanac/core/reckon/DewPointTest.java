package hullalmanac.core.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.reference.Reference;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DewPointTest {
  static Stream<List<String>> table() {
    return Reference.read(DewPointTest.class, "dew-point.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("table")
  void agreesWithItsSourceAndWithPhysics(List<String> row) {
    double dew = DewPoint.of(Double.parseDouble(row.get(0)), Double.parseDouble(row.get(1)));
    assertThat(dew).isCloseTo(Double.parseDouble(row.get(2)), within(1e-6));
    assertThat(dew).isCloseTo(Double.parseDouble(row.get(3)), within(0.04));
  }

  /**
   * Alduchov and Eskridge 1996, inverted: 25 °C with a dew point of 15 °C (computed with R 4.2.2).
   */
  @Test
  void givesTheHumidityBack() {
    assertThat(DewPoint.humidity(25, 15)).isCloseTo(53.830642, within(1e-6));
    assertThat(DewPoint.of(17, 100)).isCloseTo(17, within(1e-12));
  }

  /** The 3 °C margin of coating guides; rows computed with R 4.2.2. */
  @ParameterizedTest
  @CsvSource({
    "20, 50, 12.3, 3.038893, true",
    "20, 50, 12.2, 2.938893, false",
    "25, 60, 19.7, 3.002336, true",
    "25, 60, 19.6, 2.902336, false",
    "15, 85, 15.6, 3.101728, true",
    "15, 85, 15.4, 2.901728, false"
  })
  void keepsThreeDegreesOverTheDewPoint(
      double air, double humidity, double surface, double margin, boolean dry) {
    assertThat(DewPoint.margin(air, humidity, surface)).isCloseTo(margin, within(1e-6));
    assertThat(DewPoint.dryEnough(DewPoint.margin(air, humidity, surface))).isEqualTo(dry);
  }

  @Test
  void refusesImpossibleAir() {
    assertThatThrownBy(() -> DewPoint.of(20, 0)).hasMessageContaining("relative humidity");
    assertThatThrownBy(() -> DewPoint.of(20, 101)).hasMessageContaining("101");
    assertThatThrownBy(() -> DewPoint.of(99, 50)).hasMessageContaining("-40 to 60");
  }
}
