package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitCopyTest {
  private static final LocalDate NEXT = DAY.plusMonths(6);

  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Surface transom = slip.surface(SurfaceKind.TRANSOM);
  private final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);

  private Visit copy() {
    Edit edit = VisitCopy.of(slip.almanac(), slip.ids, slip.boat.id(), NEXT);
    slip.apply(edit);
    return (Visit) edit.put().get(0);
  }

  private List<Step> steps(Visit visit) {
    return InRecord.steps(slip.almanac(), visit);
  }

  private Visit done(LocalDate day) {
    Visit visit =
        slip.visit(
            day,
            VisitStatus.DONE,
            Optional.empty(),
            List.of(
                new Visit.Part(topsides.id(), WorkState.DONE, Optional.of(day), "took long"),
                new Visit.Part(transom.id(), WorkState.LEFT, Optional.empty(), "rain")));
    slip.put(
        new Step(
            slip.ids.next(),
            "polish-" + day,
            visit.id(),
            1,
            StepKind.POLISH,
            day,
            List.of(topsides.id()),
            Optional.empty(),
            Optional.empty(),
            Optional.of(4),
            "foam, 6.5 in",
            "low",
            Optional.of(2),
            Optional.of(90),
            Optional.of(30),
            Optional.empty(),
            Optional.empty(),
            "edges taped"));
    return visit;
  }

  private Optional<Bottle> copied(Bottle bottle) {
    Visit last = slip.visit(DAY.plusDays(9), VisitStatus.DONE, Optional.empty(), List.of());
    Step step = slip.step(last, StepKind.PROTECT, sealant, topsides);
    slip.change(
        step, StepKind.PROTECT, Optional.of(sealant), Optional.of(bottle), Optional.empty());
    Step copy = steps(copy()).get(0);
    slip.apply(Removal.of(slip.almanac(), last));
    assertThat(copy.product()).contains(sealant.id());
    return copy.bottle().map(b -> InRecord.row(slip.almanac().bottles(), b));
  }

  @Test
  void isLikeTheLastVisitThatWasDone() {
    done(DAY.minusMonths(3));
    slip.step(done(DAY), StepKind.PROTECT, DAY.plusDays(1), Optional.of(sealant), topsides);
    slip.planned(DAY.plusDays(30), transom);
    Visit copy = copy();
    assertThat(copy.status()).isEqualTo(VisitStatus.PLANNED);
    assertThat(copy.day()).isEqualTo(NEXT);
    assertThat(copy.why()).isEqualTo(VisitWhy.OTHER);
    assertThat(copy.handover()).isEqualTo(Handover.NOT_YET);
    assertThat(copy.key()).isEqualTo("tern-2026-11-06");
    assertThat(copy.surfaces())
        .containsExactly(
            new Visit.Part(topsides.id(), WorkState.PLANNED, Optional.empty(), ""),
            new Visit.Part(transom.id(), WorkState.PLANNED, Optional.empty(), ""));
    assertThat(steps(copy)).extracting(Step::kind, Step::day).hasSize(2);
    Step polish = steps(copy).get(0);
    assertThat(polish)
        .isEqualTo(
            new Step(
                polish.id(),
                "tern-2026-11-06-1",
                copy.id(),
                1,
                StepKind.POLISH,
                NEXT,
                List.of(topsides.id()),
                Optional.empty(),
                Optional.empty(),
                Optional.of(4),
                "foam, 6.5 in",
                "low",
                Optional.of(2),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                ""));
    assertThat(steps(copy).get(1).day()).isEqualTo(NEXT.plusDays(1));
  }

  @Test
  void whatWasFoundIsNotCopied() {
    slip.water(done(DAY), topsides, DAY, WaterBehaviour.BEADS);
    copy();
    assertThat(slip.almanac().findings()).hasSize(1);
  }

  @Test
  void aBottleIsTakenAgainUnlessItIsEmptyOrPastItsUseBy() {
    Bottle unknown = slip.bottle(sealant, Optional.empty(), Optional.empty());
    assertThat(copied(unknown)).contains(unknown);
    Bottle lastDay = slip.bottle(sealant, Optional.of(NEXT), Optional.of(1));
    assertThat(copied(lastDay)).contains(lastDay);
    assertThat(copied(slip.bottle(sealant, Optional.of(NEXT.minusDays(1)), Optional.of(200))))
        .isEmpty();
    assertThat(copied(slip.bottle(sealant, Optional.empty(), Optional.of(0)))).isEmpty();
  }

  @Test
  void aFirstVisitIsEmpty() {
    Visit copy = copy();
    assertThat(copy.surfaces()).isEmpty();
    assertThat(steps(copy)).isEmpty();
  }

  @Test
  void aBlankOneIsEmptyWhateverWasBefore() {
    done(DAY);
    Edit edit = VisitCopy.blank(slip.almanac(), slip.ids, slip.boat.id(), NEXT);
    slip.apply(edit);
    assertThat(edit.put())
        .singleElement()
        .isInstanceOfSatisfying(
            Visit.class,
            v -> {
              assertThat(v.day()).isEqualTo(NEXT);
              assertThat(v.status()).isEqualTo(VisitStatus.PLANNED);
              assertThat(v.surfaces()).isEmpty();
            });
  }

  @Test
  void twoOnOneDayHaveKeysOfTheirOwn() {
    done(DAY);
    assertThat(copy().key()).isNotEqualTo(copy().key());
  }
}
