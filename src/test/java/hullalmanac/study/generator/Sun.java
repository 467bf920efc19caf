package hullalmanac.study.generator;

import hullalmanac.core.record.Harbour;
import java.time.LocalDate;

/** How strong the sun is at a harbour on a day. */
final class Sun {
  private static final double SOLAR_CONSTANT = 0.0820;
  private static final double MINUTES_A_DAY = 24 * 60;
  private static final double REFERENCE = 17.31248;
  private static final double UNKNOWN_SUNSHINE = 0.6;

  private Sun() {}

  /**
   * Extraterrestrial radiation in MJ/m²/day (reference: FAO Irrigation and Drainage Paper 56,
   * equations 21 and 23 to 25).
   */
  static double extraterrestrial(double latitude, int dayOfYear) {
    double phi = Math.toRadians(latitude);
    double year = 2 * Math.PI * dayOfYear / 365;
    double distance = 1 + 0.033 * Math.cos(year);
    double declination = 0.409 * Math.sin(year - 1.39);
    double cosine = -Math.tan(phi) * Math.tan(declination);
    double sunset = Math.acos(Math.max(-1, Math.min(1, cosine)));
    return MINUTES_A_DAY
        / Math.PI
        * SOLAR_CONSTANT
        * distance
        * (sunset * Math.sin(phi) * Math.sin(declination)
            + Math.cos(phi) * Math.cos(declination) * Math.sin(sunset));
  }

  /** Strength against the reference, for every day of a span. */
  static double[] strength(Harbour harbour, Span span) {
    double[] strength = new double[span.length()];
    LocalDate first = Span.date(span.first());
    for (int i = 0; i < strength.length; i++) {
      strength[i] = strength(harbour, first.plusDays(i));
    }
    return strength;
  }

  static double strength(Harbour harbour, LocalDate day) {
    double sunshine =
        harbour.sunshine().isEmpty()
            ? UNKNOWN_SUNSHINE
            : harbour.sunshine().get(day.getMonthValue() - 1);
    return (0.25 + 0.50 * sunshine)
        * extraterrestrial(harbour.latitude(), day.getDayOfYear())
        / REFERENCE;
  }
}
