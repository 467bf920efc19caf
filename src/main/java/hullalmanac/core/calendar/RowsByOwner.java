package hullalmanac.core.calendar;

import hullalmanac.core.exposure.Stay;
import hullalmanac.core.exposure.Stays;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Rows of a record by what they belong to. */
final class RowsByOwner {
  private static final int MOST_NAMED = 3;

  private final Map<Id<Boat>, Boat> boats;
  private final Map<Id<Harbour>, Harbour> harbours;
  private final Map<Id<Surface>, Surface> surfaces;
  private final Map<Id<Product>, Product> products;
  private final Map<Id<CarePlan>, CarePlan> plans;
  private final Map<Id<Visit>, List<Step>> steps;
  private final Map<Id<Boat>, List<Berth>> berths;

  RowsByOwner(Almanac almanac) {
    boats = byId(almanac.boats(), Boat::id);
    harbours = byId(almanac.harbours(), Harbour::id);
    surfaces = byId(almanac.surfaces(), Surface::id);
    products = byId(almanac.products(), Product::id);
    plans = byId(almanac.carePlans(), CarePlan::id);
    steps =
        almanac.steps().stream()
            .sorted(
                Comparator.comparing(Step::day).thenComparing(Step::order).thenComparing(Step::id))
            .collect(Collectors.groupingBy(Step::visit));
    berths = almanac.berths().stream().collect(Collectors.groupingBy(Berth::boat));
  }

  private static <R> Map<Id<R>, R> byId(List<R> rows, Function<R, Id<R>> id) {
    return rows.stream().collect(Collectors.toMap(id, Function.identity()));
  }

  Boat boat(Id<Boat> id) {
    return boats.get(id);
  }

  CarePlan plan(Id<CarePlan> id) {
    return plans.get(id);
  }

  Product product(Id<Product> id) {
    return products.get(id);
  }

  /** Steps of a visit in the order in which they are done. */
  List<Step> steps(Visit visit) {
    return steps.getOrDefault(visit.id(), List.of());
  }

  /** Where a boat lies on a day, where that is known. */
  Optional<Berth> berth(Id<Boat> boat, LocalDate day) {
    List<Stay> stays = Stays.of(berths.getOrDefault(boat, List.of()), day, day.plusDays(1));
    return stays.stream().findFirst().map(Stay::berth);
  }

  /** The harbour and the place in it, in words. */
  String where(Berth berth) {
    String place = berth.access().place();
    return harbours.get(berth.harbour()).name() + (place.isBlank() ? "" : ", berth " + place);
  }

  /** All surfaces of a list in words, both sides as one; each kind or name once. */
  static Set<String> names(List<Surface> list) {
    return list.stream()
        .map(s -> s.name().isBlank() ? s.kind().words() : s.name())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Surfaces of a visit in words. */
  Set<String> names(Visit visit) {
    return names(visit.surfaces().stream().map(p -> surfaces.get(p.surface())).toList());
  }

  /** A few surfaces in words: {@code topsides, transom and 2 more}. */
  static String few(Set<String> names) {
    List<String> all = List.copyOf(names);
    List<String> named = all.stream().limit(MOST_NAMED).toList();
    int more = all.size() - named.size();
    return String.join(", ", named) + (more > 0 ? " and " + more + " more" : "");
  }
}
