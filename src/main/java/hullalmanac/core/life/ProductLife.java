package hullalmanac.core.life;

import hullalmanac.core.record.Product;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is known of the lives of a product's coats:
 *
 * <pre>
 *   ln L ~ Normal(μ, σ²)
 *   μ    ~ Normal(ln(30.44 × label months) + offset, 0.40²)      ln σ ~ Normal(ln 0.35, 0.40²)
 * </pre>
 *
 * on a grid of 65 × 33 points reaching four prior standard deviations either way, by exact sums.
 * What coats teach is a logarithm of likelihood at each point; without any, this is the prior. When
 * an edge of the grid carries more than 1e-4 of the weight, the grid is widened by a standard
 * deviation at a time, its steps unchanged.
 *
 * <p>A coat that has itself taught is predicted by what the others taught: its own lesson is taken
 * out again, exactly, so that nothing it showed counts twice.
 *
 * <p>Not for use by several threads at once.
 */
final class ProductLife {
  /** Most of the weight that any one edge of the grid may carry. */
  static final double EDGE_MASS = 1e-4;

  private static final double LEAST_WEIGHT = 1e-14;
  private static final int REACH = 4;
  private static final int WIDEST_REACH = 16;
  private static final int MU_STEPS_AN_SD = 8;
  private static final int SIGMA_STEPS_AN_SD = 4;

  private final double muMean;
  private final int reach;
  private final double[] weights;
  private final Map<Double, LogLife.Row[]> rows = new HashMap<>();

  private ProductLife(double muMean, int reach, double[] weights) {
    this.muMean = muMean;
    this.reach = reach;
    this.weights = weights;
  }

  /** ln of the likelihood of what coats have shown, for lives Normal(μ, σ²) in ln L. */
  interface Taught {
    double log(double mu, double sigma);
  }

  /** What the label, or practice where there is none, says before any coat was seen. */
  static ProductLife prior(Product product) {
    return taught(product, List.of());
  }

  /** A prior centred on a value of μ. */
  static ProductLife prior(double muMean) {
    return of(muMean, (mu, sigma) -> 0);
  }

  /**
   * What is known after coats have taught.
   *
   * @param muMean mean of μ before
   * @throws IllegalStateException when no grid of a sensible width holds the weight
   */
  static ProductLife of(double muMean, Taught taught) {
    for (int reach = REACH; reach <= WIDEST_REACH; reach++) {
      ProductLife life = on(muMean, reach, taught);
      if (life.edgeMass() < EDGE_MASS) {
        return life;
      }
    }
    throw new IllegalStateException(
        "lives lie over " + WIDEST_REACH + " standard deviations from what was expected");
  }

  /** What is known of a product's lives after coats have taught. */
  static ProductLife taught(Product product, List<Lesson> lessons) {
    double muMean = Math.log(LifePractice.DAYS_A_MONTH * LifePractice.expectedMonths(product));
    return of(muMean, Lesson.all(lessons));
  }

  private static ProductLife on(double muMean, int reach, Taught taught) {
    ProductLife grid = new ProductLife(muMean, reach, new double[0]);
    double[] log =
        Climb.over(
            grid.muPoints(),
            grid.sigmaPoints(),
            (i, j) -> {
              double z = (double) i / MU_STEPS_AN_SD - reach;
              double y = (double) j / SIGMA_STEPS_AN_SD - reach;
              return -0.5 * (z * z + y * y) + taught.log(grid.mu(i), grid.sigma(j));
            });
    return new ProductLife(muMean, reach, normalised(log));
  }

  private static double[] normalised(double[] log) {
    double most = Arrays.stream(log).max().orElseThrow();
    double[] values = new double[log.length];
    double sum = 0;
    for (int i = 0; i < log.length; i++) {
      values[i] = Math.exp(log[i] - most);
      sum += values[i];
    }
    for (int i = 0; i < log.length; i++) {
      values[i] /= sum;
    }
    return values;
  }

  int muPoints() {
    return 2 * reach * MU_STEPS_AN_SD + 1;
  }

  int sigmaPoints() {
    return 2 * reach * SIGMA_STEPS_AN_SD + 1;
  }

  /** μ of a row of the grid. */
  double mu(int i) {
    return muMean + LifePractice.PRIOR_MU_SD * ((double) i / MU_STEPS_AN_SD - reach);
  }

  /** σ of a column of the grid. */
  double sigma(int j) {
    double y = (double) j / SIGMA_STEPS_AN_SD - reach;
    return Math.exp(LifePractice.PRIOR_LN_SIGMA_MEAN + LifePractice.PRIOR_LN_SIGMA_SD * y);
  }

  /** Weight of a point; all add up to 1. */
  double weight(int i, int j) {
    return weights[i * sigmaPoints() + j];
  }

  /** The most weight that any one of the four edges of the grid carries. */
  double edgeMass() {
    double[] edges = new double[4];
    for (int i = 0; i < muPoints(); i++) {
      edges[0] += weight(i, 0);
      edges[1] += weight(i, sigmaPoints() - 1);
    }
    for (int j = 0; j < sigmaPoints(); j++) {
      edges[2] += weight(0, j);
      edges[3] += weight(muPoints() - 1, j);
    }
    return Arrays.stream(edges).max().orElseThrow();
  }

  /**
   * Chances of the life of one more coat over the cells of {@link LogLife}.
   *
   * @param clockSd further standard deviation in ln L for what the exposure clock cannot know
   */
  LifeChances predictive(double clockSd) {
    return average(weights, clockSd);
  }

  /** The same for a coat that has itself taught {@code own}: by what the others taught. */
  LifeChances predictiveWithout(Lesson own, double clockSd) {
    double[] log = new double[weights.length];
    for (int point = 0; point < weights.length; point++) {
      log[point] =
          weights[point] > LEAST_WEIGHT
              ? Math.log(weights[point]) - own.log(row(point, 0))
              : Double.NEGATIVE_INFINITY;
    }
    return average(normalised(log), clockSd);
  }

  private LifeChances average(double[] of, double clockSd) {
    double[] chances = new double[LogLife.POINTS];
    for (int point = 0; point < of.length; point++) {
      if (of[point] > LEAST_WEIGHT) {
        row(point, clockSd).addTo(chances, of[point]);
      }
    }
    return LifeChances.of(chances);
  }

  private LogLife.Row row(int point, double clockSd) {
    LogLife.Row[] ofSd =
        rows.computeIfAbsent(clockSd, sd -> new LogLife.Row[muPoints() * sigmaPoints()]);
    if (ofSd[point] == null) {
      double sigma = sigma(point % sigmaPoints());
      ofSd[point] = LogLife.normal(mu(point / sigmaPoints()), Math.hypot(sigma, clockSd));
    }
    return ofSd[point];
  }
}
