package hullalmanac.core.life;

/**
 * What a look says of one life, written straight from the formulas of {@link WaterEvidence}, which
 * reckons them for all lives at once.
 */
final class WaterLook {
  private WaterLook() {}

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
