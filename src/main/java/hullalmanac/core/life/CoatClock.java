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

  /** Days from {@code from} up to but not including {@code until}. */
  record Spell(LocalDate from, LocalDate until) {
    boolean holds(LocalDate day) {
      return !day.isBefore(from) && day.isBefore(until);
    }
  }

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

  /** Whether a topper lies over it on a day. */
  boolean covered(LocalDate day) {
    return toppers.stream().anyMatch(t -> t.holds(day));
  }

  /** First day by which a dose is reached, up to a limit. */
  Optional<LocalDate> dayOf(double dose, LocalDate limit) {
    return SurfaceClock.firstReaching(this::dose, dose, laid, limit);
  }
}
