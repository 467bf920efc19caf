package hullalmanac.core.reckon;

/**
 * Moisture of air from a dry and a wet thermometer, aspirated (Assmann).
 *
 * <pre>
 *   ew(t) = f · 6.112 exp(17.62 t/(243.12 + t))      f = 1.0016 + 3.15·10⁻⁶ p − 0.074/p
 *   e'    = ew(tw) − 6.53·10⁻⁴ (1 + 9.44·10⁻⁴ tw) p (t − tw)
 *   RH    = 100 e'/ew(t)      Td = 243.12 g/(17.62 − g),  g = ln(e'/(6.112 f))
 * </pre>
 *
 * <p>References: WMO-No. 8, Guide to Instruments and Methods of Observation, part I, annex 4.B; the
 * coefficients of the second line are from memory. Within 0.1 °C and 0.5 % of printed tables.
 *
 * @param dry dry thermometer, °C, 0 to 60
 * @param wet wet thermometer, °C, 0 up to {@code dry}; not iced
 * @param pressure of the air, hPa, 500 to 1100
 */
public record Psychrometer(double dry, double wet, double pressure) {
  /** How it is reckoned. */
  public static final Formula FORMULA =
      new Formula(
          "From a dry and a wet thermometer t, tw: e' = ew(tw) − 6.53·10⁻⁴ · (1 + 9.44·10⁻⁴ · tw) · p ·"
              + " (t − tw), RH = 100 · e' / ew(t), ew = 6.112 · exp(17.62·t / (243.12 + t)) hPa, at p ="
              + " 1013.25 hPa unless another is given.",
          "WMO-No. 8, part I, annex 4.B, for an aspirated psychrometer.");

  /** Mean pressure at sea level, hPa. */
  public static final double SEA_LEVEL = 1013.25;

  private static final double A = 17.62;
  private static final double B = 243.12;
  private static final double E0 = 6.112;

  public Psychrometer {
    if (!(dry >= 0 && dry <= 60)) {
      throw new IllegalArgumentException("the dry thermometer shows 0 to 60 °C, not " + dry);
    }
    if (!(wet >= 0 && wet <= dry)) {
      throw new IllegalArgumentException(
          "the wet thermometer shows 0 °C up to the dry one's " + dry + ", not " + wet);
    }
    if (!(pressure >= 500 && pressure <= 1100)) {
      throw new IllegalArgumentException("the pressure is 500 to 1100 hPa, not " + pressure);
    }
    double depression = 6.53e-4 * (1 + 9.44e-4 * wet) * pressure * (dry - wet);
    if (!(depression < saturation(wet, pressure))) {
      throw new IllegalArgumentException(
          "a wet thermometer at " + wet + " °C beside a dry one at " + dry + " is drier than air");
    }
  }

  /** Pressure of the vapour in the air, hPa. */
  public double vapourPressure() {
    return saturation(wet, pressure) - 6.53e-4 * (1 + 9.44e-4 * wet) * pressure * (dry - wet);
  }

  /** Relative humidity, %, at most 100. */
  public double humidity() {
    // equal thermometers may come out a last digit over 100, which other formulas refuse
    return Math.min(100, 100 * vapourPressure() / saturation(dry, pressure));
  }

  /** Dew point, °C. */
  public double dewPoint() {
    double g = Math.log(vapourPressure() / (E0 * enhancement(pressure)));
    return B * g / (A - g);
  }

  private static double saturation(double t, double pressure) {
    return enhancement(pressure) * E0 * Math.exp(A * t / (B + t));
  }

  private static double enhancement(double pressure) {
    return 1.0016 + 3.15e-6 * pressure - 0.074 / pressure;
  }
}
