package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.reference.Reference;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SimpsonTest {
  private static double under(java.util.function.DoubleUnaryOperator y, double h, int n) {
    return Simpson.area(
        h, IntStream.range(0, n).mapToDouble(i -> y.applyAsDouble(i * h)).boxed().toList());
  }

  @Test
  void reckonsTheWaterplaneOfTheTextbook() {
    List<Double> halves =
        Reference.read(SimpsonTest.class, "simpson.txt").rows().get(0).stream()
            .map(Double::valueOf)
            .toList();
    double bothSides = 2 * Simpson.area(20, halves);
    assertThat(bothSides).isCloseTo(1206.666667, within(5e-7));
    assertThat(bothSides).isCloseTo(1207, within(0.5));
  }

  /** Elementary integrals: x² over 0 to 6 is 72, x³ over 0 to 4 is 64. */
  @Test
  void isExactForCurvesUpToTheThirdPower() {
    assertThat(under(x -> x * x, 1, 7)).isCloseTo(72, within(1e-12));
    assertThat(under(x -> x * x * x, 1, 5)).isCloseTo(64, within(1e-12));
  }

  /** Unit semicircle at 11 ordinates, computed apart with R 4.2.2: 1.55008698, against π/2. */
  @Test
  void fallsShortOnARoundEndAsItMust() {
    double area =
        Simpson.area(
            0.2,
            DoubleStream.iterate(-1, x -> x + 0.2)
                .limit(11)
                .map(x -> Math.sqrt(Math.max(0, 1 - x * x)))
                .boxed()
                .toList());
    assertThat(area).isCloseTo(1.55008698, within(1e-7));
  }

  @Test
  void refusesStationsItCannotReckonWith() {
    assertThatThrownBy(() -> Simpson.area(1, List.of(1.0, 2.0, 3.0, 4.0)))
        .hasMessage("Simpson's first rule takes an odd number of stations, at least 3, not 4");
    assertThatThrownBy(() -> Simpson.area(1, List.of(1.0))).hasMessageContaining("not 1");
    assertThatThrownBy(() -> Simpson.area(0, List.of(1.0, 2.0, 3.0)))
        .hasMessageContaining("some way apart");
    assertThatThrownBy(() -> Simpson.area(1, List.of(1.0, -2.0, 3.0)))
        .hasMessageContaining("not negative");
    assertThatThrownBy(() -> Simpson.area(1, List.of(1.0, Double.NaN, 3.0)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
