package hullalmanac.core.exposure;

import hullalmanac.core.record.Harbour;
import hullalmanac.core.sun.SolarDay;
import java.time.LocalDate;

/**
 * Sun at the ground of a harbour by day of the year, relative to the reference:
 *
 * <pre>
 *   S = (0.25 + 0.50 f) · Ra(latitude, day) / 17.31248
 * </pre>
 */
final class HarbourSun {
  private static final int COMMON_YEAR = 2023;
  private static final int LEAP_YEAR = 2024;

  private final double[] common;
  private final double[] leap;

  /**
   * @param meanSky relative sunshine where the harbour's is not known
   */
  HarbourSun(Harbour harbour, double meanSky) {
    common = year(harbour, meanSky, COMMON_YEAR, 365);
    leap = year(harbour, meanSky, LEAP_YEAR, 366);
  }

  /** Relative sun of the first day of a year, the second …; months of a leap year begin later. */
  double[] days(boolean leapYear) {
    return (leapYear ? leap : common).clone();
  }

  private static double[] year(Harbour harbour, double meanSky, int year, int days) {
    double[] sun = new double[days];
    for (int day = 1; day <= days; day++) {
      int month = LocalDate.ofYearDay(year, day).getMonthValue();
      double f = harbour.sunshine().isEmpty() ? meanSky : harbour.sunshine().get(month - 1);
      sun[day - 1] = new SolarDay(harbour.latitude(), day).atGround(f) / WearPractice.REFERENCE_SUN;
    }
    return sun;
  }
}
