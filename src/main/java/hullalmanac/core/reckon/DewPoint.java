package hullalmanac.core.reckon;

/**
 * Dew point of air by the Magnus formula.
 *
 * <pre>
 *   g = ln(RH/100) + 17.625 T/(243.04 + T)      Td = 243.04 g/(17.625 − g)
 * </pre>
 *
 * <p>References: O. A. Alduchov, R. E. Eskridge, Improved Magnus form approximation of saturation
 * vapor pressure, J. Appl. Meteor. 35 (1996) 601–609, their coefficients; M. G. Lawrence, BAMS 86
 * (2005) 225–233. Within 0.04 °C of the Hyland–Wexler formulation from 0 to 40 °C.
 */
public final class DewPoint {
  /** How it is reckoned. */
  public static final Formula FORMULA =
      new Formula(
          "Td = b·g / (a − g), g = ln(RH/100) + a·T / (b + T), a = 17.625, b = 243.04 °C, for the air's"
              + " temperature T in °C and humidity RH in %.",
          "Alduchov and Eskridge, J. Appl. Meteor. 35 (1996) 601–609; within 0.04 °C of the"
              + " Hyland–Wexler formulation from 0 to 40 °C.");

  /**
   * Least margin of a surface over the dew point, °C (ISO 8502-4 is guidance; the figure is usual
   * in coating guides).
   */
  public static final double LEAST_MARGIN = 3.0;

  private static final double A = 17.625;
  private static final double B = 243.04;

  private DewPoint() {}

  /**
   * Dew point in °C.
   *
   * @param air temperature of the air, °C, −40 to 60
   * @param humidity relative humidity, %, over 0 to 100
   */
  public static double of(double air, double humidity) {
    if (!(air >= -40 && air <= 60)) {
      throw new IllegalArgumentException("the air is -40 to 60 °C, not " + air);
    }
    if (!(humidity > 0 && humidity <= 100)) {
      throw new IllegalArgumentException(
          "relative humidity is over 0 and at most 100 %, not " + humidity);
    }
    double g = Math.log(humidity / 100) + A * air / (B + air);
    return B * g / (A - g);
  }

  /** Relative humidity in % of air with a dew point; the inverse of {@link #of}. */
  public static double humidity(double air, double dewPoint) {
    return 100 * Math.exp(A * dewPoint / (B + dewPoint) - A * air / (B + air));
  }

  /** How far a surface lies above the dew point, °C; a difference, so × 9/5 alone gives °F. */
  public static double margin(double air, double humidity, double surface) {
    return surface - of(air, humidity);
  }

  /** Whether a surface is far enough above the dew point for a coat to bond. */
  public static boolean dryEnough(double margin) {
    return margin >= LEAST_MARGIN;
  }
}
