package hullalmanac.core.life;

import static hullalmanac.core.record.WaterBehaviour.BEADS;
import static hullalmanac.core.record.WaterBehaviour.FLAT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A silica coating with a silica spray over it from day 100 on. */
class TopperTest {
  private final Scene scene = new Scene().afloat();
  private final Product coating = scene.yard.product(ProductKind.SILICA_COATING, 24.0);
  private final Product spray = scene.yard.product(ProductKind.SILICA_SPRAY, 6.0);
  private final Coat base = scene.yard.coat(scene.topsides, coating, Scene.LAID);

  private static LocalDate day(int daysOn) {
    return Scene.LAID.plusDays(daysOn);
  }

  private Coat topped() {
    return scene.yard.coat(scene.topsides, spray, day(100), null, base);
  }

  @Test
  void bothAreInServiceBaseFirst() {
    Coat topper = topped();
    assertThat(scene.forecasts(99)).hasSize(1);
    List<CoatForecast> both = scene.forecasts(110);
    assertThat(both).extracting(CoatForecast::coat).containsExactlyInAnyOrder(base, topper);
    scene.yard.coat(scene.topsides, coating, day(200));
    assertThat(scene.forecasts(200)).hasSize(1);
  }

  @Test
  void letsTheBaseAgeAtHalfRateAndTakesTheWashingForIt() {
    CoatClock bare = scene.clock();
    CoatClock.Spell spell = new CoatClock.Spell(day(100), day(150), day(150));
    CoatClock topped = new CoatClock(bare.surface(), bare.coatClass(), Scene.LAID, List.of(spell));
    double under = bare.dose(day(150)) - bare.dose(day(100));
    assertThat(topped.dose(day(100))).isEqualTo(bare.dose(day(100)));
    assertThat(bare.dose(day(150)) - topped.dose(day(150))).isCloseTo(under / 2, within(1e-9));
    assertThat(topped.dose(day(400)) - topped.dose(day(150)))
        .isCloseTo(bare.dose(day(400)) - bare.dose(day(150)), within(1e-9));
    scene.yard.step(
        scene.yard.visit(scene.boat, day(120), VisitStatus.DONE, VisitWhy.PLAN),
        StepKind.DECONTAMINATE,
        null);
    CoatClock washed =
        new CoatClock(scene.clock().surface(), bare.coatClass(), Scene.LAID, List.of(spell));
    assertThat(washed.dose(day(150))).isCloseTo(topped.dose(day(150)), within(1e-9));
  }

  @Test
  void makesTheBaseLastLonger() {
    LocalDate before = Scene.renewBy(scene.forecast(base, 120));
    topped();
    assertThat(Scene.renewBy(scene.forecast(base, 120))).isAfter(before);
  }

  @Test
  void speaksForItselfInWaterFindings() {
    LocalDate untold = Scene.renewBy(scene.forecast(base, 110));
    Coat topper = topped();
    LocalDate withTopper = Scene.renewBy(scene.forecast(base, 125));
    LocalDate topperAlone = Scene.renewBy(scene.forecast(topper, 125));
    Finding beads = scene.water(120, SurfaceState.WASHED, BEADS);
    CoatForecast f = scene.forecast(base, 125);
    assertThat(f.unused())
        .containsExactly(new Unused(beads, "it speaks of the topper that lay over this coat"));
    assertThat(f.reasons().get(3).facts()).first().isEqualTo("A topper lies over it");
    assertThat(Scene.renewBy(scene.forecast(topper, 125))).isAfter(topperAlone);
    assertThat(withTopper).isAfter(untold);
  }

  /** The look that finds the topper gone says nothing of the base; the next one does. */
  @Test
  void doesNotCallTheBaseBareWhenTheTopperIs() {
    Coat topper = topped();
    scene.water(400, SurfaceState.WASHED, FLAT);
    assertThat(scene.forecast(topper, 405).outcome()).isInstanceOf(Outcome.AlreadyLapsed.class);
    CoatForecast f = scene.forecast(base, 405);
    assertThat(f.outcome()).isInstanceOf(Outcome.Dated.class);
    assertThat(f.reasons().get(3).facts()).first().isEqualTo("Base not seen since 10 July 2025");
    scene.water(420, SurfaceState.WASHED, BEADS);
    CoatForecast seen = scene.forecast(base, 425);
    assertThat(seen.reasons().get(3).facts()).noneMatch(t -> t.contains("not seen since"));
    assertThat(Scene.renewBy(seen)).isAfter(Scene.renewBy(f));
  }

  @Test
  void uncoversTheBaseWhenItIsTakenOff() {
    Coat topper = topped();
    scene.yard.end(topper, new Coat.Ending(day(150), CoatEnd.STRIPPED, EndState.NOT_LOOKED, ""));
    Finding seen = scene.water(160, SurfaceState.WASHED, BEADS);
    CoatForecast f = scene.forecast(base, 170);
    assertThat(f.unused()).extracting(Unused::finding).doesNotContain(seen);
  }

  @Test
  void leavesGlossOfBothOnTheChart() {
    Coat topper = topped();
    Finding gloss =
        scene.yard.found(
            scene.topsides, day(115), SurfaceState.WASHED, Boatyard.gloss(90.0, 90.0, 91.0));
    Unused charted = new Unused(gloss, "gloss is charted only while a topper lies over the coat");
    assertThat(scene.forecast(base, 120).unused()).contains(charted);
    assertThat(scene.forecast(topper, 120).unused()).contains(charted);
  }

  /** A topper of unknown age must not shelter its base for fifteen years. */
  @Test
  void doesNotShelterForEverWhenItsAgeIsUnknown() {
    LocalDate dated = Scene.renewBy(scene.forecast(base, 120));
    scene.yard.coat(scene.topsides, spray, null, day(100), base);
    LocalDate sheltered = Scene.renewBy(scene.forecast(base, 120));
    assertThat(sheltered).isBetween(dated, dated.plusDays(120));
  }
}
