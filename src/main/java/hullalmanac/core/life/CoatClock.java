package hullalmanac.core.life;

import hullalmanac.core.exposure.SurfaceClock;
import hullalmanac.core.record.CoatClass;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Dose that one coat has taken since it was laid. Under a topper a base coat wears at half rate and
 * washing wears the topper instead (common practice, no source).
 *
 * @param laid the day it was laid
 * @param toppers when toppers lay over it, in order, not overlapping
 */
record CoatClock(SurfaceClock surface, CoatClass coatClass, LocalDate laid, List<Spell> toppers) {
  CoatClock {
    toppers = List.copyOf(toppers);
  }

  /**
   * A topper over the coat.
   *
   * @param from the day it was laid
   * @param until first day on which it is taken to be gone: the coat wears in full again
   * @param speaksUntil first day on which water findings speak of the coat below again: the day
   *     after the topper was seen bare, or the end of its service
   */
  record Spell(LocalDate from, LocalDate until, LocalDate speaksUntil) {}

  /** Dose of the days from the day it was laid up to but not including {@code day}. */
  double dose(LocalDate day) {
    if (!day.isAfter(laid)) {
      return 0;
    }
    double dose = surface.weather(laid, day) + surface.washing(coatClass, laid, day);
    for (Spell topper : toppers) {
      LocalDate from = topper.from().isBefore(laid) ? laid : topper.from();
      LocalDate until = topper.until().isAfter(day) ? day : topper.until();
      if (from.isBefore(until)) {
        dose -= (1 - LifePractice.UNDER_TOPPER) * surface.weather(from, until);
        dose -= surface.washing(coatClass, from.minusDays(1), until);
      }
    }
    return Math.max(0, dose);
  }

  /** Whether what is found on a day speaks of a topper over it. */
  boolean covered(LocalDate day) {
    return toppers.stream().anyMatch(t -> !day.isBefore(t.from()) && day.isBefore(t.speaksUntil()));
  }

  /** First day by which a dose is reached, up to a limit. */
  Optional<LocalDate> dayOf(double dose, LocalDate limit) {
    return SurfaceClock.firstReaching(this::dose, dose, laid, limit);
  }
}
