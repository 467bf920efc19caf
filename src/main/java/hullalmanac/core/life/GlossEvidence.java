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
  private static final double DELTA_REACH = 6;

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
    double sum = 0;
    for (int k = 0; k < DELTA_POINTS; k++) {
      double z = DELTA_REACH * (2.0 * k / (DELTA_POINTS - 1) - 1);
      double product = Math.exp(-0.5 * z * z);
      for (Reading r : readings) {
        double expected = LOG_DROP * Math.min(r.dose() / life, MOST_WEAR) + z * firstSd;
        double e = r.logRatio() - expected;
        product *= (1 - WILD) * density(e, r.sd()) + WILD * density(e, WILD_SD);
      }
      sum += product;
    }
    return sum;
  }

  private static double density(double e, double sd) {
    double z = e / sd;
    return Math.exp(-0.5 * z * z) / sd;
  }
}
