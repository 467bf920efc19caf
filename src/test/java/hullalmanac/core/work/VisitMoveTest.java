package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static hullalmanac.core.work.Slip.refused;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitMoveTest {
  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Surface transom = slip.surface(SurfaceKind.TRANSOM);

  private void move(Visit visit, int days, MoveReason reason) {
    Visit now = slip.now(visit);
    slip.apply(VisitMove.move(slip.almanac(), now, now.day().plusDays(days), reason));
  }

  private Visit begun() {
    return slip.visit(
        DAY,
        VisitStatus.PLANNED,
        Optional.empty(),
        List.of(
            new Visit.Part(topsides.id(), WorkState.DONE, Optional.of(DAY), ""),
            new Visit.Part(transom.id(), WorkState.PLANNED, Optional.empty(), "")));
  }

  @Test
  void aMoveIsRememberedWithItsReasonOldestFirst() {
    Visit visit = slip.planned(DAY, topsides);
    move(visit, 3, MoveReason.WEATHER);
    move(visit, -1, MoveReason.YARD);
    assertThat(slip.now(visit).day()).isEqualTo(DAY.plusDays(2));
    assertThat(slip.now(visit).moves())
        .containsExactly(
            new Visit.Move(DAY, DAY.plusDays(3), MoveReason.WEATHER),
            new Visit.Move(DAY.plusDays(3), DAY.plusDays(2), MoveReason.YARD));
  }

  @Test
  void stepsComeAlong() {
    Visit visit = slip.planned(DAY, topsides);
    Step first = slip.step(visit, StepKind.WASH);
    Step second = slip.step(visit, StepKind.POLISH, DAY.plusDays(1), Optional.empty(), topsides);
    move(visit, 7, MoveReason.OWNER);
    assertThat(slip.now(first).day()).isEqualTo(DAY.plusDays(7));
    assertThat(slip.now(second).day()).isEqualTo(DAY.plusDays(8));
  }

  @Test
  void aStepThatWasDoneInPartKeepsItsDay() {
    Visit visit = begun();
    Step both = slip.step(visit, StepKind.POLISH, topsides, transom);
    Step open = slip.step(visit, StepKind.POLISH, transom);
    move(visit, 7, MoveReason.WEATHER);
    assertThat(slip.now(both).day()).isEqualTo(DAY);
    assertThat(slip.now(open).day()).isEqualTo(DAY.plusDays(7));
  }

  @Test
  void theSameDayIsNoMove() {
    Visit visit = slip.planned(DAY, topsides);
    Almanac before = slip.almanac();
    move(visit, 0, MoveReason.SELF);
    assertThat(slip.almanac()).isEqualTo(before);
  }

  @Test
  void aCancelledVisitSaysWhy() {
    Visit visit = slip.planned(DAY, topsides);
    slip.apply(VisitMove.cancel(slip.almanac(), visit, MoveReason.NO_SHOW));
    assertThat(slip.now(visit).status()).isEqualTo(VisitStatus.CANCELLED);
    assertThat(slip.now(visit).cancelled()).contains(MoveReason.NO_SHOW);
    assertThat(slip.now(visit).surfaces()).isEqualTo(visit.surfaces());
  }

  @Test
  void whatWasDoneIsNeitherMovedNorCancelled() {
    Visit done = slip.visit(DAY, VisitStatus.DONE, Optional.empty(), List.of());
    Almanac a = slip.almanac();
    assertThat(refused(VisitMove.move(a, done, DAY.plusDays(1), MoveReason.SELF)))
        .extracting(Problem::key)
        .containsExactly(done.key());
    assertThat(refused(VisitMove.cancel(a, done, MoveReason.SELF)))
        .extracting(Problem::key)
        .containsExactly(done.key());
  }

  @Test
  void aCancelledVisitIsNotMovedAndABegunOneNotCancelled() {
    Visit cancelled = Altered.cancelled(slip.planned(DAY, topsides), MoveReason.OWNER);
    slip.put(cancelled);
    Almanac a = slip.almanac();
    assertThat(refused(VisitMove.move(a, cancelled, DAY.plusDays(1), MoveReason.SELF))).hasSize(1);
    assertThat(refused(VisitMove.cancel(a, begun(), MoveReason.OWNER)))
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .contains("done already");
  }
}
