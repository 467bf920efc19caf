package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Where boats of a record lay on a day. */
final class Lying {
  private final Map<Id<Boat>, List<Berth>> berths;
  private final Map<Id<Harbour>, Harbour> harbours;

  /** Reads a record once, for many boats and days. */
  Lying(Almanac almanac) {
    berths = almanac.berths().stream().collect(Collectors.groupingBy(Berth::boat));
    harbours = almanac.harbours().stream().collect(Collectors.toMap(Harbour::id, h -> h));
  }

  /** The harbour of a boat on a day: a yearly berth goes before others, then the newest. */
  Optional<Harbour> at(Id<Boat> boat, LocalDate day) {
    return berths.getOrDefault(boat, List.of()).stream()
        .filter(b -> holds(b, day))
        .max(
            Comparator.comparing(Berth::yearly).thenComparing(Berth::from).thenComparing(Berth::id))
        .map(b -> harbours.get(b.harbour()));
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
