package hullalmanac.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.finish.Budget;
import hullalmanac.core.finish.Defect;
import hullalmanac.core.finish.Judged;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Plans;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.finish.TestSpot;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Unit;
import hullalmanac.core.record.With;
import hullalmanac.core.report.Caution;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** From what is asked to plans. */
class SurfacePlansTest {
  private final Hull hull = new Hull();
  private final Asked usual = Asked.of(hull.topsides.id());

  private static Asked with(Asked asked, String component, Object value) {
    return With.component(asked, component, value);
  }

  /** Topsides of 12 years reach 87; 5 less is usual, and all that can go is to go. */
  @Test
  void whatIsNotSaidIsAsUsual() {
    SurfacePlans answer = hull.plans(usual);
    assertThat(answer.agreed().gloss()).isEqualTo(82);
    assertThat(answer.agreed().gone()).containsExactly(Defect.CHALKING_CLEAR);
    assertThat(answer.agreed().edgesTaped()).isTrue();
    assertThat(answer.area().orElseThrow().squareMetres()).isCloseTo(24.2, within(1e-9));
    assertThat(answer.spare().orElseThrow().flatsMicrons()).isEqualTo(250);
    assertThat(answer.own()).isEmpty();
    assertThat(Hull.found(answer))
        .isNotEmpty()
        .allMatch(p -> p.chance() >= 0.8 && p.stages().contains(Stage.MEDIUM));
    assertThat(answer.choices()).isEqualTo(Hull.found(answer));
    assertThat(answer.protection()).contains(hull.sealant);
  }

  @Test
  void scratchesThatStayAreNotAskedToGo() {
    SurfacePlans answer =
        hull.plans(
            with(
                usual,
                "also",
                List.of(Defect.CLOUDINESS, Defect.SCRATCHES_THROUGH, Defect.SCRATCHES_FELT)));
    assertThat(answer.seen()).contains(Defect.CLOUDINESS, Defect.SCRATCHES_FELT);
    assertThat(answer.agreed().gone()).containsExactly(Defect.CHALKING_CLEAR);
    assertThat(Hull.found(answer))
        .isNotEmpty()
        .allMatch(p -> String.join(" ", p.staysBehind()).contains("Scratches felt by a nail stay"));
    SurfacePlans sanded =
        hull.plans(
            with(
                with(usual, "also", List.of(Defect.SCRATCHES_FELT)),
                "paper",
                Optional.of(Stage.SAND_P2000)));
    assertThat(sanded.agreed().gone()).contains(Defect.SCRATCHES_FELT);
  }

  @Test
  void badInputIsRefusedWithASentence() {
    assertThatThrownBy(() -> with(usual, "area", Optional.of(Quantity.of(-5, Unit.SQUARE_METRE))))
        .hasMessage("an area is over 0 and at most 5000 m², not -5.0");
    assertThatThrownBy(() -> with(usual, "gloss", Optional.of(121.0)))
        .hasMessage("a gloss to agree on is over 0 and at most 120, not 121.0");
    assertThatThrownBy(() -> with(usual, "offFlats", Optional.of(-1.0)))
        .hasMessage("0 to 1000 µm may come off, not -1.0");
    assertThatThrownBy(() -> with(usual, "thickEdges", Optional.of(4000.0)))
        .hasMessageContaining("read the gauge again");
  }

  @Test
  void stagesOfOnesOwnAreJudgedAndCanBeChosen() {
    List<Stage> own = List.of(Stage.HEAVY, Stage.MEDIUM, Stage.FINISHING);
    SurfacePlans answer = hull.plans(with(usual, "own", own));
    assertThat(answer.own().orElseThrow()).isInstanceOf(Judged.Fits.class);
    assertThat(answer.choices().stream().map(Plan::stages)).contains(own);
    Asked little = with(with(usual, "own", own), "offFlats", Optional.of(6.0));
    assertThat(hull.plans(little).own())
        .contains(
            new Judged.Refused(
                "These stages take 8.0 µm, and no more than 6.0 can be spared (as agreed)."));
    assertThat(hull.plans(little).choices().stream().map(Plan::stages)).doesNotContain(own);
  }

  @Test
  void theNearestPlanCanBeChosenWhereNoneReaches() {
    SurfacePlans answer = hull.plans(with(usual, "gloss", Optional.of(87.0)));
    assertThat(answer.plans()).isInstanceOf(Plans.NoneReaches.class);
    assertThat(answer.choices()).hasSize(1);
    assertThat(answer.choices().get(0).chance()).isLessThan(0.8);
  }

  @Test
  void aTestSpotChangesTheAnswer() {
    TestSpot poor =
        new TestSpot(
            Stage.MEDIUM,
            1,
            (Observation.GlossRead) Boatyard.gloss(70.0, 71.0, 69.0),
            (Observation.GlossRead) Boatyard.gloss(72.0, 73.0, 71.0));
    SurfacePlans before = hull.plans(usual);
    SurfacePlans after = hull.plans(with(usual, "spots", List.of(poor)));
    assertThat(after.plans()).isNotEqualTo(before.plans());
    assertThat(after.choices().stream().flatMap(p -> p.needs().stream()))
        .filteredOn(n -> n.stage() == Stage.MEDIUM)
        .isNotEmpty()
        .allMatch(n -> n.gloss().words().equals("starter value and the test spot"));
  }

  /** Also where less was agreed than can be spared, an unknown past is warned of. */
  @Test
  void anUnknownPastIsWarnedOfWhateverWasAgreed() {
    hull.set(hull.topsides, "past", Past.UNKNOWN);
    SurfacePlans answer = hull.plans(with(usual, "offFlats", Optional.of(50.0)));
    Plan plan = answer.choices().get(0);
    assertThat(plan.left().basis()).isEqualTo(Budget.Basis.AGREED);
    assertThat(answer.cautions(plan).stream().map(Caution::text))
        .anyMatch(t -> t.contains("past of this surface is not known"));
  }

  @Test
  void onlyWhatIsCorrectedByStagesIsOfferedAndWhatWasLookedAtLastComesFirst() {
    assertThat(SurfacePlans.correctable(hull.almanac(), hull.boat.id()).stream().map(s -> s.kind()))
        .containsExactly(SurfaceKind.TOPSIDES, SurfaceKind.TRANSOM);
    assertThat(first()).isEqualTo(SurfaceKind.TOPSIDES);
    hull.trailsOn(hull.transom, Hull.LOOKED);
    assertThat(first()).isEqualTo(SurfaceKind.TOPSIDES);
    hull.trailsOn(hull.transom, LocalDate.of(2026, 4, 21));
    assertThat(first()).isEqualTo(SurfaceKind.TRANSOM);
    assertThat(SurfacePlans.looksFirst(hull.almanac(), List.of())).isEmpty();
  }

  private SurfaceKind first() {
    return SurfacePlans.looksFirst(
            hull.almanac(), SurfacePlans.correctable(hull.almanac(), hull.boat.id()))
        .orElseThrow()
        .kind();
  }
}
