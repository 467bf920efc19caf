package hullalmanac.core.life;

import hullalmanac.core.record.Product;
import java.util.Arrays;

/**
 * What is known of the lives of a product's coats:
 *
 * <pre>
 *   ln L ~ Normal(μ, σ²)
 *   μ    ~ Normal(ln(30.44 × label months) + offset, 0.40²)      ln σ ~ Normal(ln 0.35, 0.40²)
 * </pre>
 *
 * on a grid of 65 × 33 points reaching four prior standard deviations either way, by exact sums.
 * What coats teach is added as a logarithm of likelihood at each point; without any, this is the
 * prior.
 */
final class ProductLife {
  static final int MU_POINTS = 65;
  static final int SIGMA_POINTS = 33;
  private static final double REACH = 4;

  /** Most of the mass that may lie on the grid's edge. */
  static final double EDGE_MASS = 1e-4;

  private final double muMean;
  private final double[] weights;

  private ProductLife(double muMean, double[] weights) {
    this.muMean = muMean;
    this.weights = weights;
  }

  /** What the label, or practice where there is none, says before any coat was seen. */
  static ProductLife prior(Product product) {
    return prior(Math.log(LifePractice.DAYS_A_MONTH * LifePractice.expectedMonths(product)));
  }

  /** A prior centred on a value of μ. */
  static ProductLife prior(double muMean) {
    double[] w = new double[MU_POINTS * SIGMA_POINTS];
    for (int i = 0; i < MU_POINTS; i++) {
      for (int j = 0; j < SIGMA_POINTS; j++) {
        double z = step(i, MU_POINTS);
        double y = step(j, SIGMA_POINTS);
        w[i * SIGMA_POINTS + j] = Math.exp(-0.5 * (z * z + y * y));
      }
    }
    return new ProductLife(muMean, normalised(w));
  }

  private static double[] normalised(double[] values) {
    double sum = Arrays.stream(values).sum();
    return Arrays.stream(values).map(v -> v / sum).toArray();
  }

  /** Standard deviations from the prior mean of a point of n. */
  private static double step(int point, int n) {
    return REACH * (2.0 * point / (n - 1) - 1);
  }

  /** μ of a row of the grid. */
  double mu(int i) {
    return muMean + LifePractice.PRIOR_MU_SD * step(i, MU_POINTS);
  }

  /** σ of a column of the grid. */
  static double sigma(int j) {
    return Math.exp(
        LifePractice.PRIOR_LN_SIGMA_MEAN + LifePractice.PRIOR_LN_SIGMA_SD * step(j, SIGMA_POINTS));
  }

  /** Weight of a point; all add up to 1. */
  double weight(int i, int j) {
    return weights[i * SIGMA_POINTS + j];
  }

  /** Share of the weight that lies on the edge of the grid. */
  double edgeMass() {
    double edge = 0;
    for (int i = 0; i < MU_POINTS; i++) {
      for (int j = 0; j < SIGMA_POINTS; j++) {
        if (i == 0 || j == 0 || i == MU_POINTS - 1 || j == SIGMA_POINTS - 1) {
          edge += weight(i, j);
        }
      }
    }
    return edge;
  }

  /**
   * Chances of the life of one more coat over the cells of {@link LogLife}.
   *
   * @param clockSd further standard deviation in ln L for what the exposure clock cannot know
   */
  LifeChances predictive(double clockSd) {
    double[] chances = new double[LogLife.POINTS];
    for (int i = 0; i < MU_POINTS; i++) {
      for (int j = 0; j < SIGMA_POINTS; j++) {
        double w = weight(i, j);
        if (w > 1e-12) {
          LogLife.addNormal(chances, mu(i), Math.hypot(sigma(j), clockSd), w);
        }
      }
    }
    return LifeChances.of(chances);
  }
}
