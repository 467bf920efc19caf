package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.fixture.Boatyard;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProductLifeTest {
  private static double[] momentsOfMu(ProductLife life) {
    double mean = 0;
    double square = 0;
    for (int i = 0; i < life.muPoints(); i++) {
      for (int j = 0; j < life.sigmaPoints(); j++) {
        mean += life.weight(i, j) * life.mu(i);
        square += life.weight(i, j) * life.mu(i) * life.mu(i);
      }
    }
    return new double[] {mean, Math.sqrt(square - mean * mean)};
  }

  private static double normal(double x, double mean, double sd) {
    return -0.5 * Math.pow((x - mean) / sd, 2);
  }

  /** Prior N(6, 0.4²), data 6.3, 6.1, 6.5 with sd 0.3; computed apart with R 4.2.2. */
  @Test
  void learnsAsTheNormalLawDoes() {
    ProductLife after =
        ProductLife.of(
            6, (mu, sigma) -> normal(6.3, mu, 0.3) + normal(6.1, mu, 0.3) + normal(6.5, mu, 0.3));
    assertThat(momentsOfMu(after)[0]).isCloseTo(6.2526315789, within(1e-9));
    assertThat(momentsOfMu(after)[1]).isCloseTo(0.1589438828, within(1e-9));
  }

  @Test
  void reachesFourDeviationsOnSixtyFiveByThirtyThreePoints() {
    ProductLife prior = ProductLife.prior(5);
    assertThat(prior.muPoints()).isEqualTo(65);
    assertThat(prior.sigmaPoints()).isEqualTo(33);
    assertThat(prior.mu(0)).isCloseTo(5 - 1.6, within(1e-12));
    assertThat(prior.mu(64)).isCloseTo(5 + 1.6, within(1e-12));
    assertThat(Math.log(prior.sigma(0))).isCloseTo(Math.log(0.35) - 1.6, within(1e-12));
    assertThat(Math.log(prior.sigma(32))).isCloseTo(Math.log(0.35) + 1.6, within(1e-12));
    assertThat(prior.edgeMass()).isLessThan(1e-4);
  }

  /** Coats that last e² times what was expected: prior N(5, 0.4²), one datum at 7 with sd 0.1. */
  @Test
  void widensItsGridWhenTheWeightComesToItsEdge() {
    ProductLife after = ProductLife.of(5, (mu, sigma) -> normal(7, mu, 0.1));
    double precision = 1 / 0.16 + 1 / 0.01;
    assertThat(after.muPoints()).isGreaterThan(65);
    assertThat(after.edgeMass()).isLessThan(1e-4);
    assertThat(momentsOfMu(after)[0]).isCloseTo((5 / 0.16 + 7 / 0.01) / precision, within(1e-4));
  }

  @Test
  void refusesToClipWhatNoGridHolds() {
    assertThatThrownBy(() -> ProductLife.of(5, (mu, sigma) -> 1e6 * mu))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("16 standard deviations");
  }

  /**
   * μ sums out in closed form and ln σ by a fine sum: F(x) = ∫ φ(y) Φ((x − m)/√(0.40² + σ(y)² +
   * 0.10²)) dy with σ(y) = 0.35 exp(0.40 y).
   */
  static double predictive(double x, double mean, double clockSd) {
    NormalDistribution phi = NormalDistribution.of(0, 1);
    double sum = 0;
    double weight = 0;
    for (double y = -6; y <= 6; y += 0.01) {
      double sigma = 0.35 * Math.exp(0.40 * y);
      double sd = Math.sqrt(0.16 + sigma * sigma + clockSd * clockSd);
      sum += phi.density(y) * phi.cumulativeProbability((x - mean) / sd);
      weight += phi.density(y);
    }
    return sum / weight;
  }

  @ParameterizedTest
  @CsvSource({"0.10, 0.10", "0.30, 0.10", "0.50, 0.10", "0.90, 0.10", "0.30, 0.15"})
  void predictsAsACloserSumDoes(double p, double clockSd) {
    LifeChances chances = ProductLife.prior(5).predictive(ProductLife.Spread.overall(clockSd));
    assertThat(predictive(Math.log(chances.quantile(p)), 5, clockSd)).isCloseTo(p, within(1e-3));
  }

  /** Months of a label less its flattery, or practice where there is none. */
  @ParameterizedTest
  @CsvSource({
    "POLYMER_SEALANT, 6, 4.912385",
    "CARNAUBA, 3, 2.456192",
    "SILICA_COATING, 24, 16.087681",
    "SILICA_SPRAY, 6, 4.021920",
    "CLEANER_WAX, , 1.5",
    "CARNAUBA, , 2.5",
    "SPRAY_SEALANT, , 1.5",
    "SILICA_SPRAY, , 3",
    "POLYMER_SEALANT, , 5",
    "SILICA_COATING, , 18",
    "SILICA_COATING_THIN, , 12"
  })
  void takesLabelsForFlatter(ProductKind kind, Double label, double months) {
    Product product = new Boatyard().product(kind, label);
    assertThat(LifePractice.STANDARD.expectedMonths(product)).isCloseTo(months, within(1e-6));
    assertThat(momentsOfMu(ProductLife.prior(product, LifePractice.STANDARD))[0])
        .isCloseTo(Math.log(30.44 * months), within(1e-6));
  }
}
