package hullalmanac.core.supply;

import hullalmanac.core.finish.Area;
import hullalmanac.core.finish.Estimate;
import hullalmanac.core.finish.ProductUse;
import hullalmanac.core.reckon.Dilution;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Every step on every surface, once: as done, as still planned, or as neither.
 *
 * <pre>
 *   ml = area · ml for a m² · passes      / (1 + parts of water), where it is mixed with water
 * </pre>
 *
 * <p>Areas, ml for a m² and dilution are those of the planner and the Reckoner.
 */
final class Draws {
  private final Map<Id<Boat>, Boat> boats;
  private final Map<Id<Surface>, Surface> surfaces;
  private final Map<Id<Boat>, List<Surface>> ofBoat;
  private final Map<Id<Product>, Product> products;
  private final Map<Id<Visit>, List<Step>> steps;
  private final ProductUse use;

  Draws(Almanac almanac, ProductUse use) {
    this.use = use;
    boats = byId(almanac.boats(), Boat::id);
    surfaces = byId(almanac.surfaces(), Surface::id);
    products = byId(almanac.products(), Product::id);
    ofBoat = almanac.surfaces().stream().collect(Collectors.groupingBy(Surface::boat));
    steps = almanac.steps().stream().collect(Collectors.groupingBy(Step::visit));
  }

  private static <R extends Row> Map<Id<R>, R> byId(List<R> rows, Function<R, Id<R>> id) {
    return rows.stream().collect(Collectors.toMap(id, Function.identity()));
  }

  List<Step> steps(Visit visit) {
    return steps.getOrDefault(visit.id(), List.of());
  }

  Optional<Product> product(Step step) {
    return step.product().map(products::get);
  }

  /** All surfaces of a step, done or not. */
  List<Surface> surfaces(Visit visit, Step step) {
    return step.surfaces().isEmpty()
        ? ofBoat.getOrDefault(visit.boat(), List.of())
        : step.surfaces().stream().map(surfaces::get).toList();
  }

  static boolean done(Visit visit, Surface surface) {
    return visit.status() != VisitStatus.CANCELLED
        && state(visit, surface)
            .map(state -> state == WorkState.DONE)
            .orElse(visit.status() == VisitStatus.DONE);
  }

  static boolean planned(Visit visit, Surface surface) {
    return visit.status() == VisitStatus.PLANNED
        && state(visit, surface).map(state -> state == WorkState.PLANNED).orElse(true);
  }

  private static Optional<WorkState> state(Visit visit, Surface surface) {
    return visit.surfaces().stream()
        .filter(p -> p.surface().equals(surface.id()))
        .findFirst()
        .map(Visit.Part::state);
  }

  Optional<Area> area(Surface surface) {
    return Area.byRule(boats.get(surface.boat()), surface);
  }

  /** What was done in a visit. */
  List<Draw> done(Visit visit) {
    return all(visit, surface -> done(visit, surface));
  }

  /** What is still planned in a visit. */
  List<Draw> planned(Visit visit) {
    return all(visit, surface -> planned(visit, surface));
  }

  /** What a planned visit without steps would take if it went like one that was done. */
  List<Draw> like(Visit last, Visit planned) {
    long days = ChronoUnit.DAYS.between(last.day(), planned.day());
    return done(last).stream()
        .map(
            d ->
                new Draw(
                    With.component(d.step(), "visit", planned.id()),
                    d.product(),
                    d.surface(),
                    d.day().plusDays(days),
                    d.ml()))
        .toList();
  }

  /**
   * Whether a step needs a product of which nobody knows which, or on what surfaces: it draws
   * nothing, which is not the same as needing nothing.
   *
   * @param of whether a surface is still to be counted
   */
  boolean untold(Visit visit, Step step, Predicate<Surface> of) {
    List<Surface> on = surfaces(visit, step);
    Optional<Product> product = product(step);
    boolean needs =
        product.map(p -> use.millilitres(step, p).isPresent()).orElse(needsSome(step.kind()));
    return needs
        && (product.isEmpty() || on.isEmpty())
        && (on.isEmpty() || on.stream().anyMatch(of));
  }

  /** Nobody lays anything on to look; what else was done may have needed nothing. */
  private static boolean needsSome(StepKind kind) {
    return kind != StepKind.INSPECT && kind != StepKind.OTHER;
  }

  private List<Draw> all(Visit visit, Predicate<Surface> of) {
    Map<Id<Surface>, Long> late = new HashMap<>();
    List<Draw> all = new ArrayList<>();
    for (Step step : steps(visit)) {
      Optional<Product> product = product(step);
      if (product.isEmpty() || step.kind() == StepKind.INSPECT) {
        continue;
      }
      for (Surface surface : surfaces(visit, step)) {
        if (of.test(surface)) {
          long days = late.computeIfAbsent(surface.id(), id -> late(visit, surface));
          all.add(draw(step, product.get(), surface, step.day().plusDays(days)));
        }
      }
    }
    return all;
  }

  private Draw draw(Step step, Product product, Surface surface, LocalDate day) {
    Optional<Estimate> ml =
        area(surface)
            .flatMap(
                a ->
                    use.millilitres(step, product)
                        .flatMap(m -> outOfTheBottle(step, product, m.times(a.squareMetres()))));
    return new Draw(step, product, surface, day, ml);
  }

  /** A wash whose dilution nobody wrote down is not known; a decontaminant is then taken neat. */
  private static Optional<Estimate> outOfTheBottle(Step step, Product product, Estimate inAll) {
    if (!ProductUse.mixed(step.kind())) {
      return Optional.of(inAll);
    }
    Optional<Integer> water = step.partsWater().or(() -> product.handling().partsWater());
    if (water.isEmpty()) {
      return step.kind() == StepKind.WASH ? Optional.empty() : Optional.of(inAll);
    }
    return Optional.of(inAll.times(new Dilution(water.get()).product(1)));
  }

  /** Whether a step takes a product out of a bottle at all, so that an unknown draw is a gap. */
  boolean takes(Draw draw) {
    return use.millilitres(draw.step(), draw.product()).isPresent();
  }

  /** How many days later than its last step says a surface was done, 0 or more. */
  private long late(Visit visit, Surface surface) {
    Optional<LocalDate> last =
        steps(visit).stream()
            .filter(s -> surfaces(visit, s).contains(surface))
            .map(Step::day)
            .max(Comparator.naturalOrder());
    return visit.surfaces().stream()
        .filter(p -> p.surface().equals(surface.id()))
        .flatMap(p -> p.doneOn().stream())
        .flatMap(on -> last.map(l -> Math.max(0, ChronoUnit.DAYS.between(l, on))).stream())
        .findFirst()
        .orElse(0L);
  }
}
