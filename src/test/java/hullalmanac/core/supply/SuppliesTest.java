package hullalmanac.core.supply;

import static hullalmanac.core.supply.Locker.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Sums made by hand from area × ml for a m² × passes; the ml are the standards of the practice
 * values (common practice, no source): finishing polish 8, protection 6, washing 200 as mixed.
 */
class SuppliesTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 4, 20);
  private static final LocalDate TUESDAY = MONDAY.plusDays(1);

  private final Locker locker = new Locker();
  private final Product polish = locker.product(ProductKind.POLISH);

  private static Product.Handling handling(Integer water, Integer openMonths) {
    return With.component(
        With.component(Product.Handling.UNKNOWN, "partsWater", Optional.ofNullable(water)),
        "openMonths",
        Optional.ofNullable(openMonths));
  }

  private Bottle full(Product product) {
    return locker.bottle(
        product, Optional.of(MONDAY.minusDays(60)), Optional.empty(), Optional.empty());
  }

  /** One whose size nobody wrote down, so that it teaches nothing. */
  private Bottle seen(Product product, int ml, LocalDate on) {
    Bottle bottle =
        locker.bottle(product, Optional.of(MONDAY.minusDays(60)), Optional.of(ml), Optional.of(on));
    return locker.set(bottle, "sizeMl", Optional.empty());
  }

  /** 23 m² + 3 m² at 8 ml, twice: 416 ml of 1000. */
  @Test
  void aBottleNobodyLookedAtIsFullLessWhatStepsDrew() {
    Bottle bottle = full(polish);
    Visit visit = locker.visit(MONDAY, VisitStatus.DONE, locker.topsides, locker.transom);
    locker.step(visit, StepKind.POLISH, polish, Optional.of(bottle.id()), 2);
    BottleLeft left = locker.left(bottle);
    assertThat(left.start()).isEqualTo(BottleLeft.Start.FULL);
    assertThat(left.drawn()).isCloseTo(416, within(1e-9));
    assertThat(left.left().orElseThrow()).isCloseTo(584, within(1e-9));
    assertThat(left.steps()).isEqualTo(1);
    assertThat(left.origins()).containsExactly("starter value");
  }

  /** Monday's 24 ml are in Monday's look; Tuesday's 23 · 8 = 184 are not: 516 are left. */
  @Test
  void aLookCountsTheWorkOfItsOwnDayAndWhatCameBeforeAndNoMore() {
    Bottle bottle = seen(polish, 700, MONDAY);
    Visit monday = locker.visit(MONDAY, VisitStatus.DONE, locker.transom);
    locker.step(monday, StepKind.POLISH, polish, Optional.of(bottle.id()), 1);
    Visit tuesday = locker.visit(TUESDAY, VisitStatus.DONE, locker.topsides);
    locker.step(tuesday, StepKind.POLISH, polish, Optional.of(bottle.id()), 1);
    assertThat(locker.left(bottle).steps()).isEqualTo(1);
    assertThat(locker.left(bottle).left().orElseThrow()).isCloseTo(516, within(1e-9));
    locker.set(locker.set(bottle, "leftMl", Optional.of(490)), "leftOn", Optional.of(TUESDAY));
    assertThat(locker.left(bottle).left()).contains(490.0);
    assertThat(locker.left(bottle).steps()).isZero();
  }

  /** 300 ml gone by Monday's look for 23 + 3 m² teach more than 8 ml a m². */
  @Test
  void saysWhenTheMillilitresComeFromOnesOwnSteps() {
    Bottle bottle = locker.set(seen(polish, 700, MONDAY), "sizeMl", Optional.of(1000));
    Visit monday = locker.visit(MONDAY, VisitStatus.DONE, locker.topsides, locker.transom);
    locker.step(monday, StepKind.POLISH, polish, Optional.of(bottle.id()), 1);
    Visit tuesday = locker.visit(TUESDAY, VisitStatus.DONE, locker.topsides);
    locker.step(tuesday, StepKind.POLISH, polish, Optional.of(bottle.id()), 1);
    assertThat(locker.left(bottle).origins()).containsExactly("from your last boat");
    double learned = Math.exp((2 * Math.log(8) + Math.log(300 / 26.0)) / 3);
    assertThat(locker.left(bottle).drawn()).isCloseTo(23 * learned, within(1e-9));
  }

  @Test
  void nothingIsTakenOffWhereNobodyWroteWhenItWasSeen() {
    Bottle bottle = locker.bottle(polish, Optional.empty(), Optional.of(300), Optional.empty());
    Visit visit = locker.visit(MONDAY, VisitStatus.DONE, locker.topsides);
    locker.step(visit, StepKind.POLISH, polish, Optional.of(bottle.id()), 1);
    assertThat(locker.left(bottle).start()).isEqualTo(BottleLeft.Start.SEEN_SOME_DAY);
    assertThat(locker.left(bottle).left()).contains(300.0);
  }

  /** Both polished 24 ml out of none; the second bottle was opened between. */
  @Test
  void aStepWithoutABottleDrawsOnTheOneOpenedLastByThen() {
    Bottle old = full(polish);
    Bottle young = locker.bottle(polish, Optional.of(TUESDAY), Optional.empty(), Optional.empty());
    for (LocalDate day : List.of(MONDAY.minusYears(1), MONDAY, TUESDAY)) {
      Visit visit = locker.visit(day, VisitStatus.DONE, locker.transom);
      locker.step(visit, StepKind.POLISH, polish, Optional.empty(), 1);
    }
    assertThat(locker.left(old).drawn()).isCloseTo(24, within(1e-9));
    assertThat(locker.left(young).drawn()).isCloseTo(24, within(1e-9));
    assertThat(locker.supplies(TODAY).noBottle()).isEqualTo(1);
  }

  /** 26 m² · 200 ml mixed with 9 parts of water to one: 520 ml of soap. */
  @Test
  void aWashTakesOnlyTheProductInTheMixture() {
    Product soap = locker.product(ProductKind.SOAP, handling(9, null));
    Bottle bottle = full(soap);
    Visit visit = locker.visit(MONDAY, VisitStatus.DONE, locker.topsides, locker.transom);
    Step wash = locker.step(visit, StepKind.WASH, soap, Optional.of(bottle.id()), 1);
    assertThat(locker.left(bottle).drawn()).isCloseTo(520, within(1e-9));
    locker.set(wash, "partsWater", Optional.of(39));
    assertThat(locker.left(bottle).drawn()).isCloseTo(130, within(1e-9));
    locker.set(soap, "handling", Product.Handling.UNKNOWN);
    locker.set(wash, "partsWater", Optional.empty());
    assertThat(locker.left(bottle).drawn()).isZero();
    assertThat(locker.left(bottle).gaps()).isEqualTo(1);
  }

  @Test
  void whatHasNoKnownAreaIsSaidAndNotReckoned() {
    Product glass = locker.product(ProductKind.GLASS_COAT);
    Bottle bottle = full(glass);
    Visit visit = locker.visit(MONDAY, VisitStatus.DONE, locker.windows);
    locker.step(visit, StepKind.PROTECT, glass, Optional.of(bottle.id()), 1);
    assertThat(locker.left(bottle).gaps()).isEqualTo(1);
    assertThat(locker.left(bottle).left()).contains(1000.0);
  }

  /** 23 · 8 · 6 passes = 1104 ml of 1000. */
  @Test
  void nothingIsLeftUnderNothingAndSomebodyShouldLook() {
    Bottle bottle = full(polish);
    Visit visit = locker.visit(MONDAY, VisitStatus.DONE, locker.topsides);
    locker.step(visit, StepKind.POLISH, polish, Optional.of(bottle.id()), 6);
    assertThat(locker.left(bottle).overdrawn()).isTrue();
    assertThat(locker.left(bottle).left()).contains(0.0);
    assertThat(locker.left(bottle).reckoned().orElseThrow()).isCloseTo(-104, within(1e-9));
  }

  /** 26 m² · 6 ml = 156 ml on Friday; nothing of it is needed by Thursday. */
  @Test
  void whatIsPlannedUntilADayIsHeldAgainstWhatIsLeft() {
    Product sealant = locker.product(ProductKind.POLYMER_SEALANT);
    LocalDate friday = TODAY.plusDays(7);
    Visit visit = locker.visit(friday, VisitStatus.PLANNED, locker.topsides, locker.transom);
    locker.step(visit, StepKind.PROTECT, sealant, Optional.empty(), 1);
    assertThat(locker.supplies(friday.minusDays(1)).enough()).isEmpty();
    Enough none = locker.supplies(friday).enough().get(0);
    assertThat(none.need().middle()).isCloseTo(156, within(1e-9));
    assertThat(none.answer()).isEqualTo(Enough.Answer.UNKNOWN);
    Bottle bottle = seen(sealant, 100, TODAY);
    Enough little = locker.supplies(friday).enough().get(0);
    assertThat(little.answer()).isEqualTo(Enough.Answer.SHORT);
    assertThat(little.missing()).isCloseTo(little.need().high() - 100, within(1e-9));
    locker.set(bottle, "leftMl", Optional.of(160));
    assertThat(locker.supplies(friday).enough().get(0).answer()).isEqualTo(Enough.Answer.TIGHT);
    locker.set(bottle, "leftMl", Optional.of(900));
    assertThat(locker.supplies(friday).enough().get(0).answer()).isEqualTo(Enough.Answer.ENOUGH);
  }

  @Test
  void aBottlePastItsUseByOrOpenTooLongOnThatDayDoesNotCount() {
    Product sealant = locker.product(ProductKind.POLYMER_SEALANT, handling(null, 6));
    LocalDate friday = TODAY.plusDays(7);
    Visit visit = locker.visit(friday, VisitStatus.PLANNED, locker.topsides);
    locker.step(visit, StepKind.PROTECT, sealant, Optional.empty(), 1);
    Bottle past = locker.set(seen(sealant, 900, TODAY), "useBy", Optional.of(friday.minusDays(1)));
    Bottle open =
        locker.set(seen(sealant, 900, TODAY), "openedOn", Optional.of(friday.minusMonths(6)));
    assertThat(locker.supplies(friday).enough().get(0).left()).contains(900.0);
    locker.set(open, "openedOn", Optional.of(friday.minusMonths(6).minusDays(1)));
    Enough enough = locker.supplies(friday).enough().get(0);
    assertThat(enough.left()).contains(0.0);
    assertThat(enough.answer()).isEqualTo(Enough.Answer.SHORT);
    assertThat(enough.past()).extracting(b -> b.bottle().id()).containsExactly(past.id());
    assertThat(enough.openTooLong()).extracting(b -> b.bottle().id()).containsExactly(open.id());
    locker.set(past, "useBy", Optional.of(friday));
    assertThat(locker.supplies(friday).enough().get(0).left()).contains(900.0);
  }

  @Test
  void visitsWithoutStepsAreCountedAndNotGuessed() {
    locker.visit(TODAY.plusDays(3), VisitStatus.PLANNED, locker.topsides);
    locker.visit(TODAY.plusDays(30), VisitStatus.PLANNED, locker.topsides);
    Supplies supplies = locker.supplies(TODAY.plusDays(7));
    assertThat(supplies.visits()).isEqualTo(1);
    assertThat(supplies.unknown()).isEqualTo(1);
  }

  /** A visit made of an estimate that was accepted has steps, but no products yet. */
  @Test
  void plannedStepsWithoutAProductAreCountedAndNotGuessed() {
    Visit visit = locker.visit(TODAY, VisitStatus.PLANNED, locker.topsides, locker.transom);
    Step step = locker.step(visit, StepKind.POLISH, polish, Optional.empty(), 1);
    assertThat(locker.supplies(TODAY).unknown()).isZero();
    locker.set(step, "product", Optional.empty());
    assertThat(locker.supplies(TODAY).unknown()).isEqualTo(1);
    assertThat(locker.supplies(TODAY).enough()).isEmpty();
    for (StepKind kind : List.of(StepKind.INSPECT, StepKind.OTHER)) {
      locker.set(locker.set(step, "product", Optional.empty()), "kind", kind);
      assertThat(locker.supplies(TODAY).unknown()).as(kind + " may need nothing").isZero();
    }
  }

  @Test
  void aStepWithoutAProductIsUnknownOnlyWhileItIsStillToBeDoneByThen() {
    Visit visit = locker.visit(TODAY, VisitStatus.PLANNED, locker.transom);
    Step step = locker.step(visit, StepKind.POLISH, polish, Optional.empty(), 1);
    step = locker.set(step, "product", Optional.empty());
    locker.set(step, "day", TODAY.plusDays(2));
    assertThat(locker.supplies(TODAY.plusDays(1)).unknown()).isZero();
    assertThat(locker.supplies(TODAY.plusDays(2)).unknown()).isEqualTo(1);
    locker.set(
        visit,
        "surfaces",
        List.of(new Visit.Part(locker.transom.id(), WorkState.DONE, Optional.of(TODAY), "")));
    assertThat(locker.supplies(TODAY.plusDays(2)).unknown()).isZero();
  }

  @Test
  void aStepOnTheWholeOfABoatWithoutSurfacesIsCountedAndNotGuessed() {
    Visit visit = locker.visit(TODAY, VisitStatus.PLANNED);
    Step step = locker.step(visit, StepKind.POLISH, polish, Optional.empty(), 1);
    assertThat(step.surfaces()).isEmpty();
    assertThat(locker.supplies(TODAY).unknown()).isZero();
    locker.apply(Edit.remove(List.of(locker.topsides, locker.transom, locker.windows)));
    assertThat(locker.supplies(TODAY).unknown()).isEqualTo(1);
    assertThat(locker.supplies(TODAY).enough()).isEmpty();
  }

  @Test
  void aVisitLikeTheLastIsUnknownWhereNobodyWroteTheProductOfTheLast() {
    Optional<Id<CarePlan>> plan = Optional.of(new Id<>(77));
    Visit done = locker.set(locker.visit(MONDAY, VisitStatus.DONE, locker.topsides), "plan", plan);
    Step step = locker.step(done, StepKind.POLISH, polish, Optional.empty(), 1);
    locker.set(locker.visit(TODAY.plusDays(2), VisitStatus.PLANNED), "plan", plan);
    assertThat(locker.supplies(TODAY.plusDays(7)).unknown()).isZero();
    locker.set(step, "product", Optional.empty());
    Supplies supplies = locker.supplies(TODAY.plusDays(7));
    assertThat(supplies.likeLast()).isEqualTo(1);
    assertThat(supplies.unknown()).isEqualTo(1);
  }

  /** Twice 23 m² · 8 ml like the last of the plan, which polished the topsides alone. */
  @Test
  void aVisitOfACarePlanWithoutStepsNeedsWhatTheLastOfThatPlanTook() {
    Optional<Id<CarePlan>> plan = Optional.of(new Id<>(77));
    for (LocalDate day : List.of(MONDAY.minusYears(1), MONDAY)) {
      Visit done = locker.set(locker.visit(day, VisitStatus.DONE, locker.topsides), "plan", plan);
      locker.step(done, StepKind.POLISH, polish, Optional.empty(), day.equals(MONDAY) ? 1 : 5);
    }
    locker.set(locker.visit(TODAY.plusDays(2), VisitStatus.PLANNED), "plan", plan);
    locker.set(locker.visit(TODAY.plusDays(5), VisitStatus.PLANNED), "plan", plan);
    locker.set(locker.visit(TODAY.plusDays(8), VisitStatus.PLANNED), "plan", plan);
    Supplies supplies = locker.supplies(TODAY.plusDays(7));
    assertThat(supplies.enough().get(0).need().middle()).isCloseTo(368, within(1e-9));
    assertThat(supplies.enough().get(0).steps()).isEqualTo(2);
    assertThat(supplies.likeLast()).isEqualTo(2);
    assertThat(supplies.unknown()).isZero();
    assertThat(supplies.pads().get(0).planned()).isEqualTo(8);
  }

  /** Half done: the transom's 24 ml are gone, the topsides' 184 still needed. */
  @Test
  void ofAVisitHalfDoneTheDoneIsDrawnAndTheRestNeeded() {
    Bottle bottle = full(polish);
    Visit visit = locker.visit(TODAY, VisitStatus.PLANNED, locker.topsides, locker.transom);
    locker.step(visit, StepKind.POLISH, polish, Optional.of(bottle.id()), 1);
    locker.set(
        visit,
        "surfaces",
        List.of(
            visit.surfaces().get(0),
            new Visit.Part(locker.transom.id(), WorkState.DONE, Optional.of(TODAY), "")));
    assertThat(locker.left(bottle).drawn()).isCloseTo(24, within(1e-9));
    assertThat(locker.supplies(TODAY).enough().get(0).need().middle()).isCloseTo(184, within(1e-9));
  }

  /** Done two days after its step says: after a look on the day between. */
  @Test
  void aSurfaceDoneLaterThanItsStepIsDrawnOnTheDayItWasDone() {
    Bottle bottle = seen(polish, 700, TUESDAY);
    Visit visit = locker.visit(MONDAY, VisitStatus.DONE, locker.transom);
    locker.step(visit, StepKind.POLISH, polish, Optional.of(bottle.id()), 1);
    assertThat(locker.left(bottle).drawn()).isZero();
    locker.set(
        visit,
        "surfaces",
        List.of(
            new Visit.Part(
                locker.transom.id(), WorkState.DONE, Optional.of(MONDAY.plusDays(2)), "")));
    assertThat(locker.left(bottle).steps()).isEqualTo(1);
    assertThat(locker.left(bottle).drawn()).isPositive();
  }

  /**
   * A polishing pad is changed after 6 m²: 23 m² take 4, twice 8, so of 15 uses 8 are gone; 12
   * planned ones take the 7 that are left and 5 of a new one.
   */
  @Test
  void padsWearByUses() {
    Visit done = locker.visit(MONDAY, VisitStatus.DONE, locker.topsides);
    locker.step(done, StepKind.POLISH, polish, Optional.empty(), 2);
    Visit planned = locker.visit(TODAY, VisitStatus.PLANNED, locker.topsides);
    locker.step(planned, StepKind.POLISH, polish, Optional.empty(), 3);
    PadWear pad = locker.supplies(TODAY).pads().get(0);
    assertThat(pad).isEqualTo(new PadWear("soft foam", 8, 12, 15));
    assertThat(pad.worn()).isZero();
    assertThat(pad.onTheLast()).isEqualTo(8);
    assertThat(pad.toBuy()).isEqualTo(1);
    assertThat(new PadWear("soft foam", 30, 15, 15).toBuy()).isEqualTo(1);
    assertThat(new PadWear("soft foam", 31, 14, 15).toBuy()).isZero();
    assertThat(new PadWear("wet paper", 7, 3, 1).toBuy()).isEqualTo(3);
    assertThatThrownBy(() -> new PadWear("wool", -1, 0, 15))
        .hasMessageContaining("uses are not below 0");
  }
}
