package hullalmanac.core.plan;

import hullalmanac.core.finish.Agreed;
import hullalmanac.core.finish.Area;
import hullalmanac.core.finish.Budget;
import hullalmanac.core.finish.Defect;
import hullalmanac.core.finish.Experience;
import hullalmanac.core.finish.FewestPasses;
import hullalmanac.core.finish.Film;
import hullalmanac.core.finish.GlossLimit;
import hullalmanac.core.finish.Inspection;
import hullalmanac.core.finish.Judged;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Plans;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.finish.Start;
import hullalmanac.core.finish.Supply;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.With;
import hullalmanac.core.report.Caution;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How a surface stands, what is asked of it, and what the planner of the fewest passes answers.
 *
 * @param spare what can be spared, whatever was agreed; absent where nothing is corrected by stages
 * @param limit the gloss that it can reach at all; absent where spare is
 * @param seen by the record and as said
 * @param plans that no other beats, or why there are none
 * @param own what becomes of stages of one's own; absent where none were named
 * @param supplies products of the record for each stage
 * @param protection what it would be protected with
 */
public record SurfacePlans(
    Surface surface,
    Inspection inspection,
    Optional<Area> area,
    Optional<Budget> spare,
    Optional<GlossLimit> limit,
    Set<Defect> seen,
    Agreed agreed,
    Plans plans,
    Optional<Judged> own,
    Map<Stage, List<Supply>> supplies,
    Optional<Product> protection) {
  public SurfacePlans {
    seen = Set.copyOf(seen);
    supplies = Map.copyOf(supplies);
  }

  /** The answer for a record as it stands on a day. Pure and possibly long. */
  public static SurfacePlans of(
      Almanac almanac, Experience experience, Asked asked, LocalDate today) {
    FewestPasses passes =
        FewestPasses.on(almanac, experience, asked.surface(), asked.said(today), today);
    Agreed agreed = asked.agreed(passes.seen(), passes.limit());
    Map<Stage, List<Supply>> supplies = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      supplies.put(stage, Supply.of(almanac, stage, today));
    }
    return new SurfacePlans(
        surface(almanac, asked.surface()),
        passes.inspection(),
        passes.area(),
        passes.spare(),
        passes.limit(),
        passes.seen(),
        agreed,
        passes.plans(agreed),
        asked.own().isEmpty() ? Optional.empty() : Optional.of(passes.judge(agreed, asked.own())),
        supplies,
        PlannedCorrection.protection(almanac, surface(almanac, asked.surface()), today));
  }

  private static Surface surface(Almanac almanac, Id<Surface> id) {
    return almanac.surfaces().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  /** The plans one may choose from: those found, the nearest where none reaches it, one's own. */
  public List<Plan> choices() {
    Stream<Plan> found =
        plans instanceof Plans.Found f
            ? f.plans().stream()
            : plans instanceof Plans.NoneReaches none ? none.nearest().stream() : Stream.empty();
    Stream<Plan> mine =
        own.filter(Judged.Fits.class::isInstance).map(j -> ((Judged.Fits) j).plan()).stream();
    return Stream.concat(found, mine).distinct().toList();
  }

  /**
   * What to heed at a plan, by its stages and by what the budget rests on before anything agreed.
   */
  public List<Caution> cautions(Plan plan) {
    Budget left =
        new Budget(
            plan.left().flats(),
            plan.left().edges(),
            spare.map(Budget::basis).orElse(plan.left().basis()));
    return Caution.of(With.component(plan, "left", left));
  }

  /** Surfaces of a boat that are corrected by stages, in order of their kinds and sides. */
  public static List<Surface> correctable(Almanac almanac, Id<Boat> boat) {
    return almanac.surfaces().stream()
        .filter(s -> s.boat().equals(boat) && Film.of(s, false).isPresent())
        .sorted(
            Comparator.comparing(Surface::kind)
                .thenComparing(Surface::side)
                .thenComparing(Surface::name)
                .thenComparing(Surface::key))
        .toList();
  }

  /** The one of some surfaces whose gloss was looked at last; the first where none was. */
  public static Optional<Surface> looksFirst(Almanac almanac, List<Surface> surfaces) {
    Map<Id<Surface>, LocalDate> looked = new HashMap<>();
    for (Finding f : almanac.findings()) {
      if (Start.of(f.seen()).isPresent()) {
        looked.merge(f.surface(), f.day(), (a, b) -> a.isAfter(b) ? a : b);
      }
    }
    return surfaces.stream()
        .reduce(
            (a, b) ->
                looked
                        .getOrDefault(b.id(), LocalDate.MIN)
                        .isAfter(looked.getOrDefault(a.id(), LocalDate.MIN))
                    ? b
                    : a);
  }
}
