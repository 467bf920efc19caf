package hullalmanac.study;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.ProductKind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * What was said of one coat, and what is true.
 *
 * @param held whether the 80 % range holds the true day
 * @param error days between the middle date and the true day
 * @param labelError days between the label's months after laying and the true day
 */
record Score(ProductKind product, boolean held, double error, double labelError) {
  private static final double DAYS_A_MONTH = 30.44;

  /**
   * Scores a forecast.
   *
   * @param truth the day on which it lapses, {@link LocalDate#MAX} when not within the horizon
   * @param horizon no day is told apart from later ones beyond this
   */
  static Score of(CoatForecast forecast, LocalDate truth, LocalDate horizon) {
    LocalDate lapse = capped(Optional.of(truth), horizon);
    LocalDate early = capped(forecast.early(), horizon);
    LocalDate middle = horizon;
    LocalDate late = horizon;
    if (forecast.outcome() instanceof Outcome.Dated d) {
      middle = capped(d.middle(), horizon);
      late = capped(d.late(), horizon);
    } else if (forecast.outcome() instanceof Outcome.AlreadyLapsed a) {
      middle = a.middle();
      late = capped(a.late(), horizon);
    }
    LocalDate laid = forecast.coat().laidOn().orElseThrow();
    double label = forecast.product().labelMonths().orElseThrow();
    LocalDate byLabel = laid.plusDays(Math.round(label * DAYS_A_MONTH));
    return new Score(
        forecast.product().kind(),
        !lapse.isBefore(early) && !lapse.isAfter(late),
        Math.abs(ChronoUnit.DAYS.between(middle, lapse)),
        Math.abs(ChronoUnit.DAYS.between(byLabel, lapse)));
  }

  private static LocalDate capped(Optional<LocalDate> day, LocalDate horizon) {
    return day.filter(d -> d.isBefore(horizon)).orElse(horizon);
  }
}
