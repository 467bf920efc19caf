package hullalmanac.core.life;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * How much longer or shorter than elsewhere coats live on one boat, b in ln L, whatever the cause:
 *
 * <pre>
 *   ln L | b ~ Normal(μ + b, (1 − ρ) σ²)      b ~ Normal(0, ρ σ²)      ρ learned
 * </pre>
 *
 * so that over all boats ln L ~ Normal(μ, σ²) still. A coat is predicted by what the boat's other
 * coats say of b. On a grid of b whose points are whole cells of {@link LogLife} apart; exact sums.
 */
final class BoatEffect {
  private static final int CELLS_APART = 5;
  private static final int POINTS_EACH_WAY = 12;
  private static final int POINTS = 2 * POINTS_EACH_WAY + 1;

  private final double share;
  private final Map<Id<Coat>, double[]> logs = new HashMap<>();
  private final double[] sum = new double[POINTS];

  /**
   * @param share ρ
   */
  BoatEffect(double share) {
    this.share = share;
  }

  /**
   * What a coat says of b: ln of how likely it is at each point of the grid; for a coat met in
   * service, given that it lived until then, since a shorter life would not have been met.
   *
   * @param such chances of the life of such a coat on a boat like most
   */
  static double[] says(LifeChances such, Evidence evidence) {
    double[] log = logExpected(such, evidence.logLikelihood());
    if (evidence.metAt().isPresent()) {
      LogLikelihood met = new LogLikelihood();
      met.addSurvived(evidence.metAt().get());
      double[] survived = logExpected(such, met);
      for (int k = 0; k < POINTS; k++) {
        log[k] -= survived[k];
      }
    }
    return log;
  }

  private static double[] logExpected(LifeChances such, LogLikelihood evidence) {
    double[] log = new double[POINTS];
    for (int k = 0; k < POINTS; k++) {
      log[k] = Math.log(Math.max(such.expected(evidence, cells(k)), Double.MIN_NORMAL));
    }
    return log;
  }

  /** Adds what a coat says. */
  void add(Coat coat, double[] says) {
    for (int k = 0; k < POINTS; k++) {
      sum[k] += says[k];
    }
    logs.put(coat.id(), says);
  }

  /** Whether any other coat of the boat says something. */
  boolean knowsBesides(Coat coat) {
    return logs.size() > (logs.containsKey(coat.id()) ? 1 : 0);
  }

  /**
   * Chances of the life of a coat of this boat.
   *
   * @param such chances of the life of such a coat on a boat like most
   * @param sigma spread of such lives in ln L over all boats
   */
  LifeChances on(Coat coat, LifeChances such, double sigma) {
    double[] weights = without(coat, sigma);
    double[] chances = new double[LogLife.POINTS];
    for (int k = 0; k < POINTS; k++) {
      such.addTo(chances, weights[k], cells(k));
    }
    return LifeChances.of(chances);
  }

  /** Mean of b as the boat's other coats have it. */
  double meanBesides(Coat coat, double sigma) {
    double[] weights = without(coat, sigma);
    double mean = 0;
    for (int k = 0; k < POINTS; k++) {
      mean += weights[k] * cells(k) * LogLife.STEP;
    }
    return mean;
  }

  /** ln of how likely all that the boat's coats showed is, summed over b. */
  double logMarginal(double sigma) {
    double[] prior = logPrior(sigma);
    double most = Arrays.stream(sum).max().orElseThrow();
    double whole = 0;
    double priors = 0;
    for (int k = 0; k < POINTS; k++) {
      whole += Math.exp(sum[k] - most + prior[k]);
      priors += Math.exp(prior[k]);
    }
    return most + Math.log(whole / priors);
  }

  private double[] without(Coat coat, double sigma) {
    double[] own = logs.getOrDefault(coat.id(), new double[POINTS]);
    double[] weights = logPrior(sigma);
    for (int k = 0; k < POINTS; k++) {
      weights[k] += sum[k] - own[k];
    }
    double most = Arrays.stream(weights).max().orElseThrow();
    double all = 0;
    for (int k = 0; k < POINTS; k++) {
      weights[k] = Math.exp(weights[k] - most);
      all += weights[k];
    }
    for (int k = 0; k < POINTS; k++) {
      weights[k] /= all;
    }
    return weights;
  }

  private double[] logPrior(double sigma) {
    double[] log = new double[POINTS];
    for (int k = 0; k < POINTS; k++) {
      double z = cells(k) * LogLife.STEP / sigma;
      log[k] = -0.5 * z * z / share;
    }
    return log;
  }

  private static int cells(int k) {
    return (k - POINTS_EACH_WAY) * CELLS_APART;
  }
}
