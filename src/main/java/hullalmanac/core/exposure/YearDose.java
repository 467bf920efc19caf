package hullalmanac.core.exposure;

import hullalmanac.core.record.Harbour;
import hullalmanac.core.sun.SolarDay;
import java.time.LocalDate;
import java.time.Year;

/**
 * Dose of the days of a year under unchanging conditions, as sums from 1 January, so that the dose
 * between any two days costs no more than the years between them.
 */
final class YearDose {
  /** Sum of the first n days, n = 0 … 366. */
  private final double[] sum = new double[367];

  /**
   * @param sun wear per unit of relative sun
   * @param constant wear of every day alike
   */
  YearDose(double[] relativeSun, double sun, double constant) {
    for (int n = 1; n <= 366; n++) {
      sum[n] = sum[n - 1] + Math.max(WearPractice.LEAST, sun * relativeSun[n] + constant);
    }
  }

  /**
   * Sun at the ground of a harbour on days 1 to 366 of the year, relative to the reference; entry 0
   * is unused.
   */
  static double[] relativeSun(Harbour harbour) {
    double[] sun = new double[367];
    for (int day = 1; day <= 366; day++) {
      int month = LocalDate.ofYearDay(2024, day).getMonthValue();
      double f =
          harbour.sunshine().isEmpty() ? WearPractice.MEAN_SKY : harbour.sunshine().get(month - 1);
      sun[day] = new SolarDay(harbour.latitude(), day).atGround(f) / WearPractice.REFERENCE_SUN;
    }
    return sun;
  }

  /**
   * Dose of the days from {@code a} up to but not including {@code b}; {@code a} is not after
   * {@code b}.
   */
  double between(LocalDate a, LocalDate b) {
    double dose = sum[b.getDayOfYear() - 1] - sum[a.getDayOfYear() - 1];
    for (int year = a.getYear(); year < b.getYear(); year++) {
      dose += sum[Year.isLeap(year) ? 366 : 365];
    }
    return dose;
  }
}
