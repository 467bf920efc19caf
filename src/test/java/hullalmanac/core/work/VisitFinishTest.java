package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static hullalmanac.core.work.Slip.ready;
import static hullalmanac.core.work.Slip.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.InService;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WashStrength;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a visit lays and ends. */
class VisitFinishTest {
  private static final LocalDate SPRING = LocalDate.of(2025, 4, 1);

  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Surface transom = slip.surface(SurfaceKind.TRANSOM);
  private final Surface cockpit = slip.surface(SurfaceKind.COCKPIT);
  private final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);
  private final Product spray = slip.product(ProductKind.SILICA_SPRAY);
  private final Product acid =
      slip.product(ProductKind.DECONTAMINANT, Optional.of(WashStrength.ACID_OR_ALKALI), false);
  private final Product polish = slip.product(ProductKind.POLISH);

  private Coat.Ending ending(Coat coat) {
    return slip.now(coat).ending().orElseThrow();
  }

  @Test
  void whatWasPlannedIsDoneOnTheDay() {
    Visit visit = slip.planned(DAY, topsides, transom);
    slip.step(visit, StepKind.WASH);
    slip.finish(visit, DAY);
    Visit done = slip.now(visit);
    assertThat(done.status()).isEqualTo(VisitStatus.DONE);
    assertThat(done.surfaces())
        .extracting(Visit.Part::surface, Visit.Part::state, Visit.Part::doneOn)
        .containsExactly(
            tuple(topsides.id(), WorkState.DONE, Optional.of(DAY)),
            tuple(transom.id(), WorkState.DONE, Optional.of(DAY)));
    assertThat(done.moves()).isEmpty();
    assertThat(slip.almanac().coats()).isEmpty();
  }

  @Test
  void whatWasDoneOrLeftBeforeStaysSo() {
    Visit.Part done =
        new Visit.Part(
            topsides.id(), WorkState.DONE, Optional.of(DAY.minusDays(1)), "port in the sun");
    Visit.Part left =
        new Visit.Part(transom.id(), WorkState.LEFT, Optional.empty(), "rain from noon");
    Visit visit =
        slip.visit(DAY.minusDays(1), VisitStatus.PLANNED, Optional.empty(), List.of(done, left));
    slip.step(visit, StepKind.PROTECT, sealant, topsides, transom);
    slip.finish(visit, DAY);
    assertThat(slip.now(visit).surfaces()).containsExactly(done, left);
    assertThat(slip.laid(visit, topsides))
        .singleElement()
        .extracting(Coat::laidOn)
        .isEqualTo(Optional.of(DAY.minusDays(1)));
    assertThat(slip.laid(visit, transom)).isEmpty();
  }

  @Test
  void aVisitWithoutSurfacesTakesThoseOfItsSteps() {
    Visit visit = slip.planned(DAY);
    slip.step(visit, StepKind.PROTECT, sealant, transom);
    slip.finish(visit, DAY);
    assertThat(slip.now(visit).surfaces())
        .extracting(Visit.Part::surface)
        .containsExactly(transom.id());
    assertThat(slip.laid(visit, transom)).hasSize(1);
  }

  @Test
  void aStepWithoutSurfacesIsOfTheWholeBoat() {
    Visit visit = slip.planned(DAY);
    slip.step(visit, StepKind.WASH);
    slip.step(visit, StepKind.PROTECT, sealant, transom);
    slip.finish(visit, DAY);
    assertThat(slip.now(visit).surfaces())
        .extracting(Visit.Part::surface)
        .containsExactlyInAnyOrder(topsides.id(), transom.id(), cockpit.id());
    assertThat(slip.almanac().coats()).extracting(Coat::surface).containsExactly(transom.id());
  }

  @Test
  void aStepOfTheWholeBoatKeepsToTheSurfacesOfTheVisit() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant);
    slip.finish(visit, DAY);
    assertThat(slip.almanac().coats()).extracting(Coat::surface).containsExactly(topsides.id());
  }

  @Test
  void aSurfaceThatOnlyAStepNamesIsDoneToo() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides, transom);
    slip.finish(visit, DAY);
    assertThat(slip.now(visit).surfaces())
        .extracting(Visit.Part::surface)
        .containsExactly(topsides.id(), transom.id());
    assertThat(slip.laid(visit, transom)).hasSize(1);
  }

  @Test
  void aCoatHasWhatItsStepSays() {
    Bottle bottle = slip.bottle(sealant, Optional.empty(), Optional.of(200));
    Visit visit = slip.planned(DAY, topsides);
    Step step = slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.change(step, StepKind.PROTECT, Optional.of(sealant), Optional.of(bottle), Optional.of(2));
    slip.finish(visit, DAY);
    Coat coat = slip.laid(visit, topsides).get(0);
    assertThat(coat.product()).isEqualTo(sealant.id());
    assertThat(coat.bottle()).contains(bottle.id());
    assertThat(coat.batch()).isEqualTo(bottle.batch());
    assertThat(coat.layers()).isEqualTo(2);
    assertThat(coat.laidOn()).contains(DAY);
    assertThat(coat.over()).isEmpty();
    assertThat(coat.ending()).isEmpty();
  }

  @Test
  void stepsWithOneProductAreLayersOfOneCoatAndNeverMoreThanNine() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    Step second = slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.finish(visit, DAY);
    assertThat(slip.laid(visit, topsides)).extracting(Coat::layers).containsExactly(2);
    slip.change(second, StepKind.PROTECT, Optional.of(sealant), Optional.empty(), Optional.of(12));
    slip.finish(visit, DAY);
    assertThat(slip.laid(visit, topsides)).extracting(Coat::layers).containsExactly(9);
  }

  @Test
  void ofTwoProductsTheLastIsTheCoatAndCountsAlone() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, spray, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.finish(visit, DAY);
    assertThat(slip.laid(visit, topsides))
        .extracting(Coat::product, Coat::layers)
        .containsExactly(tuple(sealant.id(), 1));
  }

  @Test
  void aNewCoatEndsTheOldOneAndItsTopper() {
    Coat base = slip.coat(topsides, sealant, SPRING);
    Coat topper =
        slip.coat(topsides, spray, SPRING.plusMonths(5), Optional.of(base), Optional.empty());
    Coat elsewhere = slip.coat(transom, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.finish(visit, DAY);
    Coat.Ending renewed = new Coat.Ending(DAY, CoatEnd.RENEWED, EndState.NOT_LOOKED, "");
    assertThat(ending(base)).isEqualTo(renewed);
    assertThat(ending(topper)).isEqualTo(renewed);
    assertThat(slip.now(elsewhere).ending()).isEmpty();
    assertThat(slip.serving(topsides, DAY)).isEqualTo(slip.laid(visit, topsides));
  }

  @Test
  void aCoatThatHadEndedBeforeKeepsItsEnding() {
    Coat.Ending old =
        new Coat.Ending(
            SPRING.plusMonths(6), CoatEnd.STRIPPED, EndState.FLAT, "sanded by the yard");
    Coat ended = slip.coat(topsides, sealant, SPRING, Optional.empty(), Optional.of(old));
    Coat replaced = slip.coat(transom, sealant, SPRING);
    slip.coat(transom, sealant, SPRING.plusMonths(7));
    Visit visit = slip.planned(DAY, topsides, transom);
    slip.step(visit, StepKind.PROTECT, sealant, topsides, transom);
    slip.finish(visit, DAY);
    assertThat(ending(ended)).isEqualTo(old);
    assertThat(slip.now(replaced).ending()).isEmpty();
  }

  @Test
  void aTopperLiesOverTheCoatInServiceAndEndsOnlyToppers() {
    Coat base = slip.coat(topsides, sealant, SPRING);
    Coat topper =
        slip.coat(topsides, spray, SPRING.plusMonths(5), Optional.of(base), Optional.empty());
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.TOP, spray, topsides);
    slip.finish(visit, DAY);
    assertThat(slip.laid(visit, topsides))
        .singleElement()
        .extracting(Coat::over)
        .isEqualTo(Optional.of(base.id()));
    assertThat(slip.now(base).ending()).isEmpty();
    assertThat(ending(topper).how()).isEqualTo(CoatEnd.RENEWED);
  }

  @Test
  void aTopperOverTheCoatOfItsOwnVisitLiesOverThat() {
    slip.coat(topsides, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.step(visit, StepKind.TOP, spray, topsides);
    slip.finish(visit, DAY);
    List<Coat> laid = slip.laid(visit, topsides);
    assertThat(laid).hasSize(2);
    assertThat(laid.get(1).over()).contains(laid.get(0).id());
    assertThat(slip.serving(topsides, DAY)).isEqualTo(laid);
  }

  @Test
  void aTopperOverNothingIsACoatOfItsOwn() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.TOP, spray, topsides);
    slip.finish(visit, DAY);
    assertThat(slip.laid(visit, topsides))
        .singleElement()
        .extracting(Coat::over)
        .isEqualTo(Optional.empty());
  }

  @Test
  void decontaminatingCuttingOrPolishingBeforeANewCoatStripsTheOldOne() {
    for (StepKind kind : List.of(StepKind.DECONTAMINATE, StepKind.CUT, StepKind.POLISH)) {
      Slip fresh = new Slip();
      Surface surface = fresh.surface(SurfaceKind.TOPSIDES);
      Product product = fresh.product(ProductKind.POLYMER_SEALANT);
      Coat old = fresh.coat(surface, product, SPRING);
      Visit visit = fresh.planned(DAY, surface);
      fresh.step(visit, kind, surface);
      fresh.step(visit, StepKind.PROTECT, product, surface);
      fresh.finish(visit, DAY);
      assertThat(fresh.now(old).ending().orElseThrow().how()).isEqualTo(CoatEnd.STRIPPED);
    }
  }

  @Test
  void cuttingAndPolishingAloneStripAndLeaveNothing() {
    Coat base = slip.coat(topsides, sealant, SPRING);
    Coat topper =
        slip.coat(topsides, spray, SPRING.plusMonths(5), Optional.of(base), Optional.empty());
    Coat cut = slip.coat(transom, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides, transom);
    slip.step(visit, StepKind.POLISH, polish, topsides);
    slip.step(visit, StepKind.CUT, transom);
    slip.finish(visit, DAY);
    assertThat(List.of(base, topper, cut))
        .extracting(c -> ending(c).how())
        .containsOnly(CoatEnd.STRIPPED);
    assertThat(slip.serving(topsides, DAY)).isEmpty();
    assertThat(slip.serving(transom, DAY)).isEmpty();
  }

  @Test
  void decontaminatingAloneCostsLifeAndEndsNothing() {
    Coat coat = slip.coat(topsides, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.DECONTAMINATE, acid, topsides);
    slip.finish(visit, DAY);
    assertThat(slip.now(coat)).isEqualTo(coat);
  }

  @Test
  void aTopperAfterPolishingLiesOnTheBareSurface() {
    Coat base = slip.coat(topsides, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.POLISH, polish, topsides);
    slip.step(visit, StepKind.TOP, spray, topsides);
    slip.finish(visit, DAY);
    assertThat(ending(base).how()).isEqualTo(CoatEnd.STRIPPED);
    assertThat(slip.laid(visit, topsides).get(0).over()).isEmpty();
  }

  @Test
  void whatWaterDidIsTheLastThatWasSeenOfTheOldCoat() {
    for (WaterBehaviour seen : WaterBehaviour.values()) {
      Slip fresh = new Slip();
      Surface surface = fresh.surface(SurfaceKind.TOPSIDES);
      Product product = fresh.product(ProductKind.POLYMER_SEALANT);
      Coat old = fresh.coat(surface, product, SPRING);
      Visit visit = fresh.planned(DAY, surface);
      fresh.step(visit, StepKind.PROTECT, product, surface);
      fresh.water(visit, surface, DAY, seen);
      fresh.finish(visit, DAY);
      assertThat(fresh.now(old).ending().orElseThrow().seen().code()).isEqualTo(seen.code());
    }
  }

  @Test
  void aLookAfterProtectingOrInAnotherVisitOrElsewhereSaysNothingOfTheOldCoat() {
    Coat old = slip.coat(topsides, sealant, SPRING);
    Visit other = slip.planned(DAY);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.water(visit, topsides, DAY.plusDays(1), WaterBehaviour.BEADS);
    slip.water(other, topsides, DAY, WaterBehaviour.BEADS);
    slip.water(visit, transom, DAY, WaterBehaviour.BEADS);
    slip.finish(visit, DAY);
    assertThat(ending(old).seen()).isEqualTo(EndState.NOT_LOOKED);
  }

  @Test
  void waterSpeaksOfTheTopperAndNotOfWhatIsUnderIt() {
    Coat base = slip.coat(topsides, sealant, SPRING);
    Coat topper =
        slip.coat(topsides, spray, SPRING.plusMonths(5), Optional.of(base), Optional.empty());
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.water(visit, topsides, DAY, WaterBehaviour.BEADS);
    slip.finish(visit, DAY);
    assertThat(ending(topper).seen()).isEqualTo(EndState.BEADS);
    assertThat(ending(base).seen()).isEqualTo(EndState.NOT_LOOKED);
  }

  @Test
  void asksOfSurfacesWhoseCoatEndsWithoutALook() {
    slip.coat(topsides, sealant, SPRING);
    slip.coat(transom, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides, transom, cockpit);
    slip.step(visit, StepKind.PROTECT, topsides, transom, cockpit);
    slip.water(visit, transom, DAY, WaterBehaviour.FLAT);
    assertThat(VisitFinish.questions(slip.almanac(), visit.id(), DAY)).containsExactly(topsides);
    slip.water(visit, topsides, DAY, WaterBehaviour.BEADS);
    assertThat(VisitFinish.questions(slip.almanac(), visit.id(), DAY)).isEmpty();
  }

  @Test
  void doesNotAskWhereWaterWasLookedAtAnyTimeInTheVisit() {
    slip.coat(topsides, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.water(visit, topsides, DAY.plusDays(1), WaterBehaviour.BEADS);
    assertThat(VisitFinish.questions(slip.almanac(), visit.id(), DAY)).isEmpty();
  }

  @Test
  void doesNotAskAboutAWashOrATopperOverACoatAlone() {
    slip.coat(topsides, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.WASH, topsides);
    slip.step(visit, StepKind.TOP, spray, topsides);
    assertThat(VisitFinish.questions(slip.almanac(), visit.id(), DAY)).isEmpty();
  }

  @Test
  void whatCannotBeLaidIsRefused() {
    Visit visit = slip.planned(DAY, topsides);
    Step step = slip.step(visit, StepKind.PROTECT, topsides);
    assertThat(refused(slip.finishing(visit, DAY)))
        .extracting(Problem::key, Problem::field)
        .containsExactly(tuple(step.key(), "product"));
    slip.change(step, StepKind.PROTECT, Optional.of(polish), Optional.empty(), Optional.empty());
    assertThat(refused(slip.finishing(visit, DAY)))
        .singleElement()
        .satisfies(p -> assertThat(p.key()).isEqualTo(step.key()))
        .extracting(Problem::message)
        .asString()
        .contains("polish", "protects");
    slip.change(step, StepKind.TOP, Optional.of(polish), Optional.empty(), Optional.empty());
    assertThat(refused(slip.finishing(visit, DAY))).hasSize(1);
    slip.change(step, StepKind.TOP, Optional.of(spray), Optional.empty(), Optional.empty());
    assertThat(ready(slip.finishing(visit, DAY)).put()).isNotEmpty();
  }

  @Test
  void aStepLeftUndoneNeedsNoProduct() {
    Visit visit =
        slip.visit(
            DAY,
            VisitStatus.PLANNED,
            Optional.empty(),
            List.of(new Visit.Part(topsides.id(), WorkState.LEFT, Optional.empty(), "rain")));
    slip.step(visit, StepKind.PROTECT, topsides);
    slip.finish(visit, DAY);
    assertThat(slip.almanac().coats()).isEmpty();
  }

  /** History is often written down backwards: a visit ends what lay there then. */
  @Test
  void aVisitWrittenDownLateEndsNoYoungerCoat() {
    Coat oldest = slip.coat(topsides, sealant, DAY.minusYears(2));
    Coat younger = slip.coat(topsides, sealant, DAY.plusDays(90));
    Visit late = slip.planned(DAY, topsides);
    slip.step(late, StepKind.PROTECT, sealant, topsides);
    slip.finish(late, DAY);
    assertThat(slip.now(younger)).isEqualTo(younger);
    assertThat(slip.now(oldest).ending()).get().extracting(Coat.Ending::on).isEqualTo(DAY);
    InService service = new InService(slip.almanac().coats());
    assertThat(service.on(topsides.id(), DAY.plusDays(30)))
        .singleElement()
        .satisfies(coat -> assertThat(coat.visit()).contains(late.id()));
    assertThat(service.on(topsides.id(), DAY.plusDays(90))).containsExactly(younger);
  }

  @Test
  void aCancelledVisitIsRefusedAndAsksNothing() {
    slip.coat(topsides, sealant, SPRING);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    slip.apply(VisitMove.cancel(slip.almanac(), visit, MoveReason.OWNER));
    assertThat(refused(slip.finishing(visit, DAY)))
        .extracting(Problem::field)
        .containsExactly("status");
    assertThat(VisitFinish.questions(slip.almanac(), visit.id(), DAY)).isEmpty();
  }

  @Test
  void polishingWhatTheVisitItselfLaidIsRefused() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.PROTECT, sealant, topsides);
    Step step = slip.step(visit, StepKind.POLISH, polish, topsides);
    assertThat(refused(slip.finishing(visit, DAY)))
        .extracting(Problem::key, Problem::field)
        .containsExactly(tuple(step.key(), "order"));
  }
}
