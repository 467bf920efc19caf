package hullalmanac.core.work;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.InService;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.RecordRules;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WashStrength;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.time.Month;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;

/** A record with one boat that tests put rows in and work on; ids are the same at every run. */
final class Slip {
  static final LocalDate DAY = LocalDate.of(2026, 5, 6);

  final IdSource ids = new IdSource(new Random(11)::nextLong);
  final Boat boat = boat("tern", BoatStatus.ACTIVE);
  private Almanac almanac = Almanac.empty(Business.unnamed());
  private int made;

  Slip() {
    put(boat);
  }

  Almanac almanac() {
    return almanac;
  }

  private String key(String what) {
    return what + "-" + ++made;
  }

  <R extends Row> R put(R row) {
    almanac = almanac.with(Edit.put(row));
    return row;
  }

  /** Makes an edit after holding it against the rules of the record. */
  Almanac apply(Edit edit) {
    Almanac additions = Almanac.empty(Business.unnamed()).with(Edit.put(edit.put()));
    assertThat(RecordRules.problems(almanac.with(Edit.remove(edit.gone())), additions)).isEmpty();
    almanac = almanac.with(edit);
    assertThat(References.missing(almanac)).isEmpty();
    return almanac;
  }

  static Edit ready(Change change) {
    assertThat(change).isInstanceOf(Change.Ready.class);
    return ((Change.Ready) change).edit();
  }

  static List<Problem> refused(Change change) {
    assertThat(change).isInstanceOf(Change.Refused.class);
    return ((Change.Refused) change).problems();
  }

  Almanac apply(Change change) {
    return apply(ready(change));
  }

  Change finishing(Visit visit, LocalDate day) {
    return VisitFinish.finish(almanac, ids, visit.id(), day);
  }

  /** Finishes a visit. */
  Almanac finish(Visit visit, LocalDate day) {
    return apply(finishing(visit, day));
  }

  <R extends Row> R now(List<R> rows, R row) {
    return rows.stream().filter(r -> r.id().equals(row.id())).findFirst().orElseThrow();
  }

  Visit now(Visit visit) {
    return now(almanac.visits(), visit);
  }

  Coat now(Coat coat) {
    return now(almanac.coats(), coat);
  }

  Step now(Step step) {
    return now(almanac.steps(), step);
  }

  List<Coat> serving(Surface surface, LocalDate day) {
    return new InService(almanac.coats()).on(surface.id(), day);
  }

  /** The coats a visit laid on a surface, base first. */
  List<Coat> laid(Visit visit, Surface surface) {
    return almanac.coats().stream()
        .filter(c -> c.visit().equals(Optional.of(visit.id())))
        .filter(c -> c.surface().equals(surface.id()))
        .sorted(Comparator.comparing(c -> c.over().isPresent()))
        .toList();
  }

  Boat boat(String key, BoatStatus status) {
    return new Boat(
        ids.next(),
        key,
        "Arctic Tern",
        BoatType.SLOOP,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        Optional.of(2001),
        Use.WEEKENDS,
        status,
        Optional.empty(),
        "");
  }

  Surface surface(SurfaceKind kind) {
    return put(
        new Surface(
            ids.next(),
            key(kind.code()),
            boat.id(),
            kind,
            Side.BOTH,
            "",
            Finish.GELCOAT,
            Tone.LIGHT,
            kind.usualAttitude(),
            Optional.empty(),
            Past.UNKNOWN,
            false,
            Optional.empty(),
            ""));
  }

  Product product(ProductKind kind) {
    return product(kind, Optional.empty(), false);
  }

  Product product(ProductKind kind, Optional<WashStrength> wash, boolean leavesWax) {
    return put(
        new Product(
            ids.next(),
            key(kind.code()),
            kind.words(),
            kind,
            Optional.empty(),
            false,
            Optional.empty(),
            wash,
            leavesWax,
            false,
            new TreeSet<>(),
            Product.Handling.UNKNOWN,
            ""));
  }

