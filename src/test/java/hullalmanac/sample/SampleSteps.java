package hullalmanac.sample;

import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The steps of the sample's visits. */
final class SampleSteps {
  private final Draft d;

  SampleSteps(Draft draft) {
    d = draft;
  }

  /** Wash, decontaminate, cut where it is chalky, polish, protect. */
  void spring(Visit visit, List<Surface> surfaces, LocalDate day) {
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
    add(
        visit,
        order,
        StepKind.PROTECT,
        day,
        all,
        Optional.empty(),
        "foam, soft",
        d.between(60, 140));
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
            ""));
  }
}
