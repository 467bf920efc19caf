package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static hullalmanac.core.work.Slip.ready;
import static hullalmanac.core.work.Slip.refused;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of the coats when the days and states of a visit's surfaces are changed. */
class VisitChangeTest {
  private static final LocalDate SPRING = LocalDate.of(2025, 4, 1);

  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Surface transom = slip.surface(SurfaceKind.TRANSOM);
  private final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);
  private final Coat old = slip.coat(topsides, sealant, SPRING);
  private final Visit visit = slip.planned(DAY, topsides, transom);
  private final Step protect = slip.step(visit, StepKind.PROTECT, sealant, topsides, transom);

  private Change changing(Surface surface, Optional<Visit.Part> part) {
    List<Visit.Part> parts = new ArrayList<>(slip.now(visit).surfaces());
    parts.removeIf(p -> p.surface().equals(surface.id()));
    part.ifPresent(parts::add);
    Edit edit = Edit.put(Altered.parts(slip.now(visit), Optional.empty(), parts));
    return VisitChange.of(slip.almanac(), slip.ids, visit.id(), edit);
  }

  private static Optional<Visit.Part> done(Surface surface, LocalDate day) {
    return Optional.of(new Visit.Part(surface.id(), WorkState.DONE, Optional.of(day), ""));
  }

  private static Optional<Visit.Part> state(Surface surface, WorkState state, String why) {
    return Optional.of(new Visit.Part(surface.id(), state, Optional.empty(), why));
  }

  private Coat laid(Surface surface) {
    return slip.laid(visit, surface).get(0);
  }

  @Test
  void ofAPlannedVisitOnlyWhatIsWrittenChanges() {
    slip.apply(changing(topsides, done(topsides, DAY)));
    slip.apply(changing(transom, state(transom, WorkState.LEFT, "rain")));
    assertThat(slip.almanac().coats()).containsExactly(old);
    assertThat(slip.now(visit).surfaces()).hasSize(2);
  }

  @Test
  void aSurfaceDoneOnALaterDayHasItsCoatFromThatDay() {
    slip.finish(visit, DAY);
    Coat first = laid(topsides);
    slip.apply(changing(topsides, done(topsides, DAY.plusDays(2))));
    assertThat(laid(topsides).id()).isEqualTo(first.id());
    assertThat(laid(topsides).laidOn()).contains(DAY.plusDays(2));
    assertThat(laid(transom).laidOn()).contains(DAY);
    assertThat(slip.now(old).ending()).get().extracting(Coat.Ending::on).isEqualTo(DAY.plusDays(2));
    slip.apply(changing(topsides, done(topsides, DAY)));
    assertThat(laid(topsides)).isEqualTo(first);
    assertThat(slip.now(old).ending()).get().extracting(Coat.Ending::on).isEqualTo(DAY);
  }

  @Test
  void aSurfaceThatWasLeftAfterAllHasItsOldCoatAgain() {
    slip.finish(visit, DAY);
    slip.apply(changing(topsides, state(topsides, WorkState.LEFT, "rain from noon")));
    assertThat(slip.laid(visit, topsides)).isEmpty();
    assertThat(slip.now(old)).isEqualTo(old);
    assertThat(slip.laid(visit, transom)).hasSize(1);
    slip.apply(changing(topsides, done(topsides, DAY)));
    assertThat(slip.laid(visit, topsides)).hasSize(1);
    assertThat(slip.now(old).ending())
        .get()
        .extracting(Coat.Ending::how)
        .isEqualTo(CoatEnd.RENEWED);
  }

  @Test
  void inAVisitThatWasDoneNothingIsPlannedAnyMore() {
    slip.finish(visit, DAY);
    assertThat(refused(changing(topsides, state(topsides, WorkState.PLANNED, ""))))
        .extracting(Problem::sentence)
        .containsExactly(
            "Topsides: the visit was done, and nothing is planned in it. Write done, or left and"
                + " why.");
  }

  @Test
  void aSurfaceOfAStepIsNotTakenOutInSilence() {
    slip.finish(visit, DAY);
    assertThat(refused(changing(topsides, Optional.empty())))
        .extracting(Problem::sentence)
        .containsExactly(
            "Topsides: a step of the visit was done there. Write left and why, or take the surface"
                + " out of the step.");
    slip.put(Altered.step(slip.now(protect), DAY, List.of(transom.id())));
    slip.finish(visit, DAY);
    slip.apply(changing(topsides, Optional.empty()));
    assertThat(slip.now(visit).surfaces())
        .extracting(Visit.Part::surface)
        .containsExactly(transom.id());
  }

  @Test
  void coatsThatNoStepLaidAreLeftAsTheyAre() {
    slip.finish(visit, DAY);
    slip.apply(Edit.remove(List.of(protect)));
    List<Coat> before = slip.almanac().coats();
    slip.apply(changing(topsides, done(topsides, DAY.plusDays(1))));
    assertThat(slip.almanac().coats()).isEqualTo(before);
  }

  @Test
  void whatBreaksARuleIsRefused() {
    slip.finish(visit, DAY);
    slip.coat(transom, sealant, DAY.plusDays(20));
    Edit wrong =
        Edit.put(
            slip.change(
                slip.now(protect),
                StepKind.PROTECT,
                Optional.of(slip.product(ProductKind.POLISH)),
                Optional.empty(),
                Optional.empty()));
    slip.put(protect);
    assertThat(refused(VisitChange.of(slip.almanac(), slip.ids, visit.id(), wrong))).isNotEmpty();
    assertThat(ready(VisitChange.of(slip.almanac(), slip.ids, visit.id(), Edit.put(protect))).put())
        .containsExactly(protect);
  }
}
