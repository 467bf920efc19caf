package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Chances on the grid of ln L, against laws whose answers are known. */
class LifeGridTest {
  /** Chances of a law from its distribution function of the life. */
  private static LifeChances law(DoubleUnaryOperator distribution) {
    double[] chances = new double[LogLife.POINTS];
    double below = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      double upTo =
          i == LogLife.POINTS - 1
              ? 1
              : distribution.applyAsDouble(Math.exp(LogLife.at(i) + LogLife.STEP / 2));
      chances[i] = upTo - below;
      below = upTo;
    }
    return LifeChances.of(chances);
  }

  /** The Weibull law fitted to the data of NIST/SEMATECH e-Handbook 8.4.1.2. */
  private static LifeChances weibull() {
    return law(life -> 1 - Math.exp(-Math.pow(life / 606.528, 1.7208)));
  }

  private static LogLikelihood survived(double dose) {
    LogLikelihood log = new LogLikelihood();
    log.addSurvived(dose);
    return log;
  }

  private static LifeChances normal(double mean, double sd) {
    double[] chances = new double[LogLife.POINTS];
    LogLife.normal(mean, sd).addTo(chances, 1);
    return LifeChances.of(chances);
  }

  private static double mean(LifeChances chances) {
    double mean = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      mean += chances.at(i) * LogLife.at(i);
    }
    return mean;
  }

  private static double sd(LifeChances chances) {
    double mean = mean(chances);
    double square = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      square += chances.at(i) * (LogLife.at(i) - mean) * (LogLife.at(i) - mean);
    }
    return Math.sqrt(square);
  }

  /** S(300) and, given alive at 300, S(500) and the median; computed apart with R 4.2.2. */
  @Test
  void knowsWhatIsLeftOfACoatMetInService() {
    assertThat(1 - weibull().lapsed(300)).isCloseTo(0.7424621293, within(2e-4));
    LifeChances met = weibull().times(survived(300));
    assertThat(met.lapsed(300)).isCloseTo(0, within(5e-3));
    assertThat(1 - met.lapsed(500)).isCloseTo(0.6574112058, within(5e-4));
    assertThat(met.quantile(0.5)).isCloseTo(603.325221, within(0.6));
  }

  /** Normal prior N(6, 0.4²), data 6.3, 6.1, 6.5 with sd 0.3; computed apart with R 4.2.2. */
  @Test
  void joinsPriorAndDataAsTheNormalLawDoes() {
    LogLikelihood data = new LogLikelihood();
    for (double seen : new double[] {6.3, 6.1, 6.5}) {
      data.add(x -> Math.exp(-0.5 * Math.pow((x - seen) / 0.3, 2)));
    }
    LifeChances after = normal(6, 0.4).times(data);
    assertThat(mean(after)).isCloseTo(6.2526315789, within(2e-4));
    assertThat(sd(after)).isCloseTo(0.1589438828, within(2e-4));
  }

  @Property
  void followsTheNormalLaw(
      @ForAll @DoubleRange(min = 3, max = 8) double mean,
      @ForAll @DoubleRange(min = 0.1, max = 0.8) double sd,
      @ForAll @DoubleRange(min = -2, max = 2) double z) {
    double life = Math.exp(mean + z * sd);
    assertThat(normal(mean, sd).lapsed(life))
        .isCloseTo(NormalDistribution.of(0, 1).cumulativeProbability(z), within(3e-3));
  }

  @Property
  void turnsChancesIntoDosesAndBack(
      @ForAll @DoubleRange(min = 3, max = 8) double mean,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double p) {
    LifeChances chances = normal(mean, 0.4);
    assertThat(chances.lapsed(chances.quantile(p))).isCloseTo(p, within(1e-9));
  }

  @Test
  void putsTheTailsIntoTheEndCells() {
    LifeChances low = normal(-1, 0.5);
    assertThat(low.at(0)).isGreaterThan(0.95);
    LifeChances high = normal(12, 0.5);
    assertThat(high.at(LogLife.POINTS - 1)).isGreaterThan(0.99);
    assertThat(high.lapsed(29_000)).isLessThan(0.01);
    assertThat(low.lapsed(0)).isZero();
    assertThat(low.lapsed(40_000)).isEqualTo(1);
  }

  @Test
  void coversOneToThirtyThousandInFiveHundredAndTwelvePoints() {
    assertThat(LogLife.POINTS).isEqualTo(512);
    assertThat(Math.exp(LogLife.at(0))).isCloseTo(1, within(1e-12));
    assertThat(Math.exp(LogLife.at(511))).isCloseTo(30_000, within(1e-6));
  }

  @Test
  void refusesChancesThatAreAllNothing() {
    assertThatThrownBy(() -> LifeChances.of(new double[LogLife.POINTS]))
        .hasMessage("evidence leaves no possible life");
  }

  /** A record that contradicts itself must not stop the forecast of the fleet. */
  @Test
  void keepsThePriorWhenACoatWasMetAfterAnyPossibleLife() {
    LifeChances prior = normal(5, 0.4);
    assertThat(prior.times(survived(1e6)).quantile(0.5))
        .isCloseTo(prior.quantile(0.5), within(1e-9));
  }

  /** The cells of a normal law against commons-statistics, cell by cell. */
  @Property(tries = 200)
  void normalLawMatchesItsDistributionFunction(
      @ForAll @DoubleRange(min = -2, max = 13) double mean,
      @ForAll @DoubleRange(min = 0.03, max = 3) double sd) {
    double[] chances = new double[LogLife.POINTS];
    LogLife.normal(mean, sd).addTo(chances, 1);
    NormalDistribution law = NormalDistribution.of(mean, sd);
    double below = 0;
    double all = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      double upTo =
          i == LogLife.POINTS - 1 ? 1 : law.cumulativeProbability(LogLife.at(i) + LogLife.STEP / 2);
      assertThat(chances[i]).isCloseTo(upTo - below, within(1e-8));
      all += chances[i];
      below = upTo;
    }
    assertThat(all).isCloseTo(1, within(1e-7));
  }
}
