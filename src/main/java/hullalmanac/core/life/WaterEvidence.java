package hullalmanac.core.life;

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
  private WaterEvidence() {}

  /** Likelihood of a look that found the coat alive. */
  static double good(double lnLife, double dose, double misled) {
    return misled + (1 - 2 * misled) * logistic(lnLife - Math.log(dose));
  }

  /** Likelihood of a look that found the coat gone. */
  static double bare(double lnLife, double dose, double misled) {
    return 1 - good(lnLife, dose, misled);
  }

  /**
   * Likelihood of a complaint.
   *
   * @param lastGood dose at the last good look, 0 when there was none
   */
  static double complaint(double lnLife, double dose, double lastGood, double misled) {
    double reach = Math.max(lastGood, dose - LifePractice.COMPLAINT_REACH);
    double byNow = logistic(Math.log(dose) - lnLife);
    double byThen = reach > 0 ? logistic(Math.log(reach) - lnLife) : 0;
    return misled + (1 - 2 * misled) * Math.max(0, byNow - byThen);
  }

  private static double logistic(double difference) {
    return 1 / (1 + Math.exp(-difference / LifePractice.WATER_SHARPNESS));
  }
}
