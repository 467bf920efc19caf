package hullalmanac.core.life;

import static hullalmanac.core.record.WaterBehaviour.BEADS;
import static hullalmanac.core.record.WaterBehaviour.FLAT;
import static hullalmanac.core.record.WaterBehaviour.SHEETS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.fixture.Boatyard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Likelihoods held against the formulas of the model, written out again here. */
class EvidenceReaderTest {
  private final Scene scene = new Scene().afloat();
  private final Coat coat = scene.coated();

  private static double logistic(double life, double dose) {
    return 1 / (1 + Math.exp(-(Math.log(life) - Math.log(dose)) / 0.08));
  }

  private static double good(double life, double dose, double misled) {
    return misled + (1 - 2 * misled) * logistic(life, dose);
  }

  private double dose(int daysOn) {
    return scene.clock().dose(Scene.LAID.plusDays(daysOn));
  }

  /** Holds ln ℓ against a likelihood of the life at every eighth point. */
  private static void says(Evidence evidence, java.util.function.DoubleUnaryOperator likelihood) {
    for (int i = 0; i < LogLife.POINTS; i += 8) {
      double expected = Math.log(likelihood.applyAsDouble(Math.exp(LogLife.at(i))));
      assertThat(evidence.logLikelihood().at(i)).isCloseTo(expected, within(1e-9));
    }
  }

  @Test
  void saysNothingWhereNobodyLooked() {
    Evidence evidence = scene.evidence(coat);
    says(evidence, life -> 1);
    assertThat(evidence.used()).isEmpty();
    assertThat(evidence.metAt()).isEmpty();
  }

  /** ε by the state of the surface and by whose word it is; h is 0.1 but for two touches. */
  @ParameterizedTest
  @CsvSource({
    "DECONTAMINATED, GRID, 0.05, 0.1",
    "WASHED, GRID, 0.15, 0.1",
    "DIRTY, GRID, 0.35, 0.1",
    "WAXY_SOAP, GRID, 0.25, 0.1",
    "DECONTAMINATED, OWNER, 0.30, 0.1",
    "WASHED, OWNER, 0.30, 0.1",
    "DIRTY, OWNER, 0.35, 0.1",
    "WASHED, IMPORTED, 0.15, 0.1",
    "WASHED, TWO_TOUCH, 0.15, 0.5"
  })
  void readsWaterByStateAndByWhoSaysIt(
      SurfaceState state, Entered entered, double misled, double notLooked) {
    scene.water(60, state, BEADS, entered);
    scene.water(90, state, FLAT, entered);
    double d1 = dose(60);
    double d2 = dose(90);
    says(
        scene.evidence(coat),
        life ->
            (1 - notLooked) * good(life, d1, misled) * (1 - good(life, d2, misled))
                + notLooked * 0.02);
  }

  /** One question for all easy answers of a coat: were they real? */
  @Test
  void mixesOverWhetherTheEasyAnswersWereReal() {
    scene.water(40, SurfaceState.WASHED, BEADS, Entered.TWO_TOUCH);
    scene.water(80, SurfaceState.WASHED, SHEETS, Entered.TWO_TOUCH);
    scene.water(120, SurfaceState.WASHED, BEADS, Entered.GRID);
    double d1 = dose(40);
    double d2 = dose(80);
    double d3 = dose(120);
    says(
        scene.evidence(coat),
        life ->
            (0.5 * good(life, d1, 0.15) * good(life, d2, 0.15) + 0.5)
                * (0.9 * good(life, d3, 0.15) + 0.1));
  }

  @Test
  void readsAComplaintAsAnEndNotLongAgo() {
    scene.complaint(200, FLAT);
    double now = dose(200);
    says(
        scene.evidence(coat),
        life ->
            0.9 * (0.15 + 0.70 * (logistic(life, now - 30) - logistic(life, now))) + 0.1 * 0.02);
  }

  @Test
  void readsAComplaintAsAnEndSinceTheLastGoodLook() {
    scene.water(180, SurfaceState.WASHED, BEADS);
    scene.complaint(200, FLAT);
    double good = dose(180);
    double now = dose(200);
    assertThat(now - good).isLessThan(30);
    says(
        scene.evidence(coat),
        life ->
            0.9
                    * good(life, good, 0.15)
                    * (0.15 + 0.70 * (logistic(life, good) - logistic(life, now)))
                + 0.1 * 0.02);
  }

