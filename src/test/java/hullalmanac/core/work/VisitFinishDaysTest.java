package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** On which days the work of a visit falls. */
class VisitFinishDaysTest {
  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Surface transom = slip.surface(SurfaceKind.TRANSOM);
  private final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);

  private LocalDate laid(Visit visit, Surface surface) {
    return slip.laid(visit, surface).get(0).laidOn().orElseThrow();
  }

  @Test
  void aVisitDoneOnAnotherDayThanPlannedWasMovedThere() {
    Visit visit = slip.planned(DAY, topsides);
    Step step = slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.finish(visit, DAY.plusDays(3));
    Visit done = slip.now(visit);
    assertThat(done.day()).isEqualTo(DAY.plusDays(3));
    assertThat(done.moves()).containsExactly(new Visit.Move(DAY, DAY.plusDays(3), MoveReason.SELF));
    assertThat(slip.now(step).day()).isEqualTo(DAY.plusDays(3));
    assertThat(laid(visit, topsides)).isEqualTo(DAY.plusDays(3));
  }

  @Test
  void stepsOfAVisitOverSeveralDaysKeepTheirDays() {
    Visit visit = slip.planned(DAY, topsides, transom);
    slip.step(visit, StepKind.PROTECT, DAY, Optional.of(sealant), topsides);
    slip.step(visit, StepKind.PROTECT, DAY.plusDays(1), Optional.of(sealant), transom);
    slip.finish(visit, DAY.plusDays(1));
    assertThat(laid(visit, topsides)).isEqualTo(DAY);
    assertThat(laid(visit, transom)).isEqualTo(DAY.plusDays(1));
    assertThat(slip.now(visit).day()).isEqualTo(DAY);
    assertThat(slip.now(visit).surfaces())
        .extracting(p -> p.doneOn().orElseThrow())
        .containsExactly(DAY, DAY.plusDays(1));
  }

  @Test
  void theLastStepFallsOnTheDayAndTheOthersMoveAlong() {
    Visit visit = slip.planned(DAY, topsides, transom);
    slip.step(visit, StepKind.PROTECT, DAY, Optional.of(sealant), topsides);
    slip.step(visit, StepKind.PROTECT, DAY.plusDays(1), Optional.of(sealant), transom);
    slip.finish(visit, DAY.plusDays(8));
    assertThat(laid(visit, topsides)).isEqualTo(DAY.plusDays(7));
    assertThat(laid(visit, transom)).isEqualTo(DAY.plusDays(8));
    assertThat(slip.now(visit).day()).isEqualTo(DAY.plusDays(7));
  }

  @Test
  void whatIsDoneLaterThanItsStepIsCoatedLater() {
    Visit visit =
        slip.visit(
            DAY,
            VisitStatus.PLANNED,
            Optional.empty(),
            List.of(
                new Visit.Part(topsides.id(), WorkState.DONE, Optional.of(DAY), ""),
                new Visit.Part(transom.id(), WorkState.PLANNED, Optional.empty(), "")));
    Step step = slip.step(visit, StepKind.PROTECT, sealant, topsides, transom);
    slip.finish(visit, DAY.plusDays(6));
    assertThat(laid(visit, topsides)).isEqualTo(DAY);
    assertThat(laid(visit, transom)).isEqualTo(DAY.plusDays(6));
    assertThat(slip.now(visit).day()).isEqualTo(DAY);
    assertThat(slip.now(visit).moves()).isEmpty();
    assertThat(slip.now(step)).isEqualTo(step);
  }

  @Test
  void whatWasMarkedDoneBeforeItsLastStepIsCoatedOnTheDayOfThatStep() {
    Visit visit =
        slip.visit(
            DAY,
            VisitStatus.PLANNED,
            Optional.empty(),
            List.of(new Visit.Part(topsides.id(), WorkState.DONE, Optional.of(DAY), "")));
    slip.step(visit, StepKind.PROTECT, DAY.plusDays(1), Optional.of(sealant), topsides);
    slip.finish(visit, DAY.plusDays(1));
    assertThat(laid(visit, topsides)).isEqualTo(DAY.plusDays(1));
  }

  @Test
  void aDayAmongThoseOfTheStepsMovesNone() {
    Visit visit = slip.planned(DAY, topsides, transom);
    slip.step(visit, StepKind.PROTECT, DAY, Optional.of(sealant), topsides);
    slip.step(visit, StepKind.PROTECT, DAY.plusDays(1), Optional.of(sealant), transom);
    slip.finish(visit, DAY);
    assertThat(laid(visit, topsides)).isEqualTo(DAY);
    assertThat(laid(visit, transom)).isEqualTo(DAY.plusDays(1));
    assertThat(slip.now(visit).moves()).isEmpty();
  }

  @Test
  void aVisitBegunBeforeItWasMovedBeganWhenItBegan() {
    Visit visit =
        slip.visit(
            DAY,
            VisitStatus.PLANNED,
            Optional.empty(),
            List.of(
                new Visit.Part(topsides.id(), WorkState.DONE, Optional.of(DAY), ""),
                new Visit.Part(transom.id(), WorkState.PLANNED, Optional.empty(), "")));
    slip.step(visit, StepKind.PROTECT, sealant, topsides, transom);
    LocalDate dry = DAY.plusDays(7);
    slip.apply(VisitMove.move(slip.almanac(), visit, dry, MoveReason.WEATHER));
    slip.finish(visit, dry);
    assertThat(slip.now(visit).day()).isEqualTo(DAY);
    assertThat(slip.now(visit).moves())
        .containsExactly(new Visit.Move(DAY, dry, MoveReason.WEATHER));
    assertThat(laid(visit, topsides)).isEqualTo(DAY);
    assertThat(laid(visit, transom)).isEqualTo(dry);
  }

  @Test
  void aTopperADayAfterItsCoatHasItsOwnDay() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, DAY, Optional.of(sealant), topsides);
    slip.step(visit, StepKind.TOP, DAY.plusDays(1), Optional.of(sealant), topsides);
    slip.finish(visit, DAY.plusDays(1));
    assertThat(slip.laid(visit, topsides))
        .extracting(Coat::since)
        .containsExactly(DAY, DAY.plusDays(1));
  }
}
