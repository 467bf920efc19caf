package hullalmanac.core.plan;

import hullalmanac.core.finish.Experience;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Plans;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A sloop of 2014, 9.5 by 3.0 m with a freeboard of 1.1 m, whose light topsides were read at 70
 * with clear chalking; 24.2 m² by rule.
 */
final class Hull {
  static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  static final LocalDate LOOKED = LocalDate.of(2026, 4, 20);
  private final Boatyard yard = new Boatyard();
  private final List<Row> changed = new ArrayList<>();
  final Boat boat;
  final Surface topsides;
  final Surface transom;
  final Product soap;
  final Product polish;
  final Product compound;
  final Product sealant;

  Hull() {
    Boat plain = yard.boat(Use.WEEKENDS);
    boat =
        With.component(
            With.component(
                With.component(
                    With.component(plain, "loa", Optional.of(Length.ofMetres(9.5))),
                    "beam",
                    Optional.of(Length.ofMetres(3.0))),
                "freeboard",
                Optional.of(Length.ofMetres(1.1))),
            "built",
            Optional.of(2014));
    changed.add(boat);
    topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
    transom = yard.surface(boat, SurfaceKind.TRANSOM, Side.BOTH);
    yard.surface(boat, SurfaceKind.NON_SKID, Side.BOTH);
    soap = yard.product(ProductKind.SOAP, null);
    polish = yard.product(ProductKind.POLISH, null);
    compound = yard.product(ProductKind.COMPOUND, null);
    sealant = yard.product(ProductKind.POLYMER_SEALANT, 6.0);
    Visit then = yard.visit(boat, LocalDate.of(2025, 4, 1), VisitStatus.DONE, VisitWhy.PLAN);
    yard.step(then, StepKind.WASH, soap);
    yard.coat(topsides, sealant, LocalDate.of(2025, 4, 1));
    yard.found(topsides, LOOKED, SurfaceState.WASHED, Boatyard.gloss(70.0, 71.0, 69.0));
    yard.found(topsides, LOOKED, SurfaceState.WASHED, new Observation.FingerRub(RubLevel.CLEAR));
  }

  /** A bottle of a product with so much left. */
  Bottle bottle(long id, Product product, int leftMl, LocalDate opened) {
    Bottle bottle =
        new Bottle(
            new Id<>(id),
            "bottle-" + id,
            product.id(),
            "",
            Optional.ofNullable(opened),
            Optional.empty(),
            Optional.of(1000),
            Optional.of(leftMl),
            Optional.empty());
    changed.add(bottle);
    return bottle;
  }

  /** A row with another value of a component. */
  <R extends Record & Row> R set(R row, String component, Object value) {
    R other = With.component(row, component, value);
    changed.add(other);
    return other;
  }

  void trailsOn(Surface surface, LocalDate day) {
    yard.found(surface, day, SurfaceState.WASHED, Boatyard.gloss(80.0, 80.5, 79.5));
  }

  Almanac almanac() {
    Almanac almanac = yard.almanac();
    for (Row row : changed) {
      almanac = almanac.with(Edit.put(row));
    }
    return almanac;
  }

  SurfacePlans plans(Asked asked) {
    Almanac almanac = almanac();
    return SurfacePlans.of(almanac, Experience.of(almanac, TODAY), asked, TODAY);
  }

  static List<Plan> found(SurfacePlans answer) {
    return answer.plans() instanceof Plans.Found found ? found.plans() : List.of();
  }
}
