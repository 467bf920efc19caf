package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ClimbTest {
  /** A slanting ridge; every value within the depth must be there, exactly. */
  @Property(tries = 200)
  void leavesOutOnlyWhatDoesNotCount(
      @ForAll @DoubleRange(min = 2, max = 60) double row,
      @ForAll @DoubleRange(min = 2, max = 30) double column,
      @ForAll @DoubleRange(min = 1, max = 20) double width) {
    Climb.Height ridge =
        (i, j) -> {
          double along = (i - row + j - column) / (4 * width);
          double across = (i - row - j + column) / width;
          return -0.5 * (along * along + across * across);
        };
    double[] values = Climb.over(65, 33, ridge);
    double whole = 0;
    double kept = 0;
    for (int i = 0; i < 65; i++) {
      for (int j = 0; j < 33; j++) {
        double value = values[i * 33 + j];
        whole += Math.exp(ridge.at(i, j));
        if (value != Double.NEGATIVE_INFINITY) {
          assertThat(value).isEqualTo(ridge.at(i, j));
          kept += Math.exp(value);
        }
      }
    }
    assertThat(kept / whole).isGreaterThan(1 - 1e-10);
  }
}
