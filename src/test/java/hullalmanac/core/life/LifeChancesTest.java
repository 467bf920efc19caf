package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Made;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class LifeChancesTest {
  private static LifeChances normal(double mean, double sd) {
    double[] chances = new double[LogLife.POINTS];
    LogLife.normal(mean, sd).addTo(chances, 1);
    return LifeChances.of(chances);
  }

  private static double mean(LifeChances c) {
    double mean = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      mean += c.at(i) * LogLife.at(i);
    }
    return mean;
  }

  private static double sd(LifeChances c) {
    double mean = mean(c);
    double sum = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      sum += c.at(i) * Math.pow(LogLife.at(i) - mean, 2);
    }
    return Math.sqrt(sum);
  }

  /**
   * Conjugate normal on log life: prior N(6, 0.4²), data 6.3, 6.1, 6.5 with sd 0.3 give mean
   * 6.2526315789, sd 0.1589438828 (computed apart with R 4.2.2). The grid's step of 0.02 allows
   * 1e-3.
   */
  @Test
  void agreesWithTheNormalNormalHandReckoning() {
    LogLikelihood data = new LogLikelihood();
    for (double x : new double[] {6.3, 6.1, 6.5}) {
      data.add(l -> Math.exp(-0.5 * Math.pow((x - l) / 0.3, 2)));
    }
    LifeChances posterior = normal(6, 0.4).times(data);
    assertThat(mean(posterior)).isCloseTo(6.2526315789, within(1e-3));
    assertThat(sd(posterior)).isCloseTo(0.1589438828, within(1e-3));
  }

  /**
   * Quantiles of the normal distribution by commons-statistics, a general-purpose reference
   * library.
   */
  @Test
  void quantileIsTheInverseOfLapsed() {
    LifeChances c = normal(5.5, 0.35);
    NormalDistribution reference = NormalDistribution.of(5.5, 0.35);
    for (double p : new double[] {0.1, 0.3, 0.5, 0.9}) {
      double dose = c.quantile(p);
      assertThat(c.lapsed(dose)).isCloseTo(p, within(1e-9));
      assertThat(Math.log(dose)).isCloseTo(reference.inverseCumulativeProbability(p), within(2e-3));
    }
    assertThat(c.lapsed(0)).isZero();
  }

  @Test
  void tailsGoToTheEndCells() {
    LifeChances c = normal(LogLife.HIGHEST, 0.5);
    double sum = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      sum += c.at(i);
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
    assertThat(c.at(LogLife.POINTS - 1)).isGreaterThan(0.45);
  }

  /**
   * The prior predictive of ln L: mean of μ, variance 0.40² + E[σ²] + 0.10², where E[σ²] = 0.35²
   * exp(2 · 0.40²) for a log-normal σ (moments of the log-normal distribution).
   */
  @Test
  void priorPredictiveHasTheMomentsOfItsLaw() {
    Product p = new Made(48).product(ProductKind.POLYMER_SEALANT, Optional.of(12.0));
    LifeChances c =
        ProductLife.prior(p, LifePractice.STANDARD).predictive(ProductLife.Spread.overall(0.10));
    assertThat(mean(c)).isCloseTo(Math.log(30.44 * 12) - 0.20, within(2e-3));
    double variance = 0.40 * 0.40 + 0.35 * 0.35 * Math.exp(2 * 0.16) + 0.01;
    assertThat(sd(c)).isCloseTo(Math.sqrt(variance), within(5e-3));
  }

  @Test
  void gridsEdgeCarriesNextToNothing() {
    assertThat(ProductLife.prior(6).edgeMass()).isLessThan(5 * ProductLife.EDGE_MASS);
  }

  @Test
  void withoutALabelPracticeSpeaks() {
    Product p = new Made(48).product(ProductKind.CARNAUBA, Optional.empty());
    assertThat(
            mean(
                ProductLife.prior(p, LifePractice.STANDARD)
                    .predictive(ProductLife.Spread.overall(0.10))))
        .isCloseTo(Math.log(30.44 * 2.5), within(2e-3));
  }
}
