package hullalmanac.core.supply;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The visits that are planned until a day.
 *
 * @param like for one of a care plan that has no steps yet, the last of that plan that was done
 */
record Planned(LocalDate until, List<Visit> visits, Map<Visit, Visit> like) {
  Planned {
    visits = List.copyOf(visits);
    like = Map.copyOf(like);
  }

  static Planned of(Almanac almanac, Draws draws, LocalDate until) {
    List<Visit> visits =
        almanac.visits().stream()
            .filter(v -> v.status() == VisitStatus.PLANNED && !v.day().isAfter(until))
            .toList();
    Map<Visit, Visit> like = new LinkedHashMap<>();
    for (Visit visit : visits) {
      if (draws.steps(visit).isEmpty() && visit.plan().isPresent()) {
        last(almanac, draws, visit).ifPresent(last -> like.put(visit, last));
      }
    }
    return new Planned(until, visits, like);
  }

  private static Optional<Visit> last(Almanac almanac, Draws draws, Visit visit) {
    return almanac.visits().stream()
        .filter(v -> v.status() == VisitStatus.DONE && v.plan().equals(visit.plan()))
        .filter(v -> !draws.steps(v).isEmpty())
        .max(Comparator.comparing(Visit::day).thenComparing(Visit::id));
  }

  /** What they take until the day, on surfaces that are not done yet. */
  List<Draw> draws(Draws draws) {
    return Stream.concat(
            visits.stream().flatMap(v -> draws.planned(v).stream()),
            like.entrySet().stream().flatMap(e -> draws.like(e.getValue(), e.getKey()).stream()))
        .filter(d -> !d.day().isAfter(until))
        .toList();
  }
}
