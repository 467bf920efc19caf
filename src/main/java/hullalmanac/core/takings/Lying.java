package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;

/** Where a boat lay on a day. */
final class Lying {
  private Lying() {}

  /** The harbour of a boat on a day: a yearly berth goes before others, then the newest. */
  static Optional<Harbour> at(Almanac almanac, Id<Boat> boat, LocalDate day) {
    return almanac.berths().stream()
        .filter(b -> b.boat().equals(boat) && holds(b, day))
        .max(
            Comparator.comparing(Berth::yearly).thenComparing(Berth::from).thenComparing(Berth::id))
        .map(b -> Accounts.row(almanac.harbours(), b.harbour()));
  }

  private static boolean holds(Berth berth, LocalDate day) {
    if (day.isBefore(berth.from())) {
      return false;
    }
    if (!berth.yearly()) {
      return berth.until().map(day::isBefore).orElse(true);
    }
    long length = ChronoUnit.DAYS.between(berth.from(), berth.until().orElseThrow());
    long last = berth.lastYear().orElse(Integer.MAX_VALUE);
    for (int year = day.getYear() - 1; year <= day.getYear(); year++) {
      LocalDate from = berth.from().plusYears(year - (long) berth.from().getYear());
      boolean begins = year >= berth.from().getYear() && year <= last;
      if (begins && !day.isBefore(from) && day.isBefore(from.plusDays(length))) {
        return true;
      }
    }
    return false;
  }
}
