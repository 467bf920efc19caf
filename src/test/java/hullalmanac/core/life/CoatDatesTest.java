package hullalmanac.core.life;

import static hullalmanac.core.record.WaterBehaviour.BEADS;
import static hullalmanac.core.record.WaterBehaviour.FLAT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.With;
import hullalmanac.core.sun.SolarDay;
import hullalmanac.fixture.Boatyard;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoatDatesTest {
  private final Scene scene = new Scene();

  private static LocalDate day(int daysOn) {
    return Scene.LAID.plusDays(daysOn);
  }

  /** The day on which a dose is reached at 30° in open salt water, counted day by day. */
  private static LocalDate openDay(double dose) {
    double sum = 0;
    LocalDate d = Scene.LAID;
    while (sum < dose) {
      sum += 0.85 * 0.55 * new SolarDay(30, d.getDayOfYear()).extraterrestrial() / 17.31248 + 0.15;
      d = d.plusDays(1);
    }
    return d;
  }

  /** Solves the closer sum of {@link ProductLifeTest#predictive} for a dose. */
  private static double dose(double p, double mean) {
    double low = 0;
    double high = 12;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (ProductLifeTest.predictive(middle, mean, 0.10) < p) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.exp(low);
  }

  private static void near(LocalDate actual, LocalDate expected) {
    assertThat(Math.abs(ChronoUnit.DAYS.between(actual, expected)))
        .as("%s against %s", actual, expected)
        .isLessThanOrEqualTo(1);
  }

  /** Label six months less a fifth in ln, by sums written out apart from the program. */
  @Test
  void datesACoatNobodyLookedAt() {
    scene.afloat().coated();
    CoatForecast f = scene.forecast(30);
    Outcome.Dated dated = (Outcome.Dated) f.outcome();
    double mean = Math.log(30.44 * 6) - 0.20;
    near(dated.renewBy(), openDay(dose(0.30, mean)));
    near(dated.early(), openDay(dose(0.10, mean)));
    near(dated.middle().orElseThrow(), openDay(dose(0.50, mean)));
    near(dated.late().orElseThrow(), openDay(dose(0.90, mean)));
    near(f.twentieths().get(5).orElseThrow(), openDay(dose(0.275, mean)));
    assertThat(f.twentieths())
        .hasSize(20)
        .isSortedAccordingTo((a, b) -> a.orElse(LocalDate.MAX).compareTo(b.orElse(LocalDate.MAX)));
    assertThat(dated.workBy()).isEqualTo(dated.renewBy());
    double now = 0;
    for (LocalDate d = Scene.LAID; d.isBefore(day(30)); d = d.plusDays(1)) {
      now += 0.85 * 0.55 * new SolarDay(30, d.getDayOfYear()).extraterrestrial() / 17.31248 + 0.15;
    }
    assertThat(f.lapsedNow().orElseThrow())
        .isCloseTo(ProductLifeTest.predictive(Math.log(now), mean, 0.10), within(1e-3));
  }

  @ParameterizedTest
  @CsvSource({
    "POLYMER_SEALANT, LIGHT, , 0.30",
    "POLYMER_SEALANT, DARK, , 0.20",
    "CARNAUBA, LIGHT, , 0.40",
    "CLEANER_WAX, LIGHT, , 0.40",
    "CARNAUBA, DARK, , 0.20",
    "SILICA_COATING, LIGHT, , 0.30",
    "CARNAUBA, DARK, 0.15, 0.15",
    "SILICA_COATING, LIGHT, 0.05, 0.05"
  })
  void renewsAtTheRiskOfColourKindOrBusiness(
      ProductKind kind, Tone tone, Double own, double expected) {
    Surface surface =
        scene.yard.surface(
            scene.boat, SurfaceKind.TOPSIDES, Side.BOTH, Finish.GELCOAT, tone, false);
    scene.afloat();
    scene.yard.coat(surface, scene.yard.product(kind, 12.0), Scene.LAID);
    Business business = With.component(Business.unnamed(), "risk", Optional.ofNullable(own));
    CoatForecast f = scene.forecast(10, business);
    assertThat(f.risk()).isEqualTo(expected);
    Outcome.Dated dated = (Outcome.Dated) f.outcome();
    assertThat(dated.renewBy().isBefore(dated.early())).isEqualTo(expected < 0.10);
  }

  @Test
  void callsACoatLapsedOnlyWhenSeenBareAndSurely() {
    scene.afloat().coated();
    scene.water(20, SurfaceState.WASHED, FLAT);
    assertThat(scene.forecast(25).outcome()).isInstanceOf(Outcome.Dated.class);
    scene.water(400, SurfaceState.WASHED, FLAT);
    CoatForecast f = scene.forecast(410);
    Outcome.AlreadyLapsed lapsed = (Outcome.AlreadyLapsed) f.outcome();
    assertThat(lapsed.seenOn()).isEqualTo(day(400));
    assertThat(lapsed.middle()).isBefore(day(400));
    assertThat(f.lapsedNow().orElseThrow()).isGreaterThan(0.9);
  }

  @Test
  void doesNotCallACloggedCoatADeadOne() {
    scene.afloat().coated();
    scene.water(400, SurfaceState.DIRTY, FLAT);
    assertThat(scene.forecast(410).outcome()).isInstanceOf(Outcome.Dated.class);
  }

  @Test
  void opensALapsedCoatAgainWhenItBeadsAfterDecontamination() {
    scene.afloat().coated();
    scene.water(400, SurfaceState.WASHED, FLAT);
    scene.water(420, SurfaceState.WASHED, BEADS);
    assertThat(scene.forecast(421).outcome()).isInstanceOf(Outcome.AlreadyLapsed.class);
    scene.water(440, SurfaceState.DECONTAMINATED, BEADS);
    assertThat(scene.forecast(430).outcome()).isInstanceOf(Outcome.AlreadyLapsed.class);
    assertThat(scene.forecast(441).outcome()).isInstanceOf(Outcome.Dated.class);
  }

  @Test
  void knowsOnlyWhatWasKnownOnItsDay() {
    scene.afloat().coated();
    CoatForecast before = scene.forecast(100);
    scene.water(101, SurfaceState.WASHED, FLAT);
    scene.yard.step(
        scene.yard.visit(scene.boat, day(101), VisitStatus.DONE, VisitWhy.PLAN),
        StepKind.DECONTAMINATE,
        null);
    scene.yard.coat(scene.topsides, scene.sealant, day(120));
    assertThat(scene.forecast(100)).isEqualTo(before);
    assertThat(Scene.renewBy(scene.forecast(102))).isBefore(Scene.renewBy(before));
  }

  @Test
  void letsAnAcidEndAWax() {
    scene.afloat();
    Product wax = scene.yard.product(ProductKind.CARNAUBA, 3.0);
    scene.yard.coat(scene.topsides, wax, Scene.LAID);
    scene.yard.step(
        scene.yard.visit(scene.boat, day(20), VisitStatus.DONE, VisitWhy.PLAN),
        StepKind.DECONTAMINATE,
        null);
    CoatForecast f = scene.forecast(22);
    assertThat(f.lapsedNow().orElseThrow()).isGreaterThan(0.99);
    assertThat(Scene.renewBy(f)).isEqualTo(day(21));
  }

  @Test
  void goesNotPastTheLimitOfTheLabel() {
    scene.afloat();
    Product limited = scene.yard.product(ProductKind.SILICA_COATING, 24.0, 6.0, null);
    scene.yard.coat(scene.topsides, limited, Scene.LAID);
    LocalDate limit = day((int) Math.round(6 * 30.44));
    CoatForecast f = scene.forecast(10);
    Outcome.Dated dated = (Outcome.Dated) f.outcome();
    assertThat(dated.renewBy()).isEqualTo(limit);
    assertThat(dated.late()).contains(limit);
    assertThat(f.reasons().get(1).renewBy()).contains(limit);
    assertThat(scene.forecast(200).lapsedNow()).contains(1.0);
  }

  @Test
  void givesNoDateBeyondFifteenYears() {
    scene.yard.berth(scene.boat, scene.harbour, Cover.SHED, Water.ASHORE, Scene.LAID);
    Product lasting = scene.yard.product(ProductKind.SILICA_COATING, 60.0);
    scene.yard.coat(scene.topsides, lasting, Scene.LAID);
    CoatForecast f = scene.forecast(10);
    assertThat(f.outcome()).isInstanceOf(Outcome.TooFarAhead.class);
    assertThat(f.twentieths().get(19)).isEmpty();
  }

  @Test
  void takesNoDateFromALimitBeyondFifteenYears() {
    scene.yard.berth(scene.boat, scene.harbour, Cover.SHED, Water.ASHORE, Scene.LAID);
    Product lasting = scene.yard.product(ProductKind.SILICA_COATING, 60.0, 200.0, null);
    scene.yard.coat(scene.topsides, lasting, Scene.LAID);
    assertThat(scene.forecast(10).outcome()).isInstanceOf(Outcome.TooFarAhead.class);
  }

  @Test
  void leavesOutAMiddleThatLiesTooFarAhead() {
    scene.yard.berth(scene.boat, scene.harbour, Cover.SHED, Water.ASHORE, Scene.LAID);
    Product lasting = scene.yard.product(ProductKind.SILICA_COATING, 22.0);
    scene.yard.coat(scene.topsides, lasting, Scene.LAID);
    Outcome.Dated dated = (Outcome.Dated) scene.forecast(10).outcome();
    assertThat(dated.renewBy()).isBefore(day(10).plusYears(15));
    assertThat(dated.middle()).isEmpty();
    assertThat(dated.late()).isEmpty();
  }

  @Test
  void learnsFromACoatMetInServiceThatItWasAlive() {
    scene.afloat().coated();
    LocalDate plain = Scene.middle(scene.forecast(160));
    Scene other = new Scene().afloat();
    other.yard.coat(other.topsides, other.sealant, Scene.LAID, day(150), null);
    CoatForecast met = other.forecast(160);
    assertThat(Scene.middle(met)).isAfter(plain);
    assertThat(((Outcome.Dated) met.outcome()).early()).isAfter(day(150));
  }

  @Test
  void dividesAComplaintFromAPlainBareLook() {
    scene.afloat().coated();
    scene.complaint(150, FLAT);
    Scene other = new Scene().afloat();
    other.coated();
    other.water(150, SurfaceState.WASHED, FLAT);
    assertThat(Scene.middle(scene.forecast(151))).isAfter(Scene.middle(other.forecast(151)));
  }

  @Test
  void givesItsReasonsInOrderEachWithItsDate() {
    scene.afloat().coated();
    scene.water(90, SurfaceState.WASHED, BEADS);
    CoatForecast f = scene.forecast(100);
    assertThat(f.reasons())
        .extracting(Reason::stage)
        .containsExactly(
            Reason.Stage.LABEL, Reason.Stage.RECORD, Reason.Stage.BERTH, Reason.Stage.FINDINGS);
    double mean = Math.log(30.44 * 6) - 0.20;
    near(f.reasons().get(0).renewBy().orElseThrow(), day((int) Math.round(6 * 30.44)));
    near(f.reasons().get(1).renewBy().orElseThrow(), day((int) Math.round(dose(0.30, mean))));
    near(f.reasons().get(2).renewBy().orElseThrow(), openDay(dose(0.30, mean)));
    assertThat(f.reasons().get(3).renewBy()).contains(Scene.renewBy(f));
    assertThat(f.reasons().get(0).facts()).containsExactly("The label says 6 months");
    assertThat(f.reasons().get(2).facts()).containsExactly("Open, salt water");
    assertThat(f.reasons().get(3).facts()).containsExactly("Water beaded on 30 June 2025 (washed)");
    assertThat(f.reasons())
        .flatExtracting(Reason::facts)
        .noneMatch(t -> t.matches(".*(exposure|dose|check|call-back|sigma| q ).*"));
  }

  @ParameterizedTest
  @CsvSource({"TEAK, 9", "CLEAR_VINYL, 1.5", "CANVAS, 9", "GLASS, 2"})
  void goesByAPlainIntervalWhereWeatherDoesNotDecide(Finish finish, double months) {
    Surface surface =
        scene.yard.surface(scene.boat, SurfaceKind.FOREDECK, Side.BOTH, finish, Tone.LIGHT, false);
    scene.yard.coat(surface, scene.sealant, Scene.LAID);
    CoatForecast f = scene.forecast(10);
    assertThat(f.outcome())
        .isEqualTo(
            new Outcome.NotForecast(
                Outcome.NotForecast.Reason.PLAIN_INTERVAL,
                Optional.of(day((int) Math.round(months * 30.44)))));
    assertThat(f.lapsedNow()).isEmpty();
    assertThat(f.reasons()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"VARNISH, FOREDECK", "UPHOLSTERY, COCKPIT", "GELCOAT, BOTTOM"})
  void saysWhereThereIsNeitherForecastNorInterval(Finish finish, SurfaceKind kind) {
    Surface surface = scene.yard.surface(scene.boat, kind, Side.BOTH, finish, Tone.LIGHT, false);
    scene.yard.coat(surface, scene.sealant, Scene.LAID);
    assertThat(scene.forecast(10).outcome())
        .isEqualTo(
            new Outcome.NotForecast(Outcome.NotForecast.Reason.NO_INTERVAL, Optional.empty()));
  }

  @Test
  void saysWhyACoatCannotBeForecast() {
    Coat unknown = scene.yard.coat(scene.topsides, scene.sealant, null, Scene.LAID, null);
    assertThat(reason(scene.forecast(unknown, 5)))
        .isEqualTo(Outcome.NotForecast.Reason.DATE_UNKNOWN);
    Coat noBerth = scene.yard.coat(scene.topsides, scene.sealant, day(10));
    assertThat(reason(scene.forecast(noBerth, 20))).isEqualTo(Outcome.NotForecast.Reason.NO_BERTH);
    scene.yard.berth(scene.boat, scene.harbour, Cover.OPEN, Water.SALT, day(42));
    assertThat(reason(scene.forecast(noBerth, 50))).isEqualTo(Outcome.NotForecast.Reason.NO_BERTH);
    Coat justKnown = scene.yard.coat(scene.topsides, scene.sealant, day(11));
    assertThat(scene.forecast(justKnown, 50).outcome()).isInstanceOf(Outcome.Dated.class);
    Product soap = scene.yard.product(ProductKind.SOAP, null);
    Coat soaped = scene.yard.coat(scene.topsides, soap, day(60));
    assertThat(reason(scene.forecast(soaped, 61))).isEqualTo(Outcome.NotForecast.Reason.NOT_A_COAT);
  }

  private static Outcome.NotForecast.Reason reason(CoatForecast f) {
    return ((Outcome.NotForecast) f.outcome()).reason();
  }

  @Test
  void countsACoatInServiceUntilItEndsOrAnotherIsLaid() {
    scene.afloat();
    Coat first = scene.coated();
    assertThat(scene.forecasts(-1)).isEmpty();
    assertThat(scene.forecasts(0)).hasSize(1);
    scene.yard.step(
        scene.yard.visit(scene.boat, day(50), VisitStatus.DONE, VisitWhy.PLAN), StepKind.CUT, null);
    assertThat(scene.forecasts(60)).extracting(CoatForecast::coat).containsExactly(first);
    Coat second = scene.yard.coat(scene.topsides, scene.sealant, day(100));
    assertThat(scene.forecasts(99)).extracting(CoatForecast::coat).containsExactly(first);
    assertThat(scene.forecasts(100)).extracting(CoatForecast::coat).containsExactly(second);
    scene.yard.end(
        second, new Coat.Ending(day(120), CoatEnd.STRIPPED, EndState.NOT_LOOKED, "painted"));
    assertThat(scene.forecasts(119)).hasSize(1);
    assertThat(scene.forecasts(120)).isEmpty();
  }

  /** Surfaces due within 45 days of the first of them are one thing to tell. */
  @Test
  void joinsWhatFallsDueTogether() {
    scene.afloat().coated();
    Surface transom = scene.yard.surface(scene.boat, SurfaceKind.TRANSOM, Side.BOTH);
    scene.yard.coat(transom, scene.sealant, Scene.LAID);
    Surface deck = scene.yard.surface(scene.boat, SurfaceKind.FOREDECK, Side.BOTH);
    Product lasting = scene.yard.product(ProductKind.SILICA_COATING, 24.0);
    scene.yard.coat(deck, lasting, Scene.LAID);
    Forecaster forecaster = new Forecaster(scene.yard.almanac(), day(30));
    List<BoatDue> due = forecaster.byBoat(forecaster.inService());
    assertThat(due).hasSize(2);
    assertThat(due.get(0).coats())
        .extracting(f -> f.surface().kind())
        .containsExactly(SurfaceKind.TRANSOM, SurfaceKind.TOPSIDES);
    assertThat(due.get(0).early()).isEqualTo(due.get(0).coats().get(0).early());
    assertThat(due.get(1).coats()).hasSize(1);
  }

  /** G = G₀ · 0.93^(D/L), a point a week from the first reading to a year ahead. */
  @Test
  void drawsGlossFromTheFirstReadingOn() {
    scene.afloat().coated();
    scene.yard.found(
        scene.topsides, day(10), SurfaceState.WASHED, Boatyard.gloss(90.0, 90.0, 90.0));
    CoatForecast f = scene.forecast(60);
    List<GlossPoint> gloss = f.gloss();
    assertThat(gloss.get(0).day()).isEqualTo(day(10));
    assertThat(gloss.get(0).middle()).isCloseTo(90, within(1e-9));
    assertThat(gloss.get(1).day()).isEqualTo(day(17));
    assertThat(gloss.get(gloss.size() - 1).day())
        .isBetween(day(60).plusYears(1).minusDays(6), day(60).plusYears(1));
    GlossPoint later = gloss.get(20);
    double dose = scene.clock().dose(later.day()) - scene.clock().dose(day(10));
    double life = dose(0.50, Math.log(30.44 * 6) - 0.20);
    assertThat(later.middle()).isCloseTo(90 * Math.pow(0.93, dose / life), within(0.02));
    assertThat(later.low80()).isLessThan(later.low50());
    assertThat(later.low50()).isLessThan(later.middle());
    assertThat(later.high50()).isBetween(later.middle(), later.high80());
  }

  @Test
  void forecastsTwoThousandCoatsInSeconds() {
    Boatyard yard = new Boatyard();
    Product sealant = yard.product(ProductKind.POLYMER_SEALANT, 6.0);
    List<hullalmanac.core.record.Harbour> harbours = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      harbours.add(yard.harbour(48 + i));
    }
    for (int i = 0; i < 200; i++) {
      Boat boat = yard.boat(Use.WEEKENDS);
      yard.berth(boat, harbours.get(i % 4), Cover.OPEN, Water.SALT, Scene.LAID);
      yard.layUp(boat, harbours.get(i % 4), Cover.SHRINK_WRAP, day(200), day(350), null);
      for (int k = 0; k < 10; k++) {
        Surface surface = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
        yard.coat(surface, sealant, Scene.LAID);
        yard.found(surface, day(100), SurfaceState.WASHED, Boatyard.water(BEADS));
        yard.found(surface, day(300), SurfaceState.WASHED, Boatyard.water(FLAT));
      }
    }
    Forecaster forecaster = new Forecaster(yard.almanac(), day(400));
    List<CoatForecast> forecasts =
        Assertions.assertTimeout(Duration.ofSeconds(20), () -> forecaster.inService());
    assertThat(forecasts).hasSize(2000);
  }
}
