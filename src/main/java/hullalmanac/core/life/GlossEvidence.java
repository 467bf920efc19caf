package hullalmanac.core.life;

import java.util.List;

/**
 * What gloss says of a coat's life. Relative to the first reading G₀,
 *
 * <pre>
 *   ln(G/G₀) = ln(0.93) · min(D/L, 1.5) + δ + e,   δ ~ Normal(0, s₀²) shared by all readings,   e ~ Normal(0, s²)
 *   s² = 0.025² + (spread/√n/G)²,  s = 0.035 for a single reading
 * </pre>
 *
 * so that readings of one coat are one multivariate normal with Σij = s²i·1[i=j] + s₀². Each
 * reading has a chance of 0.05 to be wild. The shared δ is summed out on a grid. All constants are
 * common practice, no source.
 */
final class GlossEvidence {
  private static final double LOG_DROP = Math.log(LifePractice.GLOSS_AT_LAPSE);
  private static final double MOST_WEAR = 1.5;
  private static final double WILD = 0.05;
  private static final double WILD_SD = 0.30;
  private static final int DELTA_POINTS = 37;
  private static final double DELTA_STEP = 12.0 / (DELTA_POINTS - 1);

  private GlossEvidence() {}

  /**
   * One gloss finding after the first.
   *
   * @param logRatio ln(G/G₀)
   * @param dose since the first reading
   * @param sd of the logarithm of its mean
   */
  record Reading(double logRatio, double dose, double sd) {}

  /** Standard deviation of the logarithm of a mean of readings. */
  static double sd(double mean, int readings, double spread) {
    return readings == 1 ? 0.035 : Math.hypot(0.025, spread / Math.sqrt(readings) / mean);
  }

  /** Likelihood of the readings for a life, up to a factor that does not depend on it. */
  static double likelihood(List<Reading> readings, double firstSd, double life) {
    double[] product = new double[DELTA_POINTS];
    addBell(product, 1, 0, DELTA_STEP);
    for (Reading r : readings) {
      double e = r.logRatio() - LOG_DROP * Math.min(r.dose() / life, MOST_WEAR);
      double[] density = new double[DELTA_POINTS];
      addBell(density, (1 - WILD) / r.sd(), e / r.sd(), DELTA_STEP * firstSd / r.sd());
      addBell(density, WILD / WILD_SD, e / WILD_SD, DELTA_STEP * firstSd / WILD_SD);
      for (int k = 0; k < DELTA_POINTS; k++) {
        product[k] *= density[k];
      }
    }
    double sum = 0;
    for (double p : product) {
      sum += p;
    }
    return sum;
  }

  /**
   * Adds weight × exp(−u²/2) along the grid of δ, u = {@code middle} at its middle and falling by
   * {@code step} a point: by its recurrence, outward from where it is highest.
   */
  private static void addBell(double[] sums, double weight, double middle, double step) {
    int half = DELTA_POINTS / 2;
    int peak = (int) Math.max(0, Math.min(DELTA_POINTS - 1, Math.rint(half + middle / step)));
    double u = middle - (peak - half) * step;
    double top = weight * Math.exp(-0.5 * u * u);
    double ratioOfRatios = Math.exp(-step * step);
    double up = Math.exp(u * step - 0.5 * step * step);
    double down = ratioOfRatios / up;
    double value = top;
    for (int k = peak; k < DELTA_POINTS; k++) {
      sums[k] += value;
      value *= up;
      up *= ratioOfRatios;
    }
    value = top * down;
    for (int k = peak - 1; k >= 0; k--) {
      down *= ratioOfRatios;
      sums[k] += value;
      value *= down;
    }
  }
}
