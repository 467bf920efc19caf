package hullalmanac.core.supply;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Past;
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
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;

/**
 * A boat of 10 by 3 m with a freeboard of 1 m, and bottles. Topsides are 2 · 1 · (10 + 3) − 3 · 1 =
 * 23 m², the transom 3 m², the foredeck 0.30 · 0.75 · 10 · 3 = 6.75 m²; windows have no rule.
 */
final class Locker {
  static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  final IdSource ids = new IdSource(new Random(5)::nextLong);
  private Almanac almanac = Almanac.empty(Business.unnamed());
  private int made;
  final Boat boat =
      put(
          new Boat(
              ids.next(),
              "dunnock",
              "Dunnock",
              BoatType.SLOOP,
              Optional.of(Length.ofMetres(10)),
              Optional.of(Length.ofMetres(3)),
              Optional.of(Length.ofMetres(1)),
              "",
              Optional.of(2015),
              Use.WEEKENDS,
              BoatStatus.ACTIVE,
              Optional.empty(),
              ""));
  final Surface topsides = surface(SurfaceKind.TOPSIDES);
  final Surface transom = surface(SurfaceKind.TRANSOM);
  final Surface windows = surface(SurfaceKind.WINDOWS);

  Almanac almanac() {
    return almanac;
  }

  <R extends Row> R put(R row) {
    almanac = almanac.with(Edit.put(row));
    return row;
  }

  void apply(Edit edit) {
    almanac = almanac.with(edit);
  }

  void back(Almanac before) {
    almanac = before;
  }

  <R extends Record & Row> R set(R row, String component, Object value) {
    return put(With.component(row, component, value));
  }

  private String key(String what) {
    made++;
    return what + "-" + made;
  }

  private Surface surface(SurfaceKind kind) {
    return put(
        new Surface(
            ids.next(),
            key("surface"),
            boat.id(),
            kind,
            Side.BOTH,
            "",
            Finish.GELCOAT,
            Tone.LIGHT,
            kind.usualAttitude(),
            Optional.empty(),
            Past.KNOWN,
            false,
            Optional.empty(),
            ""));
  }

  Product product(ProductKind kind, Product.Handling handling) {
    return put(
        new Product(
            ids.next(),
            key("product"),
            kind.words(),
            kind,
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            false,
            false,
            new TreeSet<>(),
            handling,
            ""));
  }

  Product product(ProductKind kind) {
    return product(kind, Product.Handling.UNKNOWN);
  }

  /** A bottle of a litre, opened on a day and looked at on another. */
  Bottle bottle(
      Product product,
      Optional<LocalDate> opened,
      Optional<Integer> leftMl,
      Optional<LocalDate> leftOn) {
    return put(
        new Bottle(
            ids.next(),
            key("bottle"),
            product.id(),
            "B" + made,
            opened,
            Optional.empty(),
            Optional.of(1000),
            leftMl,
            leftOn));
  }

  Visit visit(LocalDate day, VisitStatus status, Surface... surfaces) {
    WorkState state = status == VisitStatus.DONE ? WorkState.DONE : WorkState.PLANNED;
    return put(
        new Visit(
            ids.next(),
            key("visit"),
            boat.id(),
            day,
            status,
            VisitWhy.OTHER,
            Optional.empty(),
            Optional.empty(),
            Handover.NOT_YET,
            Arrays.stream(surfaces)
                .map(
                    s ->
                        new Visit.Part(
                            s.id(),
                            state,
                            state == WorkState.DONE ? Optional.of(day) : Optional.empty(),
                            ""))
                .toList(),
            List.of(),
            ""));
  }

  Step step(Visit visit, StepKind kind, Product product, Optional<Id<Bottle>> bottle, int passes) {
    return put(
        new Step(
            ids.next(),
            key("step"),
            visit.id(),
            (int) almanac.steps().stream().filter(s -> s.visit().equals(visit.id())).count() + 1,
            kind,
            visit.day(),
            visit.surfaces().stream().map(Visit.Part::surface).toList(),
            Optional.of(product.id()),
            bottle,
            Optional.empty(),
            "",
            "",
            Optional.of(passes),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            ""));
  }

  Supplies supplies(LocalDate until) {
    return Supplies.of(almanac, TODAY, until);
  }

  BottleLeft left(Bottle bottle) {
    return supplies(TODAY.plusDays(7)).bottles().stream()
        .filter(b -> b.bottle().id().equals(bottle.id()))
        .findFirst()
        .orElseThrow();
  }
}
