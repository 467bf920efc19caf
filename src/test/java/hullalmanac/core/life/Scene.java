package hullalmanac.core.life;

import hullalmanac.core.exposure.Clocks;
import hullalmanac.core.exposure.WearPractice;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.List;

/** A boat in open salt water at 30° with light topsides and a sealant of six months' label. */
final class Scene {
  static final LocalDate LAID = LocalDate.of(2025, 4, 1);

  final Boatyard yard = new Boatyard();
  final Harbour harbour = yard.harbour(30);
  final Boat boat = yard.boat(Use.WEEKENDS);
  final Surface topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
  final Product sealant = yard.product(ProductKind.POLYMER_SEALANT, 6.0);

  /** The boat lies in the open from long before. */
  Scene afloat() {
    yard.berth(boat, harbour, Cover.OPEN, Water.SALT, LAID.minusYears(2));
    return this;
  }

  Coat coated() {
    return yard.coat(topsides, sealant, LAID);
  }

  Finding water(int daysOn, SurfaceState state, WaterBehaviour behaviour) {
    return yard.found(topsides, LAID.plusDays(daysOn), state, Boatyard.water(behaviour));
  }

  Finding water(int daysOn, SurfaceState state, WaterBehaviour behaviour, Entered entered) {
    LocalDate day = LAID.plusDays(daysOn);
    return yard.found(topsides, day, state, entered, Boatyard.water(behaviour), null);
  }

  Finding complaint(int daysOn, WaterBehaviour behaviour) {
    LocalDate day = LAID.plusDays(daysOn);
    Visit visit = yard.visit(boat, day, VisitStatus.DONE, VisitWhy.COMPLAINT);
    return yard.found(
        topsides, day, SurfaceState.WASHED, Entered.GRID, Boatyard.water(behaviour), visit);
  }

  List<CoatForecast> forecasts(int daysOn) {
    return new Forecaster(yard.almanac(), LAID.plusDays(daysOn)).inService();
  }

  /** The forecast of the only coat in service. */
  CoatForecast forecast(int daysOn) {
    return only(forecasts(daysOn));
  }

  CoatForecast forecast(int daysOn, Business business) {
    return only(new Forecaster(yard.almanac(business), LAID.plusDays(daysOn)).inService());
  }

  CoatForecast forecast(Coat coat, int daysOn) {
    return only(forecasts(daysOn).stream().filter(f -> f.coat().id().equals(coat.id())).toList());
  }

  private static CoatForecast only(List<CoatForecast> forecasts) {
    if (forecasts.size() != 1) {
      throw new IllegalStateException("one coat in service was expected, not " + forecasts.size());
    }
    return forecasts.get(0);
  }

  /** The clock of a sealant without toppers. */
  CoatClock clock() {
    Clocks.Days days = new Clocks.Days(LAID.minusYears(2), LAID.plusYears(5), LAID.plusYears(20));
    return new CoatClock(
        new Clocks(yard.almanac(), WearPractice.usual(), days).of(topsides).orElseThrow(),
        sealant.kind().coatClass().orElseThrow(),
        LAID,
        List.of());
  }

  /** What the findings so far say of a coat, read two years on. */
  Evidence evidence(Coat coat) {
    List<Finding> findings =
        yard.almanac().findings().stream()
            .sorted(java.util.Comparator.comparing(Finding::day))
            .toList();
    return EvidenceReader.read(
        coat, clock(), findings, this::why, LifePractice.STANDARD, LAID.plusYears(2));
  }

  private VisitWhy why(Finding f) {
    return f.visit()
        .flatMap(id -> yard.almanac().visits().stream().filter(v -> v.id().equals(id)).findFirst())
        .map(Visit::why)
        .orElse(VisitWhy.OTHER);
  }

  static LocalDate renewBy(CoatForecast f) {
    return ((Outcome.Dated) f.outcome()).renewBy();
  }

  static LocalDate middle(CoatForecast f) {
    return ((Outcome.Dated) f.outcome()).middle().orElseThrow();
  }
}
