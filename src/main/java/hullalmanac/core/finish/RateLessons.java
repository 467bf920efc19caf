package hullalmanac.core.finish;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Minutes and millilitres for a square metre that the record holds. A step counts when its minutes
 * and the areas of all its surfaces are known; a bottle when it says what is left in it and all
 * steps out of it are one kind of work.
 */
final class RateLessons {
  private final DoneWork work;
  private final Map<Rates.Key, Seen> minutes = new LinkedHashMap<>();
  private final Map<Enum<?>, Seen> millilitres = new LinkedHashMap<>();
  private final Map<Id<Bottle>, Poured> bottles = new HashMap<>();

  /** When somebody looked what is left; what was poured later is not gone from that. */
  private final Map<Id<Bottle>, LocalDate> looked = new HashMap<>();

  /** Values, and the boats they are of. */
  private static final class Seen {
    private final List<Double> values = new ArrayList<>();
    private final Set<Id<Boat>> boats = new HashSet<>();

    void add(double value, Set<Id<Boat>> of) {
      values.add(value);
      boats.addAll(of);
    }

    LogRate teach(LogRate prior) {
      return prior.taught(values, boats.size());
    }
  }

  /** Where a bottle went; {@code area} is NaN when that is not known. */
  private static final class Poured {
    private final Set<Enum<?>> works = new HashSet<>();
    private final Set<Id<Boat>> boats = new HashSet<>();
    private double area;
  }

  private RateLessons(DoneWork work, Almanac almanac) {
    this.work = work;
    almanac.bottles().forEach(b -> b.leftOn().ifPresent(day -> looked.put(b.id(), day)));
  }

  /** What steps and bottles teach. */
  static Rates learn(FinishPractice practice, DoneWork work, Almanac almanac) {
    RateLessons lessons = new RateLessons(work, almanac);
    for (Visit visit : work.visits()) {
      work.steps(visit).forEach(step -> lessons.step(visit, step));
    }
    almanac.bottles().forEach(lessons::bottle);
    Map<Rates.Key, LogRate> minutes = new HashMap<>();
    lessons.minutes.forEach(
        (key, seen) -> minutes.put(key, seen.teach(Rates.starter(practice, key))));
    Map<Enum<?>, LogRate> millilitres = new HashMap<>();
    lessons.millilitres.forEach(
        (of, seen) -> millilitres.put(of, seen.teach(LogRate.starter(practice.millilitres(of)))));
    return new Rates(practice, minutes, millilitres);
  }

  private void step(Visit visit, Step step) {
    List<Surface> surfaces = work.surfaces(visit, step);
    Optional<Enum<?>> of = of(step);
    double area = area(surfaces) * step.passes().orElse(1);
    if (surfaces.isEmpty()) {
      return;
    }
    step.bottle()
        .filter(b -> !looked.getOrDefault(b, step.day()).isBefore(step.day()))
        .ifPresent(
            b -> {
              Poured poured = bottles.computeIfAbsent(b, x -> new Poured());
              of.ifPresentOrElse(poured.works::add, () -> poured.works.add(step.kind()));
              poured.boats.add(visit.boat());
              poured.area += area;
            });
    int personMinutes = step.minutes().orElse(0) + step.helperMinutes().orElse(0);
    if (of.isPresent() && step.minutes().isPresent() && personMinutes > 0 && area > 0) {
      minutes
          .computeIfAbsent(
              new Rates.Key(of.get(), condition(visit, step, surfaces)), k -> new Seen())
          .add(personMinutes / area, Set.of(visit.boat()));
    }
  }

  private Optional<Enum<?>> of(Step step) {
    return switch (step.kind()) {
      case WASH, DECONTAMINATE, PROTECT -> Optional.of(step.kind());
      default -> Stage.of(step, work.product(step)).map(Stage::law);
    };
  }

  /** Areas of surfaces together; NaN when one is not known. */
  private double area(List<Surface> surfaces) {
    return surfaces.stream()
        .mapToDouble(s -> Area.byRule(work.boat(s), s).map(Area::squareMetres).orElse(Double.NaN))
        .sum();
  }

  private void bottle(Bottle bottle) {
    Poured poured = bottles.get(bottle.id());
    int used = bottle.sizeMl().orElse(0) - bottle.leftMl().orElse(bottle.sizeMl().orElse(0));
    if (poured == null || used <= 0 || poured.works.size() != 1 || !(poured.area > 0)) {
      return;
    }
    Enum<?> of = poured.works.iterator().next();
    if (of instanceof Stage || of == StepKind.PROTECT) {
      millilitres.computeIfAbsent(of, k -> new Seen()).add(used / poured.area, poured.boats);
    }
  }

  /** The condition in which most of the area was found; fair where nobody wrote it down. */
  private Condition condition(Visit visit, Step step, List<Surface> surfaces) {
    Map<Condition, Double> areas = new EnumMap<>(Condition.class);
    for (Surface s : surfaces) {
      double area = Area.byRule(work.boat(s), s).map(Area::squareMetres).orElse(0.0);
      areas.merge(condition(visit, step, s), area, Double::sum);
    }
    return areas.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(Condition.FAIR);
  }

  /** What was seen before the work; of one day unmarked gloss may be of either side. */
  private Condition condition(Visit visit, Step step, Surface surface) {
    Optional<Double> gloss = Optional.empty();
    Set<Defect> seen = EnumSet.noneOf(Defect.class);
    for (Finding f : work.findings(surface, visit)) {
      Optional<Double> read = Start.of(f.seen()).map(Start::gloss).filter(g -> DoneWork.clean(f));
      if (before(f, step, Start.of(f.seen()).isPresent())) {
        Defect.seen(f.seen(), f.state()).ifPresent(seen::add);
        gloss = lower(gloss, read);
      }
    }
    return Condition.of(gloss, seen);
  }

  private static boolean before(Finding f, Step step, boolean ofGloss) {
    if (f.moment().isPresent()) {
      return f.moment().get() == Moment.BEFORE;
    }
    return f.day().isBefore(step.day()) || (f.day().equals(step.day()) && !ofGloss);
  }

  private static Optional<Double> lower(Optional<Double> a, Optional<Double> b) {
    return a.isPresent() && (b.isEmpty() || a.get() < b.get()) ? a : b;
  }
}
