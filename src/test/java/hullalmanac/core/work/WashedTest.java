package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WashStrength;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WashedTest {
  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Surface transom = slip.surface(SurfaceKind.TRANSOM);
  private final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);
  private final Product soap =
      slip.product(ProductKind.SOAP, Optional.of(WashStrength.MILD), false);
  private final Product waxy = slip.product(ProductKind.SOAP, Optional.of(WashStrength.MILD), true);
  private final CarePlan plan =
      slip.plan(4, List.of(Month.values()), DAY.minusYears(1), Optional.empty());

  private Almanac washed(LocalDate day, WaterBehaviour look) {
    return slip.apply(edit(day, Optional.of(look)));
  }

  private Almanac washed(LocalDate day) {
    return slip.apply(edit(day, Optional.empty()));
  }

  private Edit edit(LocalDate day, Optional<WaterBehaviour> look) {
    return Washed.edit(slip.almanac(), slip.ids, slip.boat.id(), day, look);
  }

  private Visit ofPlan(LocalDate day) {
    return slip.visit(day, VisitStatus.PLANNED, Optional.of(plan.id()), List.of());
  }

  private Visit only(VisitStatus status) {
    List<Visit> all = slip.almanac().visits().stream().filter(v -> v.status() == status).toList();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private void washWith(Product product, LocalDate day, int partsWater) {
    Visit visit = slip.visit(day, VisitStatus.DONE, Optional.empty(), List.of());
    slip.put(
        new Step(
            slip.ids.next(),
            "wash-" + day,
            visit.id(),
            1,
            StepKind.WASH,
            day,
            List.of(),
            Optional.of(product.id()),
            Optional.empty(),
            Optional.of(partsWater),
            "mitt",
            "",
            Optional.empty(),
            Optional.of(50),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            ""));
  }

  private Step stepOf(Visit visit) {
    List<Step> steps = InRecord.steps(slip.almanac(), visit);
    assertThat(steps).hasSize(1);
    return steps.get(0);
  }

  @Test
  void withoutALookNothingIsSaidOfTheCoats() {
    slip.coat(topsides, sealant, DAY.minusMonths(1));
    Almanac after = washed(DAY);
    Visit visit = only(VisitStatus.DONE);
    assertThat(visit.day()).isEqualTo(DAY);
    assertThat(visit.why()).isEqualTo(VisitWhy.OTHER);
    assertThat(visit.plan()).isEmpty();
    assertThat(stepOf(visit).kind()).isEqualTo(StepKind.WASH);
    assertThat(stepOf(visit).surfaces()).isEmpty();
    assertThat(stepOf(visit).product()).isEmpty();
    assertThat(after.findings()).isEmpty();
  }

  @Test
  void aLookIsOfEverySurfaceWithACoatInService() {
    slip.coat(topsides, sealant, DAY.minusMonths(1));
    slip.coat(transom, sealant, DAY.plusDays(1));
    washed(DAY, WaterBehaviour.SHEETS);
    assertThat(slip.almanac().findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.surface()).isEqualTo(topsides.id());
              assertThat(f.visit()).contains(only(VisitStatus.DONE).id());
              assertThat(f.day()).isEqualTo(DAY);
              assertThat(f.entered()).isEqualTo(Entered.TWO_TOUCH);
              assertThat(f.state()).isEqualTo(SurfaceState.WASHED);
              assertThat(f.seen()).isEqualTo(new Observation.WaterSeen(WaterBehaviour.SHEETS));
            });
  }

  @Test
  void isWashedAsTheLastTime() {
    washWith(waxy, DAY.minusDays(60), 20);
    washWith(soap, DAY.minusDays(30), 100);
    washWith(waxy, DAY.plusDays(30), 20);
    washed(DAY);
    Visit visit =
        slip.almanac().visits().stream().filter(v -> v.day().equals(DAY)).findFirst().orElseThrow();
    assertThat(stepOf(visit).product()).contains(soap.id());
    assertThat(stepOf(visit).partsWater()).contains(100);
    assertThat(stepOf(visit).minutes()).isEmpty();
  }

  @Test
  void waterOnWaxySoapIsSaidToBeThat() {
    slip.coat(topsides, sealant, DAY.minusMonths(1));
    washWith(waxy, DAY.minusDays(30), 20);
    washed(DAY, WaterBehaviour.BEADS);
    assertThat(slip.almanac().findings())
        .extracting(Finding::state)
        .containsExactly(SurfaceState.WAXY_SOAP);
  }

  @Test
  void theNearestPlannedVisitOfACarePlanIsIt() {
    Visit far = ofPlan(DAY.minusDays(10));
    Visit near = ofPlan(DAY.plusDays(9));
    washed(DAY);
    Visit done = slip.now(near);
    assertThat(only(VisitStatus.DONE)).isEqualTo(done);
    assertThat(done.day()).isEqualTo(DAY);
    assertThat(done.moves()).containsExactly(new Visit.Move(DAY.plusDays(9), DAY, MoveReason.SELF));
    assertThat(slip.now(far)).isEqualTo(far);
    assertThat(stepOf(done).day()).isEqualTo(DAY);
  }

  @Test
  void onItsOwnDayItWasNotMoved() {
    Visit planned = ofPlan(DAY);
    washed(DAY);
    assertThat(slip.now(planned).status()).isEqualTo(VisitStatus.DONE);
    assertThat(slip.now(planned).moves()).isEmpty();
  }

  @Test
  void tenDaysAreNearAndElevenAreNot() {
    Visit ten = ofPlan(DAY.plusDays(10));
    washed(DAY);
    assertThat(slip.now(ten).status()).isEqualTo(VisitStatus.DONE);
    Visit eleven = ofPlan(DAY.plusDays(50));
    washed(DAY.plusDays(39));
    assertThat(slip.now(eleven).status()).isEqualTo(VisitStatus.PLANNED);
    assertThat(slip.almanac().visits()).hasSize(3);
  }

  @Test
  void aVisitThatIsNotOfACarePlanOrInWhichMoreWasPlannedIsLeftAlone() {
    Visit other = slip.planned(DAY, topsides);
    Visit more = ofPlan(DAY);
    slip.step(more, StepKind.PROTECT, sealant, topsides);
    washed(DAY);
    assertThat(slip.now(other)).isEqualTo(other);
    assertThat(slip.now(more)).isEqualTo(more);
    assertThat(slip.almanac().visits()).hasSize(3);
  }

  @Test
  void aPlannedWashIsDoneAndNotWrittenTwice() {
    Visit planned = ofPlan(DAY.plusDays(2));
    Step step = slip.step(planned, StepKind.WASH, soap);
    washed(DAY);
    assertThat(stepOf(slip.now(planned)).id()).isEqualTo(step.id());
    assertThat(slip.now(step).day()).isEqualTo(DAY);
  }

  @Test
  void saidTwiceItIsOneWashAndALookCanComeLater() {
    slip.coat(topsides, sealant, DAY.minusMonths(1));
    ofPlan(DAY.plusDays(3));
    ofPlan(DAY.plusDays(9));
    washed(DAY);
    assertThat(edit(DAY, Optional.empty()).isEmpty()).isTrue();
    washed(DAY, WaterBehaviour.BEADS);
    assertThat(only(VisitStatus.DONE).day()).isEqualTo(DAY);
    assertThat(slip.almanac().findings()).hasSize(1);
    assertThat(edit(DAY, Optional.of(WaterBehaviour.BEADS)).isEmpty()).isTrue();
  }

  @Test
  void aWashOnTheDayOfOtherWorkIsAVisitOfItsOwn() {
    Visit work = slip.planned(DAY, topsides);
    slip.step(work, StepKind.WASH);
    slip.step(work, StepKind.PROTECT, sealant, topsides);
    slip.finish(work, DAY);
    washed(DAY, WaterBehaviour.BEADS);
    assertThat(slip.almanac().findings())
        .singleElement()
        .matches(f -> !f.visit().equals(Optional.of(work.id())));
  }
}
