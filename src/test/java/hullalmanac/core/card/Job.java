package hullalmanac.core.card;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** A boat with one planned visit, put together row by row. */
final class Job {
  static final LocalDate DAY = LocalDate.of(2026, 5, 4);
  final Boatyard yard = new Boatyard();
  final Boat boat = yard.boat(Use.WEEKENDS);
  final Surface topsides = surface(SurfaceKind.TOPSIDES, Finish.GELCOAT);
  final Visit visit = yard.visit(boat, DAY, VisitStatus.PLANNED, VisitWhy.PLAN);
  private final List<Row> changed = new ArrayList<>();

  Surface surface(SurfaceKind kind, Finish finish) {
    return yard.surface(boat, kind, Side.BOTH, finish, Tone.LIGHT, false);
  }

  Product product(ProductKind kind, Hazard... hazards) {
    return set(yard.product(kind, null), "hazards", new TreeSet<>(List.of(hazards)));
  }

  Step step(StepKind kind, Product product, Surface... where) {
    return yard.step(visit, kind, product, where);
  }

  <R extends Record & Row> R set(R row, String component, Object value) {
    R other = With.component(row, component, value);
    changed.add(other);
    return other;
  }

  Almanac almanac() {
    Almanac almanac = yard.almanac();
    for (Row row : changed) {
      almanac = almanac.with(Edit.put(row));
    }
    return almanac;
  }

  JobCard card() {
    return JobCard.of(almanac(), visit.id()).orElseThrow();
  }

  /** What stops a step. */
  List<Stop> stops(Step step) {
    return card().steps().stream()
        .filter(s -> s.step().id().equals(step.id()))
        .findFirst()
        .orElseThrow()
        .stops();
  }

  List<Stop.Rule> rules(Step step) {
    return stops(step).stream().map(Stop::rule).toList();
  }
}
