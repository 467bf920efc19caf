package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static hullalmanac.core.work.Slip.refused;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What goes with a row, and what stays. */
class RemovalTest {
  private static final LocalDate SPRING = LocalDate.of(2025, 4, 1);

  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Surface transom = slip.surface(SurfaceKind.TRANSOM);
  private final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);

  private Almanac remove(Row row) {
    return slip.apply(Removal.of(slip.almanac(), row));
  }

  private CarePlan monthly() {
    return slip.plan(4, List.of(Month.values()), DAY, Optional.empty());
  }

  private Visit ofPlan(CarePlan plan, VisitStatus status) {
    return slip.visit(DAY, status, Optional.of(plan.id()), List.of());
  }

  @Test
  void aStepOfSeveralSurfacesLosesOneAndAStepOfOneGoes() {
    Visit visit = slip.planned(DAY, topsides, transom);
    Step both = slip.step(visit, StepKind.PROTECT, sealant, topsides, transom);
    Step one = slip.step(visit, StepKind.POLISH, topsides);
    Step whole = slip.step(visit, StepKind.WASH);
    Almanac after = remove(topsides);
    assertThat(slip.now(both).surfaces()).containsExactly(transom.id());
    assertThat(after.steps()).extracting(Step::id).doesNotContain(one.id()).contains(whole.id());
    assertThat(slip.now(visit).surfaces())
        .extracting(Visit.Part::surface)
        .containsExactly(transom.id());
  }

  @Test
  void whatIsInUseIsKeptAndSaysWhere() {
    Bottle bottle = slip.bottle(sealant, Optional.empty(), Optional.empty());
    Visit visit = slip.planned(DAY, topsides);
    Step step = slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.change(
        step, StepKind.PROTECT, Optional.of(sealant), Optional.of(bottle), Optional.empty());
    assertThat(refused(Removal.of(slip.almanac(), sealant)))
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .contains(visit.key());
    assertThat(refused(Removal.of(slip.almanac(), bottle)))
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .contains(visit.key());
    slip.finish(visit, DAY);
    assertThat(refused(Removal.of(slip.almanac(), sealant)).get(0).message())
        .contains("coat on " + slip.boat.name());
    remove(visit);
    Almanac after = remove(sealant);
    assertThat(after.products()).isEmpty();
    assertThat(after.bottles()).isEmpty();
  }

  @Test
  void aBottleThatAStepNamesWithoutItsProductKeepsTheProduct() {
    Bottle bottle = slip.bottle(sealant, Optional.empty(), Optional.empty());
    Visit visit = slip.planned(DAY, topsides);
    Step step = slip.step(visit, StepKind.OTHER, topsides);
    slip.change(step, StepKind.OTHER, Optional.empty(), Optional.of(bottle), Optional.empty());
    assertThat(refused(Removal.of(slip.almanac(), sealant))).hasSize(1);
  }

  @Test
  void aCarePlanTakesItsPlannedVisitsAndLeavesTheOthers() {
    CarePlan plan = monthly();
    Visit done = ofPlan(plan, VisitStatus.DONE);
    Visit cancelled = Altered.cancelled(ofPlan(plan, VisitStatus.PLANNED), MoveReason.OWNER);
    slip.put(cancelled);
    ofPlan(plan, VisitStatus.PLANNED);
    Almanac after = remove(plan);
    assertThat(after.visits())
        .extracting(Visit::id)
        .containsExactlyInAnyOrder(done.id(), cancelled.id());
    assertThat(after.visits()).allMatch(v -> v.plan().isEmpty());
    assertThat(after.carePlans()).isEmpty();
  }

  @Test
  void aPlannedVisitOfACarePlanIsNotMadeAgain() {
    CarePlan plan = monthly();
    LocalDate end = DAY.plusWeeks(9);
    slip.apply(PlannedVisits.edit(slip.almanac(), slip.ids, DAY, end));
    Visit second =
        slip.almanac().visits().stream()
            .filter(v -> v.day().equals(DAY.plusWeeks(4)))
            .findFirst()
            .orElseThrow();
    slip.apply(VisitMove.move(slip.almanac(), second, DAY.plusWeeks(5), MoveReason.WEATHER));
    remove(slip.now(second));
    assertThat(slip.now(slip.almanac().carePlans(), plan).skips())
        .containsExactly(DAY.plusWeeks(4));
    assertThat(PlannedVisits.edit(slip.almanac(), slip.ids, DAY, end).isEmpty()).isTrue();
  }

  @Test
  void aDoneVisitOfACarePlanLeavesNoSkip() {
    CarePlan plan = monthly();
    remove(ofPlan(plan, VisitStatus.DONE));
    assertThat(slip.now(slip.almanac().carePlans(), plan).skips()).isEmpty();
  }

  @Test
  void aVisitTakesTheCoatsItLaidAndPutsBackThoseItEnded() {
    Coat old = slip.coat(topsides, sealant, SPRING);
    Coat.Ending sanded =
        new Coat.Ending(SPRING.plusDays(9), CoatEnd.STRIPPED, EndState.FLAT, "sanded");
    Coat gone = slip.coat(transom, sealant, SPRING, Optional.empty(), Optional.of(sanded));
    Visit visit = slip.planned(DAY, topsides, transom);
    slip.step(visit, StepKind.PROTECT, sealant, topsides, transom);
    slip.finish(visit, DAY);
    Almanac after = remove(visit);
    assertThat(after.coats()).containsExactlyInAnyOrder(old, gone);
  }

  @Test
  void aCoatOnlyMetInAVisitStays() {
    Visit visit = slip.planned(DAY, topsides);
    Coat met =
        slip.put(
            new Coat(
                slip.ids.next(),
                "met",
                topsides.id(),
                sealant.id(),
                Optional.empty(),
                Optional.of(DAY),
                Optional.of(visit.id()),
                Optional.empty(),
                "",
                1,
                Optional.empty(),
                Optional.empty(),
                ""));
    remove(visit);
    assertThat(slip.now(met)).isEqualTo(Altered.withoutVisit(met));
  }

  @Test
  void aCoatTakesTheToppersOverIt() {
    Coat base = slip.coat(topsides, sealant, SPRING);
    slip.coat(topsides, sealant, SPRING.plusDays(50), Optional.of(base), Optional.empty());
    Coat other = slip.coat(transom, sealant, SPRING);
    assertThat(remove(base).coats()).containsExactly(other);
  }

  @Test
  void aRowThatIsNotThereIsGoneAlready() {
    Boat elsewhere = slip.boat("smew", BoatStatus.ACTIVE);
    Almanac before = slip.almanac();
    assertThat(remove(elsewhere)).isEqualTo(before);
  }
}