  @Test
  void takesTheCleanestThenTheLatestOfOneLook() {
    scene.water(100, SurfaceState.DIRTY, FLAT);
    Finding washed = scene.water(102, SurfaceState.WASHED, BEADS);
    Finding latest = scene.water(110, SurfaceState.WASHED, FLAT);
    Finding next = scene.water(111, SurfaceState.DIRTY, BEADS);
    Evidence evidence = scene.evidence(coat);
    assertThat(evidence.used()).containsExactly(latest, next);
    assertThat(evidence.unused()).hasSize(2);
    assertThat(evidence.unused())
        .filteredOn(u -> u.finding().equals(washed))
        .extracting(Unused::why)
        .containsExactly("a cleaner or later look within ten days stands for it");
  }

  @ParameterizedTest
  @CsvSource({"DECONTAMINATED, WASHED", "WASHED, WAXY_SOAP", "WASHED, DIRTY", "WAXY_SOAP, DIRTY"})
  void letsACleanerLookStandForALaterOne(SurfaceState cleaner, SurfaceState later) {
    Finding first = scene.water(100, cleaner, BEADS);
    scene.water(105, later, FLAT);
    assertThat(scene.evidence(coat).used()).containsExactly(first);
  }

  @Test
  void readsADullLookAndAHeavyRubAsBare() {
    scene.yard.found(
        scene.topsides, Scene.LAID.plusDays(100), SurfaceState.WASHED, new Observation.EyeScale(4));
    scene.yard.found(
        scene.topsides,
        Scene.LAID.plusDays(130),
        SurfaceState.WASHED,
        new Observation.FingerRub(RubLevel.CLEAR));
    double d1 = dose(100);
    double d2 = dose(130);
    says(
        scene.evidence(coat),
        life -> 0.9 * (1 - good(life, d1, 0.15)) * (1 - good(life, d2, 0.15)) + 0.1 * 0.02 * 0.02);
  }

  @ParameterizedTest
  @EnumSource(
      value = RubLevel.class,
      names = {"NONE", "TRACE"})
  void keepsQuietAboutAFaintRubAndABrightLook(RubLevel level) {
    scene.yard.found(
        scene.topsides,
        Scene.LAID.plusDays(100),
        SurfaceState.WASHED,
        new Observation.FingerRub(level));
    scene.yard.found(
        scene.topsides, Scene.LAID.plusDays(100), SurfaceState.WASHED, new Observation.EyeScale(3));
    Evidence evidence = scene.evidence(coat);
    says(evidence, life -> 1);
    assertThat(evidence.unused()).hasSize(2);
  }

  @Test
  void doesNotTakeTheDayOfLayingForALook() {
    Finding fresh = scene.water(0, SurfaceState.DECONTAMINATED, BEADS);
    Finding soon = scene.water(5, SurfaceState.WASHED, BEADS);
    Evidence evidence = scene.evidence(coat);
    assertThat(evidence.used()).containsExactly(soon);
    assertThat(evidence.unused())
        .containsExactly(new Unused(fresh, "it was seen the day the coat was laid"));
  }

