package hullalmanac.core.exposure;

import java.time.LocalDate;
import java.time.Year;

/**
 * Dose of the days of a year under unchanging conditions, as sums from 1 January, so that the dose
 * between any two days costs no more than the years between them.
 */
final class YearDose {
  private final double[] common;
  private final double[] leap;

  /**
   * @param perSun wear per unit of relative sun
   * @param constant wear of every day alike
   * @param least wear of any day at least
   */
  YearDose(HarbourSun sun, double perSun, double constant, double least) {
    common = sums(sun.days(false), perSun, constant, least);
    leap = sums(sun.days(true), perSun, constant, least);
  }

  /** Sum of the first n days, n = 0 … length of the year. */
  private static double[] sums(double[] sun, double perSun, double constant, double least) {
    double[] sum = new double[sun.length + 1];
    for (int n = 1; n < sum.length; n++) {
      sum[n] = sum[n - 1] + Math.max(least, perSun * sun[n - 1] + constant);
    }
    return sum;
  }

  private double[] of(int year) {
    return Year.isLeap(year) ? leap : common;
  }

  /**
   * Dose of the days from {@code a} up to but not including {@code b}; {@code a} is not after
   * {@code b}.
   */
  double between(LocalDate a, LocalDate b) {
    double dose = of(b.getYear())[b.getDayOfYear() - 1] - of(a.getYear())[a.getDayOfYear() - 1];
    for (int year = a.getYear(); year < b.getYear(); year++) {
      dose += of(year)[Year.of(year).length()];
    }
    return dose;
  }
}
