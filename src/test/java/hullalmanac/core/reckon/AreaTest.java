package hullalmanac.core.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas by rules of thumb and by Simpson's first rule. */
class AreaTest {
  /**
   * Barrass and Derrett, Ship Stability for Masters and Mates, chapter 10: a waterline of 120 m
   * with these half-ordinates has 1207 m² (both sides), to full precision 1206.666667.
   */
  @Test
  void agreesWithTheExampleOfBarrassAndDerrett() {
    double side = Simpson.area(20, List.of(0.0, 3.7, 5.9, 7.6, 7.5, 4.6, 0.1));
    assertThat(2 * side).isCloseTo(1206.666667, within(1e-6));
    assertThat(Math.round(2 * side)).isEqualTo(1207);
  }

  /** Exact up to the third degree: x² from 0 to 6 has 72, x³ from 0 to 4 has 64. */
  @Test
  void isExactForSquaresAndCubes() {
    List<Double> squares = new ArrayList<>();
    List<Double> cubes = new ArrayList<>();
    for (int x = 0; x <= 6; x++) {
      squares.add((double) x * x);
    }
    for (int x = 0; x <= 4; x++) {
      cubes.add((double) x * x * x);
    }
    assertThat(Simpson.area(1, squares)).isCloseTo(72, within(1e-12));
    assertThat(Simpson.area(1, cubes)).isCloseTo(64, within(1e-12));
  }

  /** Half a circle by 11 ordinates, reckoned beside this with another program: 1.55008698. */
  @Test
  void agreesWithAnIndependentReckoningOfACircle() {
    List<Double> circle = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      double x = -1 + 0.2 * i;
      circle.add(Math.sqrt(Math.max(0, 1 - x * x)));
    }
    assertThat(Simpson.area(0.2, circle)).isCloseTo(1.55008698, within(5e-9));
  }

  @Property
  void anAreaGrowsWithItsOrdinatesAndSpacing(
      @ForAll @DoubleRange(min = 0.1, max = 9) double height,
      @ForAll @DoubleRange(min = 0.1, max = 9) double spacing,
      @ForAll @IntRange(min = 1, max = 20) int pairs) {
    List<Double> level = new ArrayList<>();
    for (int i = 0; i <= 2 * pairs; i++) {
      level.add(height);
    }
    assertThat(Simpson.area(spacing, level))
        .isCloseTo(height * spacing * 2 * pairs, within(1e-9 * height * spacing * pairs));
  }

  @Test
  void needsAnOddNumberOfStations() {
    assertThatThrownBy(() -> Simpson.area(1, List.of(1.0, 2.0, 3.0, 4.0)))
        .hasMessageContaining("odd number of stations, at least 3, not 4");
    assertThatThrownBy(() -> Simpson.area(1, List.of(1.0))).hasMessageContaining("not 1");
    assertThatThrownBy(() -> Simpson.area(0, List.of(1.0, 1.0, 1.0))).hasMessageContaining("apart");
    assertThatThrownBy(() -> Simpson.area(1, List.of(1.0, -1.0, 1.0)))
        .hasMessageContaining("not under 0");
  }

  /**
   * Common practice, no source: worked by hand for LWL 8.5, B 3.0, D 0.6, LOA 9.5, F 1.1 m, where
   * LWL (B + D) is 30.6.
   */
  @ParameterizedTest
  @CsvSource({"MOTOR_BOAT, 26.01", "LONG_KEEL, 22.95", "FIN_KEEL, 15.30", "FULL, 30.60"})
  void rulesOfThumbComeOutAsByHand(HullArea.Form form, double bottom) {
    assertThat(HullArea.bottom(8.5, 3.0, 0.6, form.share())).isCloseTo(bottom, within(1e-9));
    assertThat(HullArea.topsides(9.5, 3.0, 1.1)).isCloseTo(27.50, within(1e-9));
    assertThat(HullArea.deck(9.5, 3.0)).isCloseTo(21.375, within(1e-9));
  }
}
