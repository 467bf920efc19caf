package hullalmanac.sample;

import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;

/** The steps of the sample's visits. */
final class SampleSteps {
  private final Draft d;

  /** Ids of steps that came to the sample later, so that all else stays as it was. */
  private final IdSource others = new IdSource(new Random(20_261_126L)::nextLong);

  SampleSteps(Draft draft) {
    d = draft;
  }

  /**
   * Coats of one product laid on one day.
   *
   * @param product its key
   */
  record Lay(String product, LocalDate day) {}

  /**
   * Wash, decontaminate, cut where it is chalky, polish, protect.
   *
   * @param lays what is laid on each surface
   */
  void spring(Visit visit, List<Surface> surfaces, LocalDate day, Function<Surface, Lay> lays) {
    List<Id<Surface>> all = surfaces.stream().map(Surface::id).toList();
    List<Id<Surface>> gelcoat =
        surfaces.stream().filter(s -> s.finish() == Finish.GELCOAT).map(Surface::id).toList();
    int order = 1;
    add(visit, order++, StepKind.INSPECT, day, all, Optional.empty(), "", d.between(10, 25));
    add(
        visit,
        order++,
        StepKind.WASH,
        day,
        List.of(),
        Optional.of("soap-mild"),
        "",
        d.between(35, 70));
    if (!gelcoat.isEmpty()) {
      add(
          visit,
          order++,
          StepKind.DECONTAMINATE,
          day,
          gelcoat,
          Optional.of("decon-acid"),
          "",
          d.between(25, 50));
      if (d.chance(0.3)) {
        add(
            visit,
            order++,
            StepKind.CUT,
            day,
            gelcoat,
            Optional.of("compound-r"),
            "wool, 6.5 in",
            d.between(90, 200));
      }
      add(
          visit,
          order++,
          StepKind.POLISH,
          day,
          gelcoat,
          Optional.of("polish-s"),
          "foam, 6.5 in",
          d.between(80, 180));
    }
    protect(visit, order, surfaces, lays, d.between(60, 140));
  }

  private void protect(
      Visit visit, int first, List<Surface> surfaces, Function<Surface, Lay> lays, int minutes) {
    Map<Lay, List<Id<Surface>>> groups = new LinkedHashMap<>();
    surfaces.forEach(
        s -> groups.computeIfAbsent(lays.apply(s), l -> new ArrayList<>()).add(s.id()));
    Id<Step> id = d.id();
    boolean helped = d.chance(0.1);
    int order = first;
    for (Map.Entry<Lay, List<Id<Surface>>> group : groups.entrySet()) {
      Lay lay = group.getKey();
      d.steps.add(
          new Step(
              order == first ? id : others.next(),
              visit.key() + "-" + order,
              visit.id(),
              order,
              StepKind.PROTECT,
              lay.day(),
              group.getValue(),
              Optional.of(d.product(lay.product()).id()),
              Optional.ofNullable(d.bottles.get(lay.product() + "-" + lay.day().getYear()))
                  .map(Bottle::id),
              Optional.empty(),
              "foam, soft",
              "",
              lay.product().equals("coating-c") ? Optional.of(2) : Optional.empty(),
              Optional.of(minutes * group.getValue().size() / surfaces.size()),
              order == first && helped ? Optional.of(30) : Optional.empty(),
              Optional.empty(),
              order == first ? climate(lay.day()) : Optional.empty(),
              ""));
      order++;
    }
  }

  /** A reading that follows from its day alone, in the last two seasons. */
  private static Optional<Climate> climate(LocalDate day) {
    if (day.getYear() < Draft.AS_OF.getYear() - 1) {
      return Optional.empty();
    }
    int n = day.getDayOfYear();
    double air = 12.5 + n % 7;
    double surface = air + 2 + n % 3 * 0.5;
    return Optional.of(
        new Climate(air, 52 + n * 7 % 20, surface, day.atTime(10, 0).plusMinutes(n % 5 * 15L)));
  }

  void wash(Visit visit, LocalDate day, int minutes) {
    add(visit, 1, StepKind.WASH, day, List.of(), Optional.of("soap-mild"), "", minutes);
  }

  private void add(
      Visit visit,
      int order,
      StepKind kind,
      LocalDate day,
      List<Id<Surface>> surfaces,
      Optional<String> product,
      String pad,
      int minutes) {
    boolean machine = kind == StepKind.CUT || kind == StepKind.POLISH;
    d.steps.add(
        new Step(
            d.id(),
            visit.key() + "-" + order,
            visit.id(),
            order,
            kind,
            day,
            surfaces,
            product.map(p -> d.product(p).id()),
            Optional.empty(),
            product.flatMap(p -> d.product(p).handling().partsWater()),
            pad,
            machine ? "low, then middling" : "",
            machine ? Optional.of(1) : Optional.empty(),
            Optional.of(minutes),
            d.chance(0.1) ? Optional.of(30) : Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            ""));
  }
}
