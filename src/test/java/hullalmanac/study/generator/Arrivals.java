package hullalmanac.study.generator;

import java.time.LocalDate;
import java.util.random.RandomGenerator;

/**
 * How boats come to the business: most in the first spring to be coated, some in later seasons with
 * coats on them.
 */
record Arrivals(LocalDate first, int seasons) {
  private static final double LATE = 0.10;

  Vessel.Start drawn(RandomGenerator random, boolean glossRead) {
    boolean late = random.nextDouble() < LATE && seasons > 1;
    if (!late) {
      LocalDate summer = LocalDate.of(first.getYear(), 6, 1);
      return new Vessel.Start(between(first, summer, random), false, glossRead);
    }
    int year = first.getYear() + 1 + random.nextInt(seasons - 1);
    LocalDate spring = LocalDate.of(year, 4, 1);
    LocalDate autumn = LocalDate.of(year, 9, 1);
    return new Vessel.Start(between(spring, autumn, random), true, glossRead);
  }

  private static int between(LocalDate from, LocalDate until, RandomGenerator random) {
    return random.nextInt(Span.number(from), Span.number(until));
  }
}
