package hullalmanac.core.finish;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was done and seen up to a day, by visit and surface. */
final class DoneWork {
  private final Map<Id<Boat>, Boat> boats;
  private final Map<Id<Surface>, Surface> surfaces;
  private final Map<Id<Boat>, List<Surface>> ofBoat;
  private final Map<Id<Product>, Product> products;
  private final List<Visit> visits;
  private final Map<Id<Visit>, List<Step>> steps;
  private final Map<Id<Surface>, List<Finding>> findings;

  DoneWork(Almanac almanac, LocalDate today) {
    boats = byId(almanac.boats(), Boat::id);
    surfaces = byId(almanac.surfaces(), Surface::id);
    ofBoat = almanac.surfaces().stream().collect(Collectors.groupingBy(Surface::boat));
    products = byId(almanac.products(), Product::id);
    visits =
        almanac.visits().stream()
            .filter(v -> v.status() != VisitStatus.CANCELLED && !v.day().isAfter(today))
            .sorted(Comparator.comparing(Visit::day).thenComparing(Visit::id))
            .toList();
    steps =
        almanac.steps().stream()
            .filter(s -> !s.day().isAfter(today))
            .sorted(
                Comparator.comparing(Step::day).thenComparing(Step::order).thenComparing(Step::id))
            .collect(Collectors.groupingBy(Step::visit));
    findings =
        almanac.findings().stream()
            .filter(f -> !f.day().isAfter(today))
            .sorted(Comparator.comparing(Finding::day).thenComparing(Finding::id))
            .collect(Collectors.groupingBy(Finding::surface));
  }

  private static <R> Map<Id<R>, R> byId(List<R> rows, Function<R, Id<R>> id) {
    return rows.stream().collect(Collectors.toMap(id, Function.identity()));
  }

  /** Visits that may have been done, by day. */
  List<Visit> visits() {
    return visits;
  }

  List<Step> steps(Visit visit) {
    return steps.getOrDefault(visit.id(), List.of());
  }

  /** The surfaces of a step that were done: those it names, all of the boat when it names none. */
  List<Surface> surfaces(Visit visit, Step step) {
    Stream<Surface> named =
        step.surfaces().isEmpty()
            ? ofBoat.getOrDefault(visit.boat(), List.of()).stream()
            : step.surfaces().stream().map(surfaces::get);
    return named.filter(s -> done(visit, s)).toList();
  }

  private static boolean done(Visit visit, Surface surface) {
    return visit.surfaces().stream()
        .filter(p -> p.surface().equals(surface.id()))
        .findFirst()
        .map(p -> p.state() == WorkState.DONE)
        .orElse(visit.status() == VisitStatus.DONE);
  }

  /** Steps of a visit that were done on a surface, in order. */
  List<Step> steps(Visit visit, Surface surface) {
    if (!done(visit, surface)) {
      return List.of();
    }
    return steps(visit).stream()
        .filter(s -> s.surfaces().isEmpty() || s.surfaces().contains(surface.id()))
        .toList();
  }

  /** Findings on a surface, by day. */
  List<Finding> findings(Surface surface) {
    return findings.getOrDefault(surface.id(), List.of());
  }

  /** Findings on a surface that belong to a visit, by day. */
  List<Finding> findings(Surface surface, Visit visit) {
    return findings(surface).stream()
        .filter(f -> f.visit().equals(Optional.of(visit.id())))
        .toList();
  }

  Surface surface(Id<Surface> id) {
    return surfaces.get(id);
  }

  List<Surface> surfaces(Visit visit) {
    return ofBoat.getOrDefault(visit.boat(), List.of());
  }

  Boat boat(Surface surface) {
    return boats.get(surface.boat());
  }

  Optional<Product> product(Step step) {
    return step.product().map(products::get);
  }

  /** Age of a surface's finish on a day, in years, where the year is known and not yet to come. */
  Optional<Integer> age(Surface surface, LocalDate day) {
    return surface
        .madeYear()
        .or(() -> boat(surface).built())
        .map(y -> day.getYear() - y)
        .filter(a -> a >= 0);
  }

  /** The highest gloss at 60° ever read on a clean surface. */
  Optional<Double> best(Surface surface) {
    return findings(surface).stream()
        .filter(DoneWork::clean)
        .flatMap(f -> gloss(f).stream())
        .map(Observation.GlossRead::mean)
        .max(Comparator.naturalOrder());
  }

  /** Whether a surface was looked at clean: dirt and waxes of a soap hide its gloss. */
  static boolean clean(Finding f) {
    return f.state() == SurfaceState.WASHED || f.state() == SurfaceState.DECONTAMINATED;
  }

  /** The gloss at 60° that a finding is of, within what a hull can have. */
  static Optional<Observation.GlossRead> gloss(Finding f) {
    return f.seen() instanceof Observation.GlossRead g
            && g.geometry() == Geometry.DEG_60
            && g.mean() <= Observation.GlossRead.HIGHEST_NON_METAL
        ? Optional.of(g)
        : Optional.empty();
  }
}
