package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How coats end where the day, or the order of the work, is not plain. */
class VisitEndingsTest {
  private static final LocalDate SPRING = LocalDate.of(2025, 4, 1);

  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);
  private final Product spray = slip.product(ProductKind.SILICA_SPRAY);
  private final Coat old = slip.coat(topsides, sealant, SPRING);

  private Visit visit(LocalDate day, StepKind kind, Product product) {
    Visit visit = slip.planned(day, topsides);
    slip.step(visit, kind, product, topsides);
    slip.finish(visit, day);
    return visit;
  }

  private Coat laid(Visit visit) {
    return slip.laid(visit, topsides).get(0);
  }

  private Coat.Ending ending(Coat coat) {
    return slip.now(coat).ending().orElseThrow();
  }

  private void takeOut(Visit visit) {
    slip.apply(Removal.of(slip.almanac(), slip.now(visit)));
  }

  // A topper laid over a base coat.

  @Test
  void aTopperLaidOnTheDayOfItsBaseByAnotherVisitOutlivesTheNextTopperOnly() {
    Visit morning = visit(DAY, StepKind.PROTECT, sealant);
    Visit noon = visit(DAY, StepKind.TOP, spray);
    Coat first = laid(noon);
    Visit evening = visit(DAY, StepKind.TOP, spray);
    assertThat(laid(evening).over()).contains(laid(morning).id());
    assertThat(ending(first))
        .isEqualTo(new Coat.Ending(DAY, CoatEnd.RENEWED, EndState.NOT_LOOKED, ""));
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(morning), laid(evening));
    slip.finish(noon, DAY);
    slip.finish(morning, DAY);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(morning), laid(evening));
    takeOut(evening);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(morning), first);
  }

  @Test
  void decontaminatingBeforeATopperTakesOffTheOldTopperAndLeavesTheBase() {
    Visit summer = visit(DAY.minusDays(200), StepKind.TOP, spray);
    Coat topper = laid(summer);
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.DECONTAMINATE, topsides);
    slip.step(visit, StepKind.TOP, spray, topsides);
    slip.finish(visit, DAY);
    assertThat(ending(topper).how()).isEqualTo(CoatEnd.STRIPPED);
    assertThat(slip.now(old).ending()).isEmpty();
    assertThat(laid(visit).over()).contains(old.id());
  }

  @Test
  void aTopperGoesWithTheBaseThatIsRenewedOnTheSameDay() {
    Visit noon = visit(DAY, StepKind.TOP, spray);
    Visit evening = visit(DAY, StepKind.PROTECT, sealant);
    assertThat(ending(old).how()).isEqualTo(CoatEnd.RENEWED);
    assertThat(ending(laid(noon)).how()).isEqualTo(CoatEnd.RENEWED);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(evening));
    slip.finish(noon, DAY);
    assertThat(laid(noon).over()).contains(old.id());
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(evening));
    takeOut(evening);
    assertThat(slip.now(old).ending()).isEmpty();
    assertThat(slip.serving(topsides, DAY)).containsExactly(slip.now(old), laid(noon));
  }

  // A coat stripped by a cut.

  @Test
  void aCutStripsOnItsOwnDayAlsoWhenTheNewCoatIsLaidDaysLater() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.CUT, DAY, Optional.empty(), topsides);
    slip.step(visit, StepKind.PROTECT, DAY.plusDays(6), Optional.of(sealant), topsides);
    slip.finish(visit, DAY.plusDays(6));
    assertThat(ending(old))
        .isEqualTo(new Coat.Ending(DAY, CoatEnd.STRIPPED, EndState.NOT_LOOKED, ""));
    assertThat(slip.serving(topsides, DAY.plusDays(3))).isEmpty();
    assertThat(slip.serving(topsides, DAY.plusDays(6))).containsExactly(laid(visit));
    takeOut(visit);
    assertThat(slip.almanac().coats()).containsExactly(old);
  }

  @Test
  void whatWaterDidBeforeACutIsSeenOfTheOldCoat() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.CUT, DAY, Optional.empty(), topsides);
    slip.step(visit, StepKind.PROTECT, DAY.plusDays(1), Optional.of(sealant), topsides);
    slip.water(visit, topsides, DAY, WaterBehaviour.SHEETS);
    slip.water(visit, topsides, DAY.plusDays(1), WaterBehaviour.FLAT);
    slip.finish(visit, DAY.plusDays(1));
    assertThat(ending(old).seen()).isEqualTo(EndState.SHEETS);
  }

  @Test
  void aCutOfTheEveningStripsWhatWasLaidInTheMorning() {
    Visit morning = visit(DAY, StepKind.PROTECT, sealant);
    Visit evening = slip.planned(DAY, topsides);
    Step cut = slip.step(evening, StepKind.CUT, topsides);
    slip.finish(evening, DAY);
    assertThat(ending(laid(morning)).how()).isEqualTo(CoatEnd.STRIPPED);
    assertThat(ending(old).how()).isEqualTo(CoatEnd.RENEWED);
    assertThat(slip.serving(topsides, DAY)).isEmpty();
    slip.change(cut, StepKind.WASH, Optional.empty(), Optional.empty(), Optional.empty());
    slip.finish(evening, DAY);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(morning));
  }

  @Test
  void aCutOfTheMorningLeavesWhatWasLaidAfterIt() {
    Visit morning = slip.planned(DAY, topsides);
    slip.step(morning, StepKind.CUT, topsides);
    slip.finish(morning, DAY);
    Visit evening = visit(DAY, StepKind.PROTECT, spray);
    assertThat(ending(old).how()).isEqualTo(CoatEnd.STRIPPED);
    slip.finish(morning, DAY);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(evening));
    assertThat(ending(old).how()).isEqualTo(CoatEnd.STRIPPED);
  }

  /** Polished and protected in the morning, then washed in the evening, or so it was taken. */
  @Test
  void aWashThatWasACutAfterAllTakesOffWhatWasLaidThatDay() {
    Visit morning = slip.planned(DAY, topsides);
    slip.step(morning, StepKind.POLISH, topsides);
    slip.step(morning, StepKind.PROTECT, sealant, topsides);
    slip.finish(morning, DAY);
    Visit evening = slip.planned(DAY, topsides);
    Step wash = slip.step(evening, StepKind.WASH, topsides);
    slip.finish(evening, DAY);
    Step cut = With.component(wash, "kind", StepKind.CUT);
    slip.apply(VisitChange.of(slip.almanac(), slip.ids, evening.id(), Edit.put(cut)));
    assertThat(ending(laid(morning)).how()).isEqualTo(CoatEnd.STRIPPED);
    slip.finish(evening, DAY);
    assertThat(slip.serving(topsides, DAY)).isEmpty();
    slip.apply(VisitChange.of(slip.almanac(), slip.ids, evening.id(), Edit.put(wash)));
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(morning));
  }

  @Test
  void aSurfaceThatWasCutAndThenLeftAfterAllHasItsOldCoatAgain() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.CUT, topsides);
    slip.finish(visit, DAY);
    assertThat(slip.serving(topsides, DAY)).isEmpty();
    Visit.Part left = new Visit.Part(topsides.id(), WorkState.LEFT, Optional.empty(), "rain");
    Edit edit = Edit.put(Altered.parts(slip.now(visit), Optional.empty(), List.of(left)));
    slip.apply(VisitChange.of(slip.almanac(), slip.ids, visit.id(), edit));
    assertThat(slip.now(old)).isEqualTo(old);
  }

  @Test
  void aCutThatIsMovedToAnotherDayStripsThenAndNotBefore() {
    Visit visit = slip.planned(DAY, topsides);
    slip.step(visit, StepKind.WASH, DAY, Optional.empty(), topsides);
    Step cut = slip.step(visit, StepKind.CUT, DAY.plusDays(1), Optional.empty(), topsides);
    slip.step(visit, StepKind.PROTECT, DAY.plusDays(4), Optional.of(sealant), topsides);
    slip.finish(visit, DAY.plusDays(4));
    assertThat(ending(old).on()).isEqualTo(DAY.plusDays(1));
    Step later = With.component(slip.now(cut), "day", DAY.plusDays(3));
    slip.apply(VisitChange.of(slip.almanac(), slip.ids, visit.id(), Edit.put(later)));
    assertThat(ending(old).on()).isEqualTo(DAY.plusDays(3));
  }

  @Test
  void aCutThatWasDoneLaterThanPlannedStripsThenAndIsTakenBackWhole() {
    Visit visit = slip.planned(DAY, topsides);
    Step cut = slip.step(visit, StepKind.CUT, DAY, Optional.empty(), topsides);
    Step polish = slip.step(visit, StepKind.POLISH, DAY.plusDays(1), Optional.empty(), topsides);
    slip.finish(visit, DAY.plusDays(1));
    assertThat(ending(old).on()).isEqualTo(DAY);
    Visit done = slip.now(visit);
    Visit.Part part = done.surfaces().get(0);
    Visit.Part late =
        new Visit.Part(part.surface(), part.state(), Optional.of(DAY.plusDays(5)), part.note());
    slip.put(Altered.parts(done, done.plan(), List.of(late)));
    slip.finish(visit, DAY);
    assertThat(ending(old).on()).isEqualTo(DAY.plusDays(4));
    for (Step step : List.of(cut, polish)) {
      slip.change(step, StepKind.WASH, Optional.empty(), Optional.empty(), Optional.empty());
    }
    slip.finish(visit, DAY);
    assertThat(slip.now(old)).isEqualTo(old);
  }

  // A coat renewed on the day on which it was laid.

  @Test
  void aCoatRenewedOnItsOwnDayEndsThatDay() {
    Visit morning = visit(DAY, StepKind.PROTECT, sealant);
    Coat first = laid(morning);
    Visit evening = visit(DAY, StepKind.PROTECT, spray);
    assertThat(List.of(old, first))
        .extracting(this::ending)
        .extracting(Coat.Ending::on, Coat.Ending::how)
        .containsOnly(tuple(DAY, CoatEnd.RENEWED));
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(evening));
    assertThat(slip.serving(topsides, DAY.plusDays(100))).containsExactly(laid(evening));
    slip.finish(morning, DAY);
    slip.finish(evening, DAY);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(evening));
    assertThat(ending(laid(morning)).how()).isEqualTo(CoatEnd.RENEWED);
  }

  @Test
  void ofTwoVisitsOfADayEitherCanBeTakenOut() {
    Visit morning = visit(DAY, StepKind.PROTECT, sealant);
    Visit evening = visit(DAY, StepKind.PROTECT, spray);
    takeOut(evening);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(morning));
    assertThat(ending(old).how()).isEqualTo(CoatEnd.RENEWED);
    Visit again = visit(DAY, StepKind.PROTECT, spray);
    takeOut(morning);
    assertThat(slip.serving(topsides, DAY)).containsExactly(laid(again));
    assertThat(ending(old).how()).isEqualTo(CoatEnd.RENEWED);
    takeOut(again);
    assertThat(slip.almanac().coats()).containsExactly(old);
  }

  @Test
  void aLookOfTheEveningSpeaksOfTheCoatOfTheMorning() {
    Visit morning = visit(DAY, StepKind.PROTECT, sealant);
    Visit evening = slip.planned(DAY, topsides);
    slip.step(evening, StepKind.PROTECT, spray, topsides);
    slip.water(evening, topsides, DAY, WaterBehaviour.FLAT);
    slip.finish(evening, DAY);
    assertThat(ending(laid(morning)).seen()).isEqualTo(EndState.FLAT);
    assertThat(ending(old).seen()).isEqualTo(EndState.NOT_LOOKED);
  }
}
