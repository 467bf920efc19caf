package hullalmanac.core.remind;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The rows of a record that reminders of one boat are read from. */
final class BoatAlone {
  private final List<Row> rows = new ArrayList<>();

  private BoatAlone() {}

  static Almanac of(Almanac almanac, Id<Boat> boat) {
    BoatAlone alone = new BoatAlone();
    Set<Id<Surface>> surfaces =
        alone.take(almanac.surfaces(), s -> s.boat().equals(boat)).stream()
            .map(Surface::id)
            .collect(Collectors.toSet());
    Set<Id<Coat>> coats =
        alone.take(almanac.coats(), c -> surfaces.contains(c.surface())).stream()
            .map(Coat::id)
            .collect(Collectors.toSet());
    Set<Id<Visit>> visits =
        alone.take(almanac.visits(), v -> v.boat().equals(boat)).stream()
            .map(Visit::id)
            .collect(Collectors.toSet());
    alone.take(almanac.boats(), b -> b.id().equals(boat));
    alone.take(almanac.parties(), p -> true);
    alone.take(almanac.roles(), r -> r.boat().equals(boat));
    alone.take(almanac.carePlans(), p -> p.boat().equals(boat));
    alone.take(almanac.steps(), s -> visits.contains(s.visit()));
    alone.take(almanac.duties(), d -> coats.contains(d.coat()));
    alone.take(almanac.findings(), f -> surfaces.contains(f.surface()));
    alone.take(almanac.reminders(), r -> r.boat().equals(boat));
    return Almanac.empty(almanac.business()).with(Edit.put(alone.rows));
  }

  private <R extends Row> List<R> take(List<R> all, Predicate<R> which) {
    List<R> taken = all.stream().filter(which).toList();
    rows.addAll(taken);
    return taken;
  }
}
