package hullalmanac.core.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.reference.Reference;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PsychrometerTest {
  static Stream<List<String>> table() {
    return Reference.read(PsychrometerTest.class, "psychrometer.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("table")
  void agreesWithAnIndependentComputation(List<String> row) {
    Psychrometer air =
        new Psychrometer(
            Double.parseDouble(row.get(0)), Double.parseDouble(row.get(1)), Psychrometer.SEA_LEVEL);
    assertThat(air.dewPoint()).isCloseTo(Double.parseDouble(row.get(2)), within(1e-6));
    assertThat(air.humidity()).isCloseTo(Double.parseDouble(row.get(3)), within(1e-6));
  }

  /** FAO-56, example 4: 25.6 and 19.5 °C at 87.9 kPa give 1.91 kPa; another vapour formula. */
  @Test
  void agreesWithExample4OfFao56() {
    assertThat(new Psychrometer(25.6, 19.5, 879).vapourPressure() / 10)
        .isCloseTo(1.91, within(0.01));
  }

  /** Two coefficient sets of the same quantity differ by less than printed tables resolve. */
  @Property
  void agreesWithTheDewPointOfItsHumidity(
      @ForAll @DoubleRange(min = 5, max = 40) double dry,
      @ForAll @DoubleRange(min = 0, max = 0.3) double drop) {
    Psychrometer air = new Psychrometer(dry, dry * (1 - drop), Psychrometer.SEA_LEVEL);
    assertThat(DewPoint.of(dry, air.humidity())).isCloseTo(air.dewPoint(), within(0.1));
  }

  @Test
  void saturatedAirHasItsOwnTemperatureAsDewPoint() {
    Psychrometer air = new Psychrometer(17, 17, Psychrometer.SEA_LEVEL);
    assertThat(air.dewPoint()).isCloseTo(17, within(1e-9));
    assertThat(air.humidity()).isCloseTo(100, within(1e-9));
  }

  @Test
  void refusesThermometersThatCannotBe() {
    assertThatThrownBy(() -> new Psychrometer(20, 21, 1013)).hasMessageContaining("not 21.0");
    assertThatThrownBy(() -> new Psychrometer(40, 2, 1013)).hasMessageContaining("drier than air");
    assertThatThrownBy(() -> new Psychrometer(20, 15, 101.3)).hasMessageContaining("hPa");
  }
}
