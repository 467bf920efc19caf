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
  private final Map<Spread, LogLife.Row[]> rows = new HashMap<>();

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
  static ProductLife prior(Product product, LifePractice practice) {
    return taught(practice.expectedMonths(product), List.of());
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

  /**
   * What is known of a product's lives after coats have taught.
   *
   * @param expectedMonths what was expected of it before
   */
  static ProductLife taught(double expectedMonths, List<Lesson> lessons) {
    return of(Math.log(LifePractice.DAYS_A_MONTH * expectedMonths), Lesson.all(lessons));
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

  /** Posterior mean of σ. */
  double meanSigma() {
    double mean = 0;
    for (int point = 0; point < weights.length; point++) {
      mean += weights[point] * sigma(point % sigmaPoints());
    }
    return mean;
  }

  /**
   * How one more coat is to be predicted.
   *
   * @param sdShare share of σ that is left: 1, or less on a boat whose effect is taken apart
   * @param clockSd further standard deviation in ln L for what the exposure clock cannot know
   */
  record Spread(double sdShare, double clockSd) {
    /** Over all boats. */
    static Spread overall(double clockSd) {
      return new Spread(1, clockSd);
    }

    private double sd(double sigma) {
      return Math.hypot(sdShare * sigma, clockSd);
    }
  }

  /** Chances of the life of one more coat over the cells of {@link LogLife}. */
  LifeChances predictive(Spread spread) {
    return average(weights, spread);
  }

  /** The same for a coat that has itself taught {@code own}: by what the others taught. */
  LifeChances predictiveWithout(Lesson own, Spread spread) {
    double[] log = new double[weights.length];
    for (int point = 0; point < weights.length; point++) {
      log[point] =
          weights[point] > LEAST_WEIGHT
              ? Math.log(weights[point]) - own.log(row(point, Spread.overall(0)))
              : Double.NEGATIVE_INFINITY;
    }
    return average(normalised(log), spread);
  }

  private LifeChances average(double[] of, Spread spread) {
    double[] chances = new double[LogLife.POINTS];
    for (int point = 0; point < of.length; point++) {
      if (of[point] > LEAST_WEIGHT) {
        row(point, spread).addTo(chances, of[point]);
      }
    }
    return LifeChances.of(chances);
  }

  private LogLife.Row row(int point, Spread spread) {
    LogLife.Row[] ofSpread =
        rows.computeIfAbsent(spread, s -> new LogLife.Row[muPoints() * sigmaPoints()]);
    if (ofSpread[point] == null) {
      double sigma = sigma(point % sigmaPoints());
      ofSpread[point] = LogLife.normal(mu(point / sigmaPoints()), spread.sd(sigma));
    }
    return ofSpread[point];
  }
}
