package hullalmanac.core.list;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.work.NewKeys;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Makes visits of the days that a list names, and coats of products that it names, where a person
 * says on what they were laid. How long a coat lasts is never taken from a list.
 */
final class ListVisits {
  private final ListPlan plan;
  private final Almanac almanac;
  private final Making making;

  /**
   * What rows are made with.
   *
   * @param put where they go
   */
  record Making(IdSource ids, NewKeys keys, List<Row> put) {}

  ListVisits(ListPlan plan, Almanac almanac, Making making) {
    this.plan = plan;
    this.almanac = almanac;
    this.making = making;
  }

  /**
   * Makes visits on the days that a line names; what is in the record already of such a day stays.
   *
   * @return what is to be noted besides, a line each
   */
  List<String> of(Boat boat, Line line, String from) {
    List<String> besides = new ArrayList<>();
    Map<LocalDate, String> byDay = new LinkedHashMap<>();
    line.visits().forEach(w -> byDay.merge(w.day(), w.said(), (a, b) -> a + "\n" + b));
    byDay.forEach(
        (day, said) -> {
          Optional<Visit> there =
              Stream.concat(
                      almanac.visits().stream(),
                      making.put().stream().filter(Visit.class::isInstance).map(Visit.class::cast))
                  .filter(v -> v.boat().equals(boat.id()) && v.day().equals(day))
                  .findFirst();
          if (there.isEmpty()) {
            making.put().add(visit(boat, day, from + "\n" + said));
          } else {
            said.lines().filter(l -> !there.get().note().contains(l)).forEach(besides::add);
          }
        });
    return besides;
  }

  private Visit visit(Boat boat, LocalDate day, String note) {
    return new Visit(
        making.ids().next(),
        making.keys().next(Kind.VISIT, boat.key(), day),
        boat.id(),
        day,
        VisitStatus.DONE,
        VisitWhy.OTHER,
        Optional.empty(),
        Optional.empty(),
        Handover.NOT_YET,
        List.of(),
        List.of(),
        note);
  }

  /** Lays the product that the list names on the surfaces that a person chose, if they did. */
  void coat(Boat boat, Boats.Vessel vessel, List<Surface> surfaces) {
    Set<SurfaceKind> on = plan.coatedSurfaces();
    Optional<Line.Work> work =
        vessel.lines().stream()
            .flatMap(l -> l.visits().stream())
            .filter(w -> plan.protecting(w).isPresent())
            .max(Comparator.comparing(Line.Work::day));
    List<Surface> coated = surfaces.stream().filter(s -> on.contains(s.kind())).toList();
    boolean impossible =
        work.isPresent() && boat.built().map(y -> work.get().day().getYear() < y).orElse(false);
    if (work.isEmpty() || coated.isEmpty() || impossible) {
      return;
    }
    Product product = plan.protecting(work.get()).orElseThrow();
    LocalDate day = work.get().day();
    Visit visit =
        making.put().stream()
            .filter(Visit.class::isInstance)
            .map(Visit.class::cast)
            .filter(v -> v.boat().equals(boat.id()) && v.day().equals(day))
            .findFirst()
            .orElseThrow();
    making.put().remove(visit);
    making
        .put()
        .add(
            With.component(
                visit,
                "surfaces",
                coated.stream()
                    .map(s -> new Visit.Part(s.id(), WorkState.DONE, Optional.of(day), ""))
                    .toList()));
    making.put().add(step(visit, coated, product));
    coated.forEach(s -> making.put().add(coat(visit, s, product)));
  }

  private Step step(Visit visit, List<Surface> coated, Product product) {
    return new Step(
        making.ids().next(),
        making.keys().next(Kind.STEP, visit.key(), StepKind.PROTECT.code()),
        visit.id(),
        1,
        StepKind.PROTECT,
        visit.day(),
        coated.stream().map(Surface::id).toList(),
        Optional.of(product.id()),
        Optional.empty(),
        Optional.empty(),
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  private Coat coat(Visit visit, Surface surface, Product product) {
    return new Coat(
        making.ids().next(),
        making.keys().next(Kind.COAT, surface.key(), product.key(), visit.day()),
        surface.id(),
        product.id(),
        Optional.of(visit.day()),
        Optional.empty(),
        Optional.of(visit.id()),
        Optional.empty(),
        "",
        1,
        Optional.empty(),
        Optional.empty(),
        "From the list " + plan.name());
  }
}