  /** ℓ(L) is nothing below the dose at which it was met, and whole above it. */
  @Test
  void knowsThatACoatMetInServiceWasAliveThen() {
    Coat met = scene.yard.coat(scene.topsides, scene.sealant, Scene.LAID, day(150), null);
    Evidence evidence = scene.evidence(met);
    assertThat(evidence.metAt()).contains(dose(150));
    for (int i = 0; i < LogLife.POINTS; i++) {
      double off = LogLife.at(i) - Math.log(dose(150));
      if (off > LogLife.STEP) {
        assertThat(evidence.logLikelihood().at(i)).isZero();
      } else if (off < -LogLife.STEP) {
        assertThat(evidence.logLikelihood().at(i)).isLessThan(-600);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(EndState.class)
  void readsWhatWasSeenBeforeACoatWasTakenOff(EndState seen) {
    Coat ended =
        scene.yard.end(coat, new Coat.Ending(day(140), CoatEnd.STRIPPED, seen, "paint work"));
    double d = dose(140);
    says(
        scene.evidence(ended),
        life ->
            switch (seen) {
              case BEADS, SHEETS -> 0.9 * good(life, d, 0.15) + 0.1;
              case FLAT -> 0.9 * (1 - good(life, d, 0.15)) + 0.1 * 0.02;
              case NOT_LOOKED -> 1;
            });
  }

  /** Who only ever tapped "fine" in passing is taken to have done so on the last day too. */
  @Test
  void trustsTheLastLookNoMoreThanThoseBefore() {
    scene.yard.found(
        scene.topsides,
        day(60),
        SurfaceState.WASHED,
        Entered.TWO_TOUCH,
        Boatyard.water(BEADS),
        null);
    Coat ended =
        scene.yard.end(coat, new Coat.Ending(day(140), CoatEnd.RENEWED, EndState.BEADS, ""));
    says(
        scene.evidence(ended),
        life -> 0.5 * good(life, dose(60), 0.15) * good(life, dose(140), 0.15) + 0.5);
  }

  @Test
  void remembersTheLastBareLookAtACleanSurface() {
    scene.water(200, SurfaceState.DIRTY, FLAT);
    assertThat(scene.evidence(coat).bareOn()).isEmpty();
    scene.water(220, SurfaceState.WASHED, FLAT);
    assertThat(scene.evidence(coat).bareOn()).contains(day(220));
    scene.water(240, SurfaceState.WASHED, BEADS);
    assertThat(scene.evidence(coat).bareOn()).contains(day(220));
    scene.water(260, SurfaceState.DECONTAMINATED, BEADS);
    assertThat(scene.evidence(coat).bareOn()).isEmpty();
  }

  @Test
  void chartsWhatIsNoLookWithoutReadingIt() {
    scene.yard.found(
        scene.topsides,
        day(100),
        SurfaceState.WASHED,
        new Observation.Staining(hullalmanac.core.record.Amount.SOME));
    Evidence evidence = scene.evidence(coat);
    says(evidence, life -> 1);
    assertThat(evidence.used()).isEmpty();
  }

  private java.time.LocalDate day(int daysOn) {
    return Scene.LAID.plusDays(daysOn);
  }

  private Finding gloss(int daysOn, Double... readings) {
    return scene.yard.found(
        scene.topsides, day(daysOn), SurfaceState.WASHED, Boatyard.gloss(readings));
  }

  private void washed(int daysOn) {
    scene.yard.step(
        scene.yard.visit(scene.boat, day(daysOn), VisitStatus.DONE, VisitWhy.PLAN),
        StepKind.WASH,
        null);
  }

  @Test
  void takesTheFirstGlossAfterAWeekAndAWash() {
    gloss(0, 90.0, 91.0, 92.0);
    Finding settled = gloss(10, 88.0, 88.5, 89.0);
    washed(9);
    FirstGloss first = scene.evidence(coat).firstGloss().orElseThrow();
    assertThat(first).isEqualTo(new FirstGloss(settled, true));
  }

  @Test
  void takesTheBestReadingOfTheDayOfLayingWhereThereIsNoLaterOne() {
    gloss(0, 70.0, 71.0, 72.0);
    Finding polished = gloss(0, 90.0, 91.0, 92.0);
    gloss(10, 88.0, 88.5, 89.0);
    FirstGloss first = scene.evidence(coat).firstGloss().orElseThrow();
    assertThat(first).isEqualTo(new FirstGloss(polished, false));
  }

  @Test
  void letsGlossMoveADateOnlyWithThreeReadingsOnTwoLaterDays() {
    gloss(10, 90.0, 90.5, 91.0);
    gloss(60, 89.0, 88.5, 88.0);
    Finding single = gloss(100, 87.0);
    Evidence tooFew = scene.evidence(coat);
    says(tooFew, life -> 1);
    assertThat(tooFew.unused()).hasSize(2).extracting(Unused::finding).contains(single);
    gloss(140, 86.0, 86.5, 85.5);
    Evidence enough = scene.evidence(coat);
    assertThat(enough.used()).hasSize(4);
    assertThat(enough.logLikelihood().at(200)).isNotZero();
  }

  @Test
  void saysWhyAGlossReadingIsNotUsed() {
    Finding dirty =
        scene.yard.found(
            scene.topsides, day(50), SurfaceState.DIRTY, Boatyard.gloss(70.0, 71.0, 72.0));
    gloss(10, 90.0, 90.5, 91.0);
    Finding otherAngle =
        scene.yard.found(
            scene.topsides,
            day(80),
            SurfaceState.WASHED,
            new Observation.GlossRead(
                hullalmanac.core.record.Geometry.DEG_20,
                java.util.List.of(70.0, 71.0, 72.0),
                java.util.Optional.empty()));
    assertThat(scene.evidence(coat).unused())
        .containsExactlyInAnyOrder(
            new Unused(dirty, "gloss counts only on a washed and dry surface"),
            new Unused(otherAngle, "it was read at another angle than the first reading"));
  }

  @Test
  void doesNotUseGlossWithoutAFirstReading() {
    Finding late = gloss(30, 90.0, 90.5, 91.0);
    Evidence evidence = scene.evidence(coat);
    assertThat(evidence.firstGloss()).isEmpty();
    assertThat(evidence.unused())
        .containsExactly(
            new Unused(late, "no gloss was read within three weeks of laying the coat"));
  }
}
