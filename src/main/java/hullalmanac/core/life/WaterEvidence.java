package hullalmanac.core.life;

import java.util.Arrays;

/**
 * What one look at water, by eye or by finger says of a coat's life:
 *
 * <pre>
 *   good at dose D:  p = ε + (1 − 2ε) · logistic((ln L − ln D) / 0.08)
 *   bare at dose D:  1 − p
 *   complaint:       ε + (1 − 2ε) · [logistic((ln D − ln L) / 0.08) − logistic((ln a − ln L) / 0.08)],  a = max(last good look, D − 30)
 * </pre>
 *
 * where ε is the chance that the look misleads (common practice, no source). A complaint comes soon
 * after the end of a coat, so it is read as an interval; read as a plain state it would halve the
 * lives.
 */
final class WaterEvidence {
  private static final double STEP_ODDS = Math.exp(-LogLife.STEP / LifePractice.WATER_SHARPNESS);
  private static final double[] ONES = ones();

  private WaterEvidence() {}

  private static double[] ones() {
    double[] ones = new double[LogLife.POINTS];
    Arrays.fill(ones, 1);
    return ones;
  }

  /** Likelihood of a look that found the coat alive, at the points of {@link LogLife}. */
  static double[] goodAtPoints(double dose, double misled) {
    double[] values = logisticAtPoints(dose);
    for (int i = 0; i < values.length; i++) {
      values[i] = misled + (1 - 2 * misled) * values[i];
    }
    return values;
  }

  /** Likelihood of a look that found the coat gone, at the points of {@link LogLife}. */
  static double[] bareAtPoints(double dose, double misled) {
    return goodAtPoints(dose, 1 - misled);
  }

  /**
   * Likelihood of a complaint, at the points of {@link LogLife}.
   *
   * @param lastGood dose at the last good look, 0 when there was none
   */
  static double[] complaintAtPoints(double dose, double lastGood, double misled) {
    double reach = Math.max(lastGood, dose - LifePractice.COMPLAINT_REACH);
    double[] byNow = logisticAtPoints(dose);
    double[] values = reach > 0 ? logisticAtPoints(reach) : ONES.clone();
    for (int i = 0; i < values.length; i++) {
      values[i] = misled + (1 - 2 * misled) * Math.max(0, values[i] - byNow[i]);
    }
    return values;
  }

  /** logistic((ln L − ln dose) / 0.08), the exponential by its recurrence from point to point. */
  private static double[] logisticAtPoints(double dose) {
    double[] values = new double[LogLife.POINTS];
    double odds = Math.exp((Math.log(dose) - LogLife.LOWEST) / LifePractice.WATER_SHARPNESS);
    for (int i = 0; i < values.length; i++) {
      values[i] = 1 / (1 + odds);
      odds *= STEP_ODDS;
    }
    return values;
  }
}
