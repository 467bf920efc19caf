package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Entered;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.fixture.OpenSample;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What was said on 1 January and what was seen in the year. Whether the shares of forecasts that
 * went otherwise are as promised is held elsewhere against invented fleets whose truth is known
 * (docs/study.md); here it is only whether each coat is judged rightly.
 */
class AuditTest {
  private static final LocalDate NEW_YEAR = LocalDate.of(2026, 1, 1);
  private static final LocalDate TODAY = LocalDate.of(2026, 12, 31);

  private final Scene scene = new Scene();
  private Outcome.Dated said;

  @BeforeEach
  void coatLaidInDecember() {
    scene.afloat();
    scene.yard.coat(
        scene.topsides, scene.yard.product(ProductKind.CARNAUBA, 3.0), LocalDate.of(2025, 12, 1));
    said =
        (Outcome.Dated) new Forecaster(scene.yard.almanac(), NEW_YEAR).inService().get(0).outcome();
    assertThat(said.early()).isAfter(NEW_YEAR.plusDays(15));
    assertThat(said.late().orElseThrow()).isBefore(TODAY.minusDays(30));
  }

  private void look(LocalDate day, WaterBehaviour behaviour, SurfaceState state, Entered entered) {
    int daysOn = (int) (day.toEpochDay() - Scene.LAID.toEpochDay());
    scene.water(daysOn, state, behaviour, entered);
  }

  private void look(LocalDate day, WaterBehaviour behaviour) {
    look(day, behaviour, SurfaceState.WASHED, Entered.GRID);
  }

  private List<Audit.Held> held() {
    List<Audit.Year> years = Audit.of(scene.yard.almanac(), TODAY);
    assertThat(years).extracting(Audit.Year::year).containsExactly(2026);
    return years.get(0).held();
  }

  @Test
  void bareBeforeTheLikelySpanWentEarlier() {
    look(said.early().minusDays(3), WaterBehaviour.FLAT);
    assertThat(held())
        .singleElement()
        .satisfies(
            h -> {
              assertThat(h.verdict()).isEqualTo(Audit.Verdict.EARLIER);
              assertThat(h.dates()).isEqualTo(said);
              assertThat(h.seenOn()).isEqualTo(said.early().minusDays(3));
            });
  }

  @Test
  void bareFromTheFirstDayOfTheSpanOnIsAsWasSaid() {
    look(said.early(), WaterBehaviour.FLAT);
    assertThat(held())
        .singleElement()
        .extracting(Audit.Held::verdict)
        .isEqualTo(Audit.Verdict.WITHIN);
  }

  @Test
  void aliveAfterTheLikelySpanLastedLonger() {
    look(said.late().orElseThrow().plusDays(1), WaterBehaviour.BEADS);
    assertThat(held())
        .singleElement()
        .extracting(Audit.Held::verdict)
        .isEqualTo(Audit.Verdict.LONGER);
  }

  @Test
  void aliveUpToTheLastDayOfTheSpanIsAsWasSaid() {
    look(said.early().minusDays(5), WaterBehaviour.BEADS);
    look(said.late().orElseThrow(), WaterBehaviour.SHEETS);
    assertThat(held())
        .singleElement()
        .extracting(Audit.Held::verdict)
        .isEqualTo(Audit.Verdict.WITHIN);
  }

  @Test
  void looksThatProveLittleAreNotHeldAgainstAnything() {
    look(said.early().minusDays(3), WaterBehaviour.FLAT, SurfaceState.DIRTY, Entered.GRID);
    look(said.early().minusDays(2), WaterBehaviour.BEADS, SurfaceState.WASHED, Entered.TWO_TOUCH);
    assertThat(held()).isEmpty();
  }

  @Test
  void whatLiesUnderAnotherCoatOrAfterItsEndIsNotHeld() {
    scene.yard.coat(scene.topsides, scene.sealant, said.early().minusDays(10));
    look(said.early().minusDays(3), WaterBehaviour.FLAT);
    assertThat(held()).isEmpty();
  }

  @Test
  void aLookOfTheYearChangesNothingOfWhatWasSaidOnItsFirstDay() {
    look(said.early().minusDays(3), WaterBehaviour.FLAT);
    look(said.late().orElseThrow().plusDays(20), WaterBehaviour.BEADS);
    assertThat(held()).singleElement().extracting(Audit.Held::dates).isEqualTo(said);
  }

  @Test
  void everyYearOfTheSampleIsHeldAndItsCountsAddUp() {
    List<Audit.Year> years = Audit.of(OpenSample.fleet().almanac(), LocalDate.of(2026, 5, 1));
    assertThat(years).hasSizeGreaterThan(2);
    assertThat(years.stream().mapToInt(y -> y.held().size()).sum()).isGreaterThan(50);
    for (Audit.Year year : years) {
      assertThat(
              year.count(Audit.Verdict.WITHIN)
                  + year.count(Audit.Verdict.EARLIER)
                  + year.count(Audit.Verdict.LONGER))
          .isEqualTo(year.held().size());
    }
  }
}
