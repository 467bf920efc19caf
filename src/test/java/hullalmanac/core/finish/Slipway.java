package hullalmanac.core.finish;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
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
import hullalmanac.core.record.With;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Boats on which steps are done and looked at, put together row by row. */
final class Slipway {
  static final LocalDate DAY = LocalDate.of(2026, 4, 10);
  static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  private final Map<Id<?>, Row> rows = new LinkedHashMap<>();
  private long last;

  private <T> Id<T> id() {
    last++;
    return new Id<>(last);
  }

  private String key() {
    return "row-" + last;
  }

  private <R extends Row> R put(R row) {
    rows.put(row.id(), row);
    return row;
  }

  /** A row with another value of a component; what was made of the row before stands. */
  <R extends Record & Row> R set(R row, String component, Object value) {
    return put(With.component(row, component, value));
  }

  /** A sloop of 9.5 by 3.0 m with a freeboard of 1.1 m. */
  Boat boat(int built) {
    return put(
        new Boat(
            id(),
            key(),
            "Wagtail",
            BoatType.SLOOP,
            Optional.of(Length.ofMetres(9.5)),
            Optional.of(Length.ofMetres(3.0)),
            Optional.of(Length.ofMetres(1.1)),
            "",
            Optional.of(built),
            Use.WEEKENDS,
            BoatStatus.ACTIVE,
            Optional.empty(),
            ""));
  }

  Surface surface(Boat boat, SurfaceKind kind, Finish finish, Tone tone) {
    return put(
        new Surface(
            id(),
            key(),
            boat.id(),
            kind,
            Side.BOTH,
            "",
            finish,
            tone,
            kind.usualAttitude(),
            Optional.empty(),
            Past.KNOWN,
            false,
            Optional.empty(),
            ""));
  }

  /** Light topsides of gelcoat; 24.2 m² by rule. */
  Surface topsides(Boat boat) {
    return surface(boat, SurfaceKind.TOPSIDES, Finish.GELCOAT, Tone.LIGHT);
  }

  Product product(ProductKind kind) {
    return put(
        new Product(
            id(),
            key(),
            kind.words(),
            kind,
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            false,
            false,
            new TreeSet<>(),
            Product.Handling.UNKNOWN,
            ""));
  }

  Bottle bottle(Product product, int size, int left) {
    return put(
        new Bottle(
            id(),
            key(),
            product.id(),
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.of(size),
            Optional.of(left),
            Optional.empty()));
  }

  /** A visit that was done. */
  Visit visit(Boat boat, LocalDate day) {
    return put(
        new Visit(
            id(),
            key(),
            boat.id(),
            day,
            VisitStatus.DONE,
            VisitWhy.PLAN,
            Optional.empty(),
            Optional.empty(),
            Handover.NOT_YET,
            List.of(),
            List.of(),
            ""));
  }

  /** A step of one pass without minutes. */
  Step step(Visit visit, StepKind kind, Optional<Product> product, Surface... on) {
    int order = 1 + (int) rows.values().stream().filter(r -> r instanceof Step).count();
    return put(
        new Step(
            id(),
            key(),
            visit.id(),
            order,
            kind,
            visit.day(),
            Arrays.stream(on).map(Surface::id).toList(),
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

  Finding seen(Surface surface, Visit visit, Optional<Moment> moment, Observation seen) {
    return put(
        new Finding(
            id(),
            key(),
            surface.id(),
            Optional.of(visit.id()),
            visit.day(),
            moment,
            SurfaceState.WASHED,
            Entered.GRID,
            seen,
            ""));
  }

  Finding gloss(Surface surface, Visit visit, Moment moment, double... readings) {
    return seen(surface, visit, Optional.of(moment), read(readings));
  }

  static Observation.GlossRead read(double... readings) {
    return new Observation.GlossRead(
        Geometry.DEG_60, Arrays.stream(readings).boxed().toList(), Optional.empty());
  }

  /** A boat polished once from one gloss to another. */
  Surface polished(ProductKind kind, double before, double after) {
    Boat boat = boat(2020);
    Surface topsides = topsides(boat);
    Visit visit = visit(boat, DAY);
    step(visit, StepKind.POLISH, Optional.of(product(kind)), topsides);
    gloss(topsides, visit, Moment.BEFORE, before, before + 1, before - 1);
    gloss(topsides, visit, Moment.AFTER, after, after + 1, after - 1);
    return topsides;
  }

  Almanac almanac() {
    return Almanac.empty(Business.unnamed()).with(Edit.put(new ArrayList<>(rows.values())));
  }

  Experience experience() {
    return Experience.of(almanac(), TODAY);
  }
}
