package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ExperienceTest {
  private final Slipway slip = new Slipway();

  private Experience.Learned law(Stage stage) {
    return slip.experience().law(stage, Finish.GELCOAT, Tone.LIGHT);
  }

  /** One visit to topsides with one polish, and what is read before and after it. */
  @Nested
  class PairsOfReadings {
    private final Boat boat = slip.boat(2022);
    private final Surface topsides = slip.topsides(boat);
    private final Visit visit = slip.visit(boat, Slipway.DAY);
    private final Step polish =
        slip.step(visit, StepKind.POLISH, Optional.of(slip.product(ProductKind.POLISH)), topsides);
    private final Finding before = slip.gloss(topsides, visit, Moment.BEFORE, 70, 71, 69);
    private final Finding after = slip.gloss(topsides, visit, Moment.AFTER, 86, 87, 85);

    private boolean teaches() {
      return !law(Stage.FINISHING).origin().equals(Origin.STARTER);
    }

    @Test
    void teachTheStageBetween() {
      Experience.Learned learned = law(Stage.FINISHING);
      assertThat(learned.origin().words()).isEqualTo("from your last boat");
      assertThat(learned.law().lnQ()).isLessThan(Math.log(0.55));
      Pair pair = new Pair(new Pair.Reading(70, sd(70)), new Pair.Reading(86, sd(86)), 1, 90, 1);
      assertThat(learned.law())
          .isEqualTo(
              GlossLaw.starter(FinishPractice.STANDARD, Stage.FINISHING, Tone.LIGHT)
                  .taught(List.of(pair), FinishPractice.BETWEEN_SURFACES));
      assertThat(law(Stage.ONE_STEP).origin()).isEqualTo(Origin.STARTER);
      assertThat(slip.experience().law(Stage.FINISHING, Finish.GELCOAT, Tone.DARK).origin())
          .isEqualTo(Origin.STARTER);
      assertThat(
              slip.experience()
                  .law(Stage.FINISHING, Finish.CLEAR_OVER_METALLIC, Tone.LIGHT)
                  .origin())
          .isEqualTo(Origin.STARTER);
    }

    /** 2.5 % beside a scatter of one unit over the root of three. */
    private static double sd(double gloss) {
      return Math.hypot(0.025 * gloss, 1 / Math.sqrt(3));
    }

    @Test
    void countOnceAVisitHoweverManySurfaces() {
      Experience.Learned one = law(Stage.FINISHING);
      slip.set(polish, "surfaces", List.of());
      Surface transom = slip.surface(boat, SurfaceKind.TRANSOM, Finish.GELCOAT, Tone.LIGHT);
      slip.gloss(transom, visit, Moment.BEFORE, 70, 71, 69);
      slip.gloss(transom, visit, Moment.AFTER, 86, 87, 85);
      Experience.Learned two = law(Stage.FINISHING);
      assertThat(two.origin()).isEqualTo(one.origin());
      assertThat(two.law().lnQ()).isCloseTo(one.law().lnQ(), within(1e-9));
      assertThat(two.law().spread().lnQ()).isCloseTo(one.law().spread().lnQ(), within(1e-9));
    }

    @Test
    void countPassesOfOneStep() {
      slip.set(polish, "passes", Optional.of(2));
      double two = law(Stage.FINISHING).law().lnQ();
      slip.set(polish, "passes", Optional.of(1));
      assertThat(two).isGreaterThan(law(Stage.FINISHING).law().lnQ());
    }

    @Test
    void teachNothingWhenTheDayAloneCannotTellWhichCameFirst() {
      slip.set(before, "moment", Optional.empty());
      assertThat(teaches()).isFalse();
    }

    @Test
    void areToldApartByTheirDays() {
      slip.set(slip.set(before, "moment", Optional.empty()), "day", Slipway.DAY.minusDays(1));
      slip.set(slip.set(after, "moment", Optional.empty()), "day", Slipway.DAY.plusDays(2));
      assertThat(teaches()).isTrue();
    }

    @Test
    void teachNothingWhenReadLongAfter() {
      slip.set(after, "day", Slipway.DAY.plusDays(15));
      assertThat(teaches()).isFalse();
    }

    @Test
    void teachNothingWhenWhatWasSaidGainsaysTheDays() {
      slip.set(before, "day", Slipway.DAY.plusDays(1));
      assertThat(teaches()).isFalse();
    }

    @Test
    void teachNothingAcrossAnotherStage() {
      slip.step(visit, StepKind.CUT, Optional.of(slip.product(ProductKind.COMPOUND)), topsides);
      assertThat(teaches()).isFalse();
      assertThat(law(Stage.MEDIUM).origin()).isEqualTo(Origin.STARTER);
    }

    @Test
    void teachNothingAcrossACutOfWhichNobodySaidWithWhat() {
      slip.step(visit, StepKind.CUT, Optional.empty(), topsides);
      assertThat(teaches()).isFalse();
    }

    @Test
    void teachNothingWhenThePolishIsNotNamed() {
      slip.set(polish, "product", Optional.empty());
      assertThat(teaches()).isFalse();
    }

    @Test
    void teachWhatLiesBetweenEachTwoOfThreeReadings() {
      slip.set(after, "day", Slipway.DAY.plusDays(3));
      Step cut =
          slip.step(visit, StepKind.CUT, Optional.of(slip.product(ProductKind.COMPOUND)), topsides);
      slip.set(cut, "day", Slipway.DAY.minusDays(2));
      slip.set(before, "day", Slipway.DAY.minusDays(2));
      Finding middle = slip.gloss(topsides, visit, Moment.BEFORE, 80, 81, 79);
      slip.set(slip.set(middle, "moment", Optional.empty()), "day", Slipway.DAY.minusDays(1));
      assertThat(law(Stage.MEDIUM).origin().boats()).isEqualTo(1);
      assertThat(law(Stage.FINISHING).origin().boats()).isEqualTo(1);
    }

    @Test
    void teachNothingOnASoiledSurface() {
      slip.set(before, "state", SurfaceState.DIRTY);
      assertThat(teaches()).isFalse();
    }

    /** ISO 2813 and ASTM D523: values at other angles are not interchangeable. */
    @Test
    void teachNothingAtAnotherAngle() {
      slip.set(
          before,
          "seen",
          new Observation.GlossRead(Geometry.DEG_20, List.of(60.0, 61.0, 59.0), Optional.empty()));
      assertThat(teaches()).isFalse();
    }

    @Test
    void teachNothingWithTwoMeters() {
      slip.set(before, "seen.meter", Optional.of("pocket meter"));
      assertThat(teaches()).isTrue();
      slip.set(after, "seen.meter", Optional.of("other meter"));
      assertThat(teaches()).isFalse();
    }

    @Test
    void teachNothingAsTheOwnersWord() {
      slip.set(before, "entered", Entered.OWNER);
      assertThat(teaches()).isFalse();
    }

    @Test
    void teachNothingOfWhatWasOnlyPlannedOrLeft() {
      slip.set(
          visit,
          "surfaces",
          List.of(new Visit.Part(topsides.id(), WorkState.LEFT, Optional.empty(), "")));
      assertThat(teaches()).isFalse();
      slip.set(slip.set(visit, "surfaces", List.of()), "status", VisitStatus.PLANNED);
      assertThat(teaches()).isFalse();
    }

    @Test
    void teachNothingBeforeTheirDayHasCome() {
      assertThat(
              Experience.of(slip.almanac(), Slipway.DAY.minusDays(1))
                  .law(Stage.FINISHING, Finish.GELCOAT, Tone.LIGHT)
                  .origin())
          .isEqualTo(Origin.STARTER);
    }
  }

  @Test
  void aPaperAndItsCompoundAreOne() {
    Boat boat = slip.boat(2022);
    Surface topsides = slip.topsides(boat);
    Visit visit = slip.visit(boat, Slipway.DAY);
    slip.step(
        visit, StepKind.OTHER, Optional.of(slip.product(ProductKind.SANDPAPER_P1500)), topsides);
    slip.step(visit, StepKind.CUT, Optional.of(slip.product(ProductKind.HEAVY_COMPOUND)), topsides);
    slip.gloss(topsides, visit, Moment.BEFORE, 40, 41, 39);
    slip.gloss(topsides, visit, Moment.AFTER, 78, 79, 77);
    assertThat(law(Stage.SAND_P800).origin().boats()).isEqualTo(1);
    assertThat(law(Stage.HEAVY).origin()).isEqualTo(Origin.STARTER);
  }

  @Test
  void countsBoatsAndComesCloserToWhatTheyShow() {
    for (int i = 0; i < 14; i++) {
      slip.polished(ProductKind.ONE_STEP_POLISH, 55 + 2 * i, 80 - 0.5 * (80 - 55 - 2 * i));
    }
    Experience.Learned learned = law(Stage.ONE_STEP);
    assertThat(learned.origin().words()).isEqualTo("from your last 14 boats");
    assertThat(Math.exp(learned.law().lnQ())).isBetween(0.45, 0.62);
    assertThat(learned.law().ceiling()).isBetween(79.0, 87.0);
  }

  /** Minutes and millilitres for a square metre, of topsides of 24.2 m² by rule. */
  @Nested
  class Rating {
    private final Boat boat = slip.boat(2022);
    private final Surface topsides = slip.topsides(boat);
    private final Visit visit = slip.visit(boat, Slipway.DAY);
    private final Product compound = slip.product(ProductKind.COMPOUND);
    private final Step cut = slip.step(visit, StepKind.CUT, Optional.of(compound), topsides);

    private Estimate minutes(Condition condition) {
      return slip.experience().rates().minutes(Stage.MEDIUM, condition);
    }

    @Test
    void learnsPersonMinutesWithAHelpers() {
      slip.set(slip.set(cut, "minutes", Optional.of(100)), "helperMinutes", Optional.of(21));
      Estimate learned = minutes(Condition.FAIR);
      assertThat(learned).isEqualTo(LogRate.starter(6).taught(List.of(121 / 24.2), 1).next());
      assertThat(minutes(Condition.POOR).origin()).isEqualTo(Origin.STARTER);
      assertThat(minutes(Condition.POOR).middle()).isCloseTo(9, within(1e-9));
    }

    @Test
    void dividesByPasses() {
      slip.set(slip.set(cut, "minutes", Optional.of(242)), "passes", Optional.of(2));
      assertThat(minutes(Condition.FAIR))
          .isEqualTo(LogRate.starter(6).taught(List.of(5.0), 1).next());
    }

    @Test
    void learnsForTheConditionInWhichTheSurfaceWasFound() {
      slip.set(cut, "minutes", Optional.of(242));
      slip.seen(topsides, visit, Optional.empty(), new Observation.FingerRub(RubLevel.HEAVY));
      slip.gloss(topsides, visit, Moment.AFTER, 84, 84, 84);
      assertThat(minutes(Condition.POOR).origin().boats()).isEqualTo(1);
      assertThat(minutes(Condition.FAIR).origin()).isEqualTo(Origin.STARTER);
    }

    @Test
    void learnsNothingFromAnAreaItDoesNotKnow() {
      slip.set(cut, "minutes", Optional.of(242));
      slip.set(boat, "loa", Optional.empty());
      assertThat(minutes(Condition.FAIR).origin()).isEqualTo(Origin.STARTER);
    }

    @Test
    void learnsProductFromABottleThatSaysWhatIsLeft() {
      Bottle bottle = slip.bottle(compound, 1000, 516);
      slip.set(cut, "bottle", Optional.of(bottle.id()));
      Estimate ml = slip.experience().rates().millilitres(Stage.MEDIUM);
      assertThat(ml).isEqualTo(LogRate.starter(10).taught(List.of(484 / 24.2), 1).next());
      slip.step(visit, StepKind.OTHER, Optional.empty());
      Step other = slip.step(visit, StepKind.WASH, Optional.of(compound), topsides);
      slip.set(other, "bottle", Optional.of(bottle.id()));
      assertThat(slip.experience().rates().millilitres(Stage.MEDIUM).origin())
          .isEqualTo(Origin.STARTER);
    }

    /** 484 ml were gone on the day of the look; what a later step drew is not among them. */
    @Test
    void learnsProductFromTheStepsUntilSomebodyLooked() {
      Bottle bottle = slip.bottle(compound, 1000, 516);
      slip.set(bottle, "leftOn", Optional.of(Slipway.DAY));
      slip.set(cut, "bottle", Optional.of(bottle.id()));
      Visit later = slip.visit(boat, Slipway.DAY.plusDays(3));
      Step again = slip.step(later, StepKind.CUT, Optional.of(compound), topsides);
      slip.set(again, "bottle", Optional.of(bottle.id()));
      assertThat(slip.experience().rates().millilitres(Stage.MEDIUM))
          .isEqualTo(LogRate.starter(10).taught(List.of(484 / 24.2), 1).next());
    }

    @Test
    void paperNeedsNoProduct() {
      assertThat(slip.experience().rates().millilitres(Stage.SAND_P1000).high()).isZero();
    }
  }
}
