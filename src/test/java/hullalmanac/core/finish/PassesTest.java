package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PassesTest {
  /** By hand, for q 0.5: a first pass leaves 1/2, a second 3/4 of that, a third 7/8 of that. */
  @Test
  void aSecondPassClosesHalfOfWhatTheFirstWould() {
    double half = Math.log(0.5);
    assertThat(new Passes(0, 1).left(half)).isCloseTo(0.5, within(1e-15));
    assertThat(new Passes(0, 2).left(half)).isCloseTo(0.375, within(1e-15));
    assertThat(new Passes(0, 3).left(half)).isCloseTo(0.328125, within(1e-15));
    assertThat(new Passes(1, 1).left(half)).isCloseTo(0.75, within(1e-15));
  }

  @Property(tries = 200)
  void itsSlopeIsTheDifferenceOfTwoNeighbours(
      @ForAll @DoubleRange(min = -3, max = -0.01) double lnQ,
      @ForAll @IntRange(min = 0, max = 2) int first,
      @ForAll @IntRange(min = 1, max = 4) int passes) {
    Passes p = new Passes(first, passes);
    double h = 1e-6;
    double numeric = (p.left(lnQ + h) - p.left(lnQ - h)) / (2 * h);
    assertThat(p.slope(lnQ)).isCloseTo(numeric, within(1e-7));
  }
}
