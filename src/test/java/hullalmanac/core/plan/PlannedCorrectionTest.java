package hullalmanac.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.finish.Experience;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.finish.TestSpot;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RecordRules;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.work.Change;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** From a plan to a visit. */
class PlannedCorrectionTest {
  private static final List<Stage> STAGES = List.of(Stage.MEDIUM, Stage.MEDIUM, Stage.FINISHING);
  private static final LocalDate DAY = LocalDate.of(2026, 5, 12);
  private final Hull hull = new Hull();
  private final Asked asked = Asked.of(hull.topsides.id());

  private Change planned(Asked what, List<Stage> stages, LocalDate day) {
    return PlannedCorrection.of(
        hull.almanac(),
        Experience.of(hull.almanac(), Hull.TODAY),
        new IdSource(new Random(9)::nextLong),
        new PlannedCorrection.Wish(what, stages, day),
        Hull.TODAY);
  }

  private static Edit ready(Change change) {
    assertThat(change).isInstanceOf(Change.Ready.class);
    return ((Change.Ready) change).edit();
  }

  private static List<Step> steps(Edit edit) {
    return edit.put().stream().filter(Step.class::isInstance).map(Step.class::cast).toList();
  }

  @Test
  void makesAVisitWithTheStepsOfThePlan() {
    Edit edit = ready(planned(asked, STAGES, DAY));
    Visit visit = (Visit) edit.put().get(0);
    assertThat(visit.status()).isEqualTo(VisitStatus.PLANNED);
    assertThat(visit.day()).isEqualTo(DAY);
    assertThat(visit.surfaces())
        .containsExactly(
            new Visit.Part(hull.topsides.id(), WorkState.PLANNED, Optional.empty(), ""));
    List<Step> steps = steps(edit);
    assertThat(steps.stream().map(Step::kind))
        .containsExactly(
            StepKind.WASH, StepKind.DECONTAMINATE, StepKind.CUT, StepKind.POLISH, StepKind.PROTECT);
    assertThat(steps.stream().map(Step::order)).containsExactly(1, 2, 3, 4, 5);
    assertThat(steps.stream().map(Step::product))
        .containsExactly(
            Optional.of(hull.soap.id()),
            Optional.empty(),
            Optional.of(hull.compound.id()),
            Optional.of(hull.polish.id()),
            Optional.of(hull.sealant.id()));
    assertThat(steps.get(2).passes()).contains(2);
    assertThat(steps.get(2).pad()).isEqualTo("cutting foam");
    assertThat(steps).allMatch(s -> s.surfaces().equals(List.of(hull.topsides.id())));
    assertThat(steps).allMatch(s -> s.minutes().isEmpty() && s.day().equals(DAY));
    Almanac after = hull.almanac().with(edit);
    assertThat(RecordRules.problems(Almanac.empty(after.business()), after)).isEmpty();
  }

  @Test
  void takesTheBottleThatIsOpenAndHoldsSomething() {
    hull.bottle(501, hull.compound, 0, LocalDate.of(2026, 1, 1));
    hull.bottle(502, hull.compound, 1000, null);
    Bottle open = hull.bottle(503, hull.compound, 700, LocalDate.of(2026, 3, 1));
    assertThat(steps(ready(planned(asked, STAGES, DAY))).get(2).bottle()).contains(open.id());
  }

  @Test
  void notesWhatWasAgreedAndWhatTheTestSpotSaid() {
    TestSpot spot =
        new TestSpot(
            Stage.MEDIUM,
            1,
            (Observation.GlossRead) Boatyard.gloss(70.0, 71.0, 69.0),
            (Observation.GlossRead) Boatyard.gloss(83.0, 84.0, 82.0));
    Asked tried =
        With.component(With.component(asked, "spots", List.of(spot)), "gloss", Optional.of(80.0));
    assertThat(((Visit) ready(planned(tried, STAGES, DAY)).put().get(0)).note())
        .startsWith("Three-stage correction: medium compound, medium compound, finishing polish to")
        .contains("a gloss of 80 agreed, ")
        .endsWith(", edges taped. Test spot, medium compound, 1×: gloss 70.0 before, 83.0 after.");
  }

  @Test
  void cleansAndProtectsOnlyWhereThatIsThePlan() {
    assertThat(steps(ready(planned(asked, List.of(), DAY))).stream().map(Step::kind))
        .containsExactly(StepKind.WASH, StepKind.DECONTAMINATE, StepKind.PROTECT);
  }

  @Test
  void nothingIsPlannedBeyondTheBudgetOrInThePast() {
    Asked little = With.component(asked, "offFlats", Optional.of(3.0));
    assertThat(refusal(planned(little, STAGES, DAY)))
        .isEqualTo(
            "These stages take 5.5 µm, and no more than 3.0 can be spared (as agreed). Choose"
                + " another plan.");
    assertThat(refusal(planned(asked, STAGES, LocalDate.of(2026, 4, 30))))
        .isEqualTo("A visit is planned for today or later, not for 2026-04-30. Write another day.");
    assertThat(refusal(planned(Asked.of(new Id<>(77_777)), STAGES, DAY)))
        .isEqualTo("This surface is not in the record. Choose another one.");
  }

  private static String refusal(Change change) {
    assertThat(change).isInstanceOf(Change.Refused.class);
    return ((Change.Refused) change).problems().get(0).sentence();
  }
}
