package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.util.Comparator;
import java.util.List;

/** Finds rows of a record. */
final class InRecord {
  static final Comparator<Step> IN_ORDER =
      Comparator.comparing(Step::day).thenComparing(Step::order).thenComparing(Step::id);

  private InRecord() {}

  /** The row with an id; whoever asks for one that is not there has made a mistake. */
  static <R extends Row> R row(List<R> rows, Id<R> id) {
    return rows.stream()
        .filter(r -> r.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no row has the id " + id.value()));
  }

  /** Steps of a visit as they were done, one after the other. */
  static List<Step> steps(Almanac almanac, Visit visit) {
    return almanac.steps().stream()
        .filter(s -> s.visit().equals(visit.id()))
        .sorted(IN_ORDER)
        .toList();
  }

  /** Surfaces of a boat. */
  static List<Surface> surfaces(Almanac almanac, Id<Boat> boat) {
    return almanac.surfaces().stream().filter(s -> s.boat().equals(boat)).toList();
  }

  /** Visits of a boat. */
  static List<Visit> visits(Almanac almanac, Id<Boat> boat) {
    return almanac.visits().stream().filter(v -> v.boat().equals(boat)).toList();
  }
}
