package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static hullalmanac.core.work.Slip.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.DutyKind;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of a finished visit when a step of it is corrected. */
class VisitFinishAgainTest {
  private static final LocalDate SPRING = LocalDate.of(2025, 4, 1);

  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Surface transom = slip.surface(SurfaceKind.TRANSOM);
  private final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);
  private final Product spray = slip.product(ProductKind.SILICA_SPRAY);
  private final Product polish = slip.product(ProductKind.POLISH);
  private final Coat old = slip.coat(topsides, sealant, SPRING);
  private final Visit visit = slip.planned(DAY, topsides);
  private final Step step = slip.step(visit, StepKind.PROTECT, sealant, topsides);

  private Coat laid() {
    return slip.laid(visit, topsides).get(0);
  }

  @Test
  void aTopperLiesOverNothingOnceItIsWrittenThatTheBaseWasCutAwayBefore() {
    slip.apply(Edit.remove(List.of(step)));
    Step top = slip.step(visit, StepKind.TOP, spray, topsides);
    slip.finish(visit, DAY);
    assertThat(laid().over()).contains(old.id());
    slip.apply(Edit.remove(List.of(top)));
    slip.step(visit, StepKind.CUT, DAY, Optional.empty(), topsides);
    slip.step(visit, StepKind.TOP, spray, topsides);
    slip.finish(visit, DAY);
    assertThat(laid().over()).isEmpty();
  }

  @Test
  void aCoatKeepsItsIdentityWhenItsProductWasWrong() {
    slip.finish(visit, DAY);
    Coat first = laid();
    Bottle bottle = slip.bottle(spray, Optional.empty(), Optional.empty());
    slip.put(
        new Duty(
            slip.ids.next(),
            "duty",
            first.id(),
            DutyKind.INSPECTION,
            DAY.plusYears(1),
            Optional.empty(),
            ""));
    slip.change(step, StepKind.PROTECT, Optional.of(spray), Optional.of(bottle), Optional.of(3));
    slip.finish(visit, DAY);
    assertThat(slip.laid(visit, topsides)).hasSize(1);
    assertThat(laid().id()).isEqualTo(first.id());
    assertThat(laid().key()).isEqualTo(first.key());
    assertThat(laid().product()).isEqualTo(spray.id());
    assertThat(laid().batch()).isEqualTo(bottle.batch());
    assertThat(laid().layers()).isEqualTo(3);
    assertThat(slip.almanac().duties()).hasSize(1);
    slip.change(step, StepKind.PROTECT, Optional.of(spray), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(laid().batch()).isEmpty();
  }

  @Test
  void aCoatThatWasNotLaidAfterAllGoesAndTheOldOneIsBack() {
    slip.finish(visit, DAY);
    slip.put(
        new Duty(
            slip.ids.next(),
            "duty",
            laid().id(),
            DutyKind.TOPPER,
            DAY.plusYears(1),
            Optional.empty(),
            ""));
    slip.change(step, StepKind.INSPECT, Optional.empty(), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(slip.almanac().coats()).containsExactly(old);
    assertThat(slip.almanac().duties()).isEmpty();
  }

  @Test
  void polishThatDidNotTakePlaceStripsNothing() {
    slip.change(step, StepKind.POLISH, Optional.of(polish), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(slip.serving(topsides, DAY)).isEmpty();
    slip.change(step, StepKind.WASH, Optional.empty(), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(slip.almanac().coats()).containsExactly(old);
  }

  @Test
  void anEndingForWhichSomebodyGaveAReasonIsNotTakenBack() {
    Coat.Ending byHand =
        new Coat.Ending(DAY, CoatEnd.STRIPPED, EndState.FLAT, "sanded by the yard");
    slip.change(step, StepKind.WASH, Optional.empty(), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    slip.put(Altered.ending(old, Optional.of(byHand)));
    slip.finish(visit, DAY);
    assertThat(slip.now(old).ending()).contains(byHand);
  }

  @Test
  void whatAnotherVisitOfThatDayEndedStaysEnded() {
    for (StepKind kind : List.of(StepKind.POLISH, StepKind.PROTECT)) {
      Visit other = slip.planned(DAY, topsides);
      slip.step(other, kind, sealant, topsides);
      slip.finish(other, DAY);
      slip.change(step, StepKind.WASH, Optional.empty(), Optional.empty(), Optional.empty());
      slip.finish(visit, DAY);
      Coat.Ending ending = slip.now(old).ending().orElseThrow();
      slip.finish(visit, DAY);
      assertThat(slip.now(old).ending()).contains(ending);
      slip.apply(Removal.of(slip.almanac(), other));
      assertThat(slip.now(old)).isEqualTo(old);
    }
  }

  @Test
  void whatWasOnlyPlannedOrLeftEndedNothing() {
    Coat.Ending byHand =
        new Coat.Ending(DAY, CoatEnd.STRIPPED, EndState.FLAT, "sanded by the yard");
    slip.put(Altered.ending(old, Optional.of(byHand)));
    slip.change(step, StepKind.POLISH, Optional.of(polish), Optional.empty(), Optional.empty());
    Visit left =
        Altered.parts(
            visit,
            Optional.empty(),
            List.of(new Visit.Part(topsides.id(), WorkState.LEFT, Optional.empty(), "rain")));
    slip.put(left);
    slip.finish(left, DAY);
    slip.finish(left, DAY);
    assertThat(slip.now(old).ending()).contains(byHand);
    Visit planned = slip.planned(DAY);
    slip.step(planned, StepKind.POLISH, polish, topsides);
    slip.apply(Removal.of(slip.almanac(), planned));
    assertThat(slip.now(old).ending()).contains(byHand);
  }

  @Test
  void aTopperOfAnotherVisitOfThatDayStaysOverItsCoat() {
    slip.finish(visit, DAY);
    Visit evening = slip.planned(DAY, topsides);
    slip.step(evening, StepKind.TOP, spray, topsides);
    slip.finish(evening, DAY);
    Coat topper = slip.laid(evening, topsides).get(0);
    slip.finish(visit, DAY);
    assertThat(slip.now(topper)).isEqualTo(topper);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(), topper);
  }

  @Test
  void aLookWrittenDownLaterIsTakenUp() {
    slip.finish(visit, DAY);
    assertThat(slip.now(old).ending().orElseThrow().seen()).isEqualTo(EndState.NOT_LOOKED);
    Finding look = slip.water(visit, topsides, DAY, WaterBehaviour.SHEETS);
    slip.finish(visit, DAY);
    assertThat(slip.now(old).ending().orElseThrow().seen()).isEqualTo(EndState.SHEETS);
    slip.apply(Removal.of(slip.almanac(), look));
    slip.finish(visit, DAY);
    assertThat(slip.now(old).ending().orElseThrow().seen()).isEqualTo(EndState.NOT_LOOKED);
  }

  @Test
  void whatSomebodyWroteOfTheEndStaysWhereNoLookSaysOtherwise() {
    slip.finish(visit, DAY);
    Coat.Ending said = new Coat.Ending(DAY, CoatEnd.RENEWED, EndState.FLAT, "by the owner's word");
    slip.put(Altered.ending(slip.now(old), Optional.of(said)));
    assertThat(VisitFinish.questions(slip.almanac(), visit.id(), DAY)).isEmpty();
    slip.finish(visit, DAY);
    assertThat(slip.now(old).ending()).contains(said);
    slip.water(visit, topsides, DAY, WaterBehaviour.BEADS);
    slip.finish(visit, DAY);
    assertThat(slip.now(old).ending().orElseThrow().seen()).isEqualTo(EndState.BEADS);
  }

  @Test
  void aVisitOfThePastCanBeCorrectedAfterLaterOnes() {
    slip.finish(visit, DAY);
    Visit next = slip.planned(DAY.plusYears(1), topsides);
    slip.step(next, StepKind.PROTECT, spray, topsides);
    slip.water(next, topsides, DAY.plusYears(1), WaterBehaviour.FLAT);
    slip.finish(next, DAY.plusYears(1));
    Coat middle = laid();
    Coat.Ending flat = new Coat.Ending(DAY.plusYears(1), CoatEnd.RENEWED, EndState.FLAT, "");
    assertThat(middle.ending()).contains(flat);
    slip.change(step, StepKind.PROTECT, Optional.of(spray), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(laid().ending()).contains(flat);
    slip.change(step, StepKind.WASH, Optional.empty(), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(slip.now(old).ending()).contains(flat);
    slip.change(step, StepKind.PROTECT, Optional.of(sealant), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(slip.now(old).ending().orElseThrow().on()).isEqualTo(DAY);
    assertThat(laid().ending()).contains(flat);
  }

  @Test
  void aLaterTopperLosesNeitherItselfNorItsBase() {
    slip.finish(visit, DAY);
    Visit summer = slip.planned(DAY.plusMonths(3), topsides);
    slip.step(summer, StepKind.TOP, spray, topsides);
    slip.finish(summer, DAY.plusMonths(3));
    Coat topper = slip.laid(summer, topsides).get(0);
    assertThat(topper.over()).contains(laid().id());
    slip.change(step, StepKind.WASH, Optional.empty(), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(slip.now(topper).over()).contains(old.id());
    assertThat(slip.serving(topsides, DAY.plusMonths(4))).containsExactly(old, slip.now(topper));
  }

  @Test
  void aCoatTurnedIntoATopperKeepsItsIdentity() {
    slip.finish(visit, DAY);
    Coat first = laid();
    slip.change(step, StepKind.TOP, Optional.of(spray), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(laid().id()).isEqualTo(first.id());
    assertThat(laid().over()).contains(old.id());
    assertThat(slip.now(old).ending()).isEmpty();
    slip.change(step, StepKind.PROTECT, Optional.of(spray), Optional.empty(), Optional.empty());
    slip.finish(visit, DAY);
    assertThat(laid().id()).isEqualTo(first.id());
    assertThat(laid().over()).isEmpty();
  }

  @Test
  void aSurfaceTakenIntoAStepIsCoatedToo() {
    slip.finish(visit, DAY);
    slip.put(Altered.step(step, DAY, List.of(topsides.id(), transom.id())));
    slip.finish(visit, DAY);
    assertThat(slip.laid(visit, transom)).hasSize(1);
  }

  @Test
  void aDayBeforeTheCoatThatItEndedOrAfterItsOwnCoatEndedIsRefused() {
    slip.finish(visit, DAY);
    LocalDate next = DAY.plusYears(1);
    slip.put(
        Altered.ending(
            laid(), Optional.of(new Coat.Ending(next, CoatEnd.STRIPPED, EndState.FLAT, "sanded"))));
    Step early = Altered.step(step, SPRING.minusDays(1), step.surfaces());
    slip.put(early);
    assertThat(refusedAfterPart(SPRING.minusDays(1)))
        .extracting(Problem::field)
        .containsExactly("day");
    slip.put(Altered.step(step, next.plusDays(1), step.surfaces()));
    assertThat(refusedAfterPart(next.plusDays(1)))
        .extracting(Problem::key, Problem::field)
        .containsExactly(tuple(step.key(), "day"));
  }

  private List<Problem> refusedAfterPart(LocalDate day) {
    Visit v = slip.now(visit);
    List<Visit.Part> parts =
        v.surfaces().stream()
            .map(p -> new Visit.Part(p.surface(), p.state(), Optional.of(day), p.note()))
            .toList();
    Visit moved = Altered.parts(v, v.plan(), parts);
    return refused(
        VisitFinish.finish(slip.almanac().with(Edit.put(moved)), slip.ids, visit.id(), day));
  }
}
