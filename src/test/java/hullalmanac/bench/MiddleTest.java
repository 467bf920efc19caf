package hullalmanac.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MiddleTest {
  private static double[] upTo(int n) {
    return IntStream.rangeClosed(1, n).asDoubleStream().toArray();
  }

  /** By hand: of 15 tosses of a coin, (1 + 15 + 105 + 455) of 2¹⁵ ways show 3 heads or fewer. */
  @Test
  void takesTheFourthAndTheTwelfthOfFifteen() {
    Middle middle = Middle.of(upTo(15));
    assertThat(middle.low()).isEqualTo(4);
    assertThat(middle.median()).isEqualTo(8);
    assertThat(middle.high()).isEqualTo(12);
    assertThat(middle.coverage()).isCloseTo(1 - 2 * 576 / 32768.0, within(1e-12));
  }

  /** By hand: of 6 tosses one way of 2⁶ shows no head, so the outermost are 31 in 32. */
  @Test
  void takesTheOutermostOfSixAndRefusesFive() {
    assertThat(Middle.of(6, 1, 2, 5, 3, 4)).isEqualTo(new Middle(1, 3.5, 6, 31 / 32.0));
    assertThatThrownBy(() -> Middle.of(upTo(5))).isInstanceOf(IllegalArgumentException.class);
  }

  /** Of many samples whose median is known, as many intervals hold it as shall. */
  @Test
  void holdsTheTrueMedianAsOftenAsItSays() {
    Random random = new Random(11);
    int samples = 20_000;
    long held =
        IntStream.range(0, samples)
            .mapToObj(
                i ->
                    Middle.of(
                        DoubleStream.generate(() -> -Math.log(random.nextDouble()))
                            .limit(15)
                            .toArray()))
            .filter(m -> m.low() <= Math.log(2) && Math.log(2) <= m.high())
            .count();
    // Four standard errors of a share of 0.965 in 20,000 samples.
    assertThat((double) held / samples).isCloseTo(0.9648, within(4 * 0.0013));
  }
}
