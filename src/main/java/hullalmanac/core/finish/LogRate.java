package hullalmanac.core.finish;

import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Something positive for a square metre, such as minutes or millilitres, whose logarithm is Normal
 * with unknown mean and variance:
 *
 * <pre>
 *   ln x ~ Normal(μ, σ²)      μ | σ² ~ Normal(m, σ²/κ)      σ² ~ InverseGamma(α, β)
 *   after n values with mean x̄ and S = Σ (x − x̄)²:
 *   κ' = κ + n    m' = (κ m + n x̄) / κ'    α' = α + n/2    β' = β + S/2 + κ n (x̄ − m)² / (2 κ')
 *   one more:  m + t(2α) · √(β (κ + 1) / (α κ))
 * </pre>
 *
 * <p>Source: Murphy, Conjugate Bayesian analysis of the Gaussian distribution, 2007, sections 3 and
 * 6 (from memory); checked against sums over μ and σ² made apart from the program (LogRateTest).
 *
 * @param mean m
 * @param worth κ, in observations
 * @param shape α
 * @param scale β
 */
record LogRate(double mean, double worth, double shape, double scale, Origin origin) {
  private static final double HIGH = 0.9;

  /** What is usual, before anything was learned. */
  static LogRate starter(double middle) {
    double variance = FinishPractice.RATE_SD * FinishPractice.RATE_SD;
    return new LogRate(
        Math.log(middle),
        FinishPractice.RATE_WORTH,
        FinishPractice.RATE_SHAPE,
        variance * (FinishPractice.RATE_SHAPE - 1),
        Origin.STARTER);
  }

  /**
   * What is known after values were seen.
   *
   * @param values each over 0
   * @param boats of how many boats they are
   */
  LogRate taught(List<Double> values, int boats) {
    int n = values.size();
    if (n == 0) {
      return this;
    }
    double xbar = values.stream().mapToDouble(Math::log).average().orElseThrow();
    double squares =
        values.stream().mapToDouble(v -> (Math.log(v) - xbar) * (Math.log(v) - xbar)).sum();
    double after = worth + n;
    double away = xbar - mean;
    return new LogRate(
        (worth * mean + n * xbar) / after,
        after,
        shape + n / 2.0,
        scale + squares / 2 + worth * n * away * away / (2 * after),
        new Origin(boats, false));
  }

  /** What one more will take. */
  Estimate next() {
    double t = TDistribution.of(2 * shape).inverseCumulativeProbability(HIGH);
    double reach = t * Math.sqrt(scale * (worth + 1) / (shape * worth));
    return new Estimate(Math.exp(mean - reach), Math.exp(mean), Math.exp(mean + reach), origin);
  }
}
