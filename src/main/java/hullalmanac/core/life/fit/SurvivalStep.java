package hullalmanac.core.life.fit;

import java.util.Optional;

/**
 * A step of an estimated share of lives not yet ended.
 *
 * @param from where the step begins: for Kaplan and Meier {@code until} itself
 * @param until the time by which the ends of this step have come
 * @param surviving share of lives not ended after it, 0 to 1
 * @param error its standard error, where there is one
 * @param band 95 % band, where there is one
 */
public record SurvivalStep(
    double from, double until, double surviving, Optional<Double> error, Optional<Band> band) {
  /** Two-sided 0.975 point of the normal law. */
  private static final double Z = 1.959963984540054;

  /** Lower and upper bound, each 0 to 1. */
  public record Band(double lower, double upper) {}

  /**
   * A step with a band on the scale ln(−ln S), which never leaves 0 to 1:
   *
   * <pre>
   *   S^exp(±z · se / (S ln S))
   * </pre>
   *
   * <p>References: Kalbfleisch and Prentice, The Statistical Analysis of Failure Time Data, 2nd ed.
   * (2002), section 1.4.
   */
  static SurvivalStep of(double from, double until, double surviving, double error) {
    if (!(surviving > 0 && surviving < 1) || !Double.isFinite(error)) {
      Optional<Double> known = Optional.of(error).filter(Double::isFinite);
      return new SurvivalStep(from, until, surviving, known, Optional.empty());
    }
    double reach = Z * error / Math.abs(surviving * Math.log(surviving));
    return new SurvivalStep(
        from,
        until,
        surviving,
        Optional.of(error),
        Optional.of(
            new Band(Math.pow(surviving, Math.exp(reach)), Math.pow(surviving, Math.exp(-reach)))));
  }
}