  Bottle bottle(Product product, Optional<LocalDate> useBy, Optional<Integer> leftMl) {
    return put(
        new Bottle(
            ids.next(),
            key("bottle"),
            product.id(),
            "B" + made,
            Optional.empty(),
            useBy,
            Optional.of(500),
            leftMl,
            Optional.empty()));
  }

  Coat coat(Surface surface, Product product, LocalDate laid) {
    return coat(surface, product, laid, Optional.empty(), Optional.empty());
  }

  Coat coat(
      Surface surface,
      Product product,
      LocalDate laid,
      Optional<Coat> over,
      Optional<Coat.Ending> ending) {
    return put(
        new Coat(
            ids.next(),
            key("coat"),
            surface.id(),
            product.id(),
            Optional.of(laid),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            1,
            over.map(Coat::id),
            ending,
            ""));
  }

  Visit planned(LocalDate day, Surface... surfaces) {
    List<Visit.Part> parts =
        Arrays.stream(surfaces)
            .map(s -> new Visit.Part(s.id(), WorkState.PLANNED, Optional.empty(), ""))
            .toList();
    return visit(day, VisitStatus.PLANNED, Optional.empty(), parts);
  }

  Visit visit(
      LocalDate day, VisitStatus status, Optional<Id<CarePlan>> plan, List<Visit.Part> parts) {
    return put(
        new Visit(
            ids.next(),
            key("visit"),
            boat.id(),
            day,
            status,
            VisitWhy.OTHER,
            plan,
            Optional.empty(),
            Handover.NOT_YET,
            parts,
            List.of(),
            ""));
  }

  Step step(Visit visit, StepKind kind, Product product, Surface... surfaces) {
    return step(visit, kind, visit.day(), Optional.of(product), surfaces);
  }

  Step step(Visit visit, StepKind kind, Surface... surfaces) {
    return step(visit, kind, visit.day(), Optional.empty(), surfaces);
  }

  Step step(
      Visit visit, StepKind kind, LocalDate day, Optional<Product> product, Surface... surfaces) {
    int order = (int) almanac.steps().stream().filter(s -> s.visit().equals(visit.id())).count();
    return put(
        new Step(
            ids.next(),
            key("step"),
            visit.id(),
            order + 1,
            kind,
            day,
            Arrays.stream(surfaces).map(Surface::id).toList(),
            product.map(Product::id),
            Optional.empty(),
            Optional.empty(),
            "",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            ""));
  }

  /** A step with another kind, product, passes or bottle than it had. */
  Step change(
      Step s,
      StepKind kind,
      Optional<Product> product,
      Optional<Bottle> bottle,
      Optional<Integer> passes) {
    return put(
        new Step(
            s.id(),
            s.key(),
            s.visit(),
            s.order(),
            kind,
            s.day(),
            s.surfaces(),
            product.map(Product::id),
            bottle.map(Bottle::id),
            s.partsWater(),
            s.pad(),
            s.speed(),
            passes,
            s.minutes(),
            s.helperMinutes(),
            s.timedSince(),
            Optional.empty(),
            s.note()));
  }

  Finding water(Visit visit, Surface surface, LocalDate day, WaterBehaviour seen) {
    return put(
        new Finding(
            ids.next(),
            key("finding"),
            surface.id(),
            Optional.of(visit.id()),
            day,
            SurfaceState.WASHED,
            Entered.GRID,
            new Observation.WaterSeen(seen),
            ""));
  }

  CarePlan plan(int everyWeeks, List<Month> months, LocalDate from, Optional<LocalDate> until) {
    return put(
        new CarePlan(
            ids.next(),
            key("plan"),
            boat.id(),
            "wash down",
            everyWeeks,
            months,
            Optional.empty(),
            from,
            until,
            List.of()));
  }
}
