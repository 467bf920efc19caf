package hullalmanac.core.finish;

import static hullalmanac.core.finish.Stage.FINISHING;
import static hullalmanac.core.finish.Stage.HEAVY;
import static hullalmanac.core.finish.Stage.MEDIUM;
import static hullalmanac.core.finish.Stage.ONE_STEP;
import static hullalmanac.core.finish.Stage.SAND_P1500;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Tone;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The planner where all is as good as known, so that gloss can be worked out by hand from the table
 * of stages: light surfaces, ceilings 90, 87, 84, 80 and q 0.55, 0.35, 0.30, 0.20.
 */
class PlannerTest {
  private static final Budget PLENTY = new Budget(2500, 1250, Budget.Basis.MEASURED);

  private static SurfaceLaws known(Tone tone) {
    Map<Stage, Experience.Learned> laws = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      GlossLaw law =
          new GlossLaw(
              FinishPractice.STANDARD.ceiling(stage.law(), tone),
              Math.log(FinishPractice.STANDARD.q(stage.law())),
              Spread.independent(1e-4, 1e-6));
      laws.put(stage, new Experience.Learned(law, new Origin(14, false)));
    }
    return new SurfaceLaws(laws);
  }

  private static Planner planner(Subject subject, Agreed agreed) {
    Area area = new Area(10, Area.How.ENTERED);
    return new Planner(
        subject,
        agreed,
        known(subject.tone()),
        Effort.of(area, Condition.FAIR, Rates.starter(FinishPractice.STANDARD)));
  }

  private static Subject light(double gloss, Budget budget, Defect... seen) {
    return new Subject(
        Film.GELCOAT,
        Tone.LIGHT,
        new GlossLimit(90, GlossLimit.Why.AGE),
        new Start(gloss, 0.01, Start.By.METER),
        Set.of(seen),
        budget);
  }

  private static Agreed agreed(double gloss, Defect... gone) {
    return new Agreed(gloss, Set.of(gone), true, Optional.empty());
  }

  private static List<List<Stage>> stages(Plans plans) {
    assertThat(plans).isInstanceOf(Plans.Found.class);
    return ((Plans.Found) plans).plans().stream().map(Plan::stages).toList();
  }

  /** 90 − 0.55 · 12 = 83.4; one more finishing pass leaves 0.775 of 6.6: 84.885. */
  @Test
  void followsTheTableOfStages() {
    Plan plan = fits(planner(light(78, PLENTY), agreed(80)).judge(List.of(FINISHING, FINISHING)));
    assertThat(middles(plan.path())).containsExactly(78.0, 83.4, 84.885);
    assertThat(plan.path().points().get(1).name()).isEqualTo("finishing");
    assertThat(plan.path().agreed()).isEqualTo(80);
  }

  /** Heavy compound lowers a sound surface: 80 − 0.2 · (80 − 88) = 81.6. */
  @Test
  void heavyCompoundLowersASoundSurface() {
    Plan plan = fits(planner(light(88, PLENTY), agreed(80)).judge(List.of(HEAVY, FINISHING)));
    assertThat(middles(plan.path())).containsExactly(88.0, 81.6, 85.38);
  }

  /**
   * A paper with its compound leads to 82 − 0.1 · 52 = 76.8; a second heavy pass closes 0.4 of 3.2.
   */
  @Test
  void aPaperLeavesTheSurfaceMattUntilItIsCompounded() {
    Agreed sanding = new Agreed(80, Set.of(), true, Optional.of(SAND_P1500));
    Plan plan =
        fits(
            planner(light(30, PLENTY), sanding)
                .judge(List.of(SAND_P1500, HEAVY, HEAVY, FINISHING)));
    List<GlossPath.Point> points = plan.path().points();
    assertThat(points.get(1).middle()).isEmpty();
    assertThat(points.get(2).middle().orElseThrow()).isCloseTo(76.8, within(1e-3));
    assertThat(points.get(3).middle().orElseThrow()).isCloseTo(78.08, within(1e-3));
    assertThat(plan.totals().microns()).isEqualTo(8 + 5 + 5 + 0.5);
  }

  private static Plan fits(Judged judged) {
    assertThat(judged).isInstanceOf(Judged.Fits.class);
    return ((Judged.Fits) judged).plan();
  }

  private static List<Double> middles(GlossPath path) {
    return path.points().stream()
        .map(GlossPath.Point::middle)
        .map(OptionalDouble::orElseThrow)
        .map(m -> Math.round(1e3 * m) / 1e3)
        .toList();
  }

  @Test
  void plansNoCorrectionWhereNoneIsNeeded() {
    Plans plans = planner(light(86, PLENTY), agreed(85)).plans();
    assertThat(stages(plans)).containsExactly(List.of());
    Plan plan = ((Plans.Found) plans).plans().get(0);
    assertThat(plan.words()).isEqualTo("no correction: clean and protect");
    assertThat(plan.totals()).isEqualTo(new Plan.Totals(0, 25 + 30, 0));
  }

  /**
   * From 76 a finishing polish reaches 82.3 (0.5 µm, 40 minutes), a one-step polish 83.15 (1.5,
   * 60).
   */
  @Test
  void ofTwoPlansWithOnePassTheShorterAndThinnerRules() {
    assertThat(stages(planner(light(76, PLENTY), agreed(82)).plans()))
        .containsExactly(List.of(FINISHING));
    assertThat(stages(planner(light(76, PLENTY), agreed(83)).plans()))
        .containsExactly(List.of(ONE_STEP), List.of(FINISHING, FINISHING));
  }

  @Test
  void saysWhatAPlanTakesAndLeaves() {
    Plan plan =
        fits(
            planner(light(70, PLENTY, Defect.SCRATCHES_FELT, Defect.SWIRLS), agreed(80))
                .judge(List.of(MEDIUM, FINISHING, FINISHING)));
    assertThat(plan.words())
        .isEqualTo("three-stage correction: medium compound, finishing polish, finishing polish");
    assertThat(plan.totals()).isEqualTo(new Plan.Totals(3, 25 + 30 + 60 + 40 + 40, 35));
    assertThat(plan.left()).isEqualTo(new Budget(2465, 1250, Budget.Basis.MEASURED));
    assertThat(plan.needs()).hasSize(2);
    Plan.Need polish = plan.needs().get(1);
    assertThat(polish.stage()).isEqualTo(FINISHING);
    assertThat(polish.passes()).isEqualTo(2);
    assertThat(polish.minutes().middle()).isCloseTo(80, within(1e-9));
    assertThat(polish.millilitres().middle()).isCloseTo(160, within(1e-9));
    assertThat(polish.pads()).isEqualTo(4);
    assertThat(polish.gloss().words()).isEqualTo("from your last 14 boats");
    assertThat(polish.minutes().origin().words()).isEqualTo("starter value");
    assertThat(plan.staysBehind()).containsExactly("Scratches felt by a nail stay.");
  }

  @Test
  void aLightPassLeavesCloudinessAndTheOwnerHearsSo() {
    Plan plan = fits(planner(light(70, PLENTY), agreed(70)).judge(List.of(FINISHING)));
    assertThat(plan.staysBehind())
        .containsExactly("Cloudiness from the mould and deeper scuffs stay, where there are any.");
  }

  @Test
  void refusesAGlossThatTheSurfaceCannotReach() {
    assertThat(planner(light(70, PLENTY), agreed(92)).plans())
        .isEqualTo(
            new Plans.Refused(
                "A gloss of 92 is more than this surface can reach, 90 (by its age, common"
                    + " practice): agree on less."));
  }

  @Test
  void refusesStagesThatTakeMoreThanCanBeSpared() {
    Budget little = new Budget(50, 20, Budget.Basis.BY_AGE);
    Planner edges = planner(light(70, little), new Agreed(80, Set.of(), false, Optional.empty()));
    assertThat(edges.judge(List.of(MEDIUM)))
        .isEqualTo(
            new Judged.Refused(
                "These stages take 2.5 µm, and no more than 2.0 can be spared where edges are not"
                    + " taped (its past is not known: a rule of thumb by age)."));
    assertThat(planner(light(70, little), agreed(80)).judge(List.of(HEAVY, FINISHING)))
        .isInstanceOfSatisfying(
            Judged.Refused.class,
            r ->
                assertThat(r.sentence())
                    .startsWith("These stages take 5.5 µm, and no more than 5.0"));
    assertThat(planner(light(70, little), agreed(80)).judge(List.of(MEDIUM)))
        .isInstanceOf(Judged.Fits.class);
  }

  /** From 60 within 1 µm two finishing passes reach 90 − 0.42625 · 30 = 77.2. */
  @Test
  void saysWhatCouldBeDoneWhereNothingReaches() {
    Budget one = new Budget(10, 5, Budget.Basis.BY_AGE);
    Plans plans = planner(light(60, one), agreed(84)).plans();
    assertThat(plans).isInstanceOf(Plans.NoneReaches.class);
    Plans.NoneReaches none = (Plans.NoneReaches) plans;
    assertThat(none.sentence())
        .isEqualTo(
            "No plan reaches a gloss of 84 in 8 cases of 10 without taking more than can be"
                + " spared.");
    assertThat(none.gloss()).contains(77);
    assertThat(none.nearest().orElseThrow().stages()).containsExactly(FINISHING, FINISHING);
    assertThat(none.could())
        .containsExactly(
            "A gloss of 77 could be agreed: 8 in 10 reach it by finishing polish, finishing"
                + " polish.",
            "One-step polish, finishing polish, finishing polish would reach it, but takes 2.5 µm"
                + " where 1.0 can be spared (its past is not known: a rule of thumb by age):"
                + " measure how thick it is.");
  }

  @Test
  void saysWhenTapeWouldHelp() {
    Budget edges = new Budget(100, 5, Budget.Basis.MEASURED);
    Planner planner = planner(light(70, edges), new Agreed(83, Set.of(), false, Optional.empty()));
    assertThat(((Plans.NoneReaches) planner.plans()).could())
        .anyMatch(s -> s.endsWith("(measured): tape the edges."));
  }

  @Test
  void saysWhoCanImproveAScratch() {
    Plans plans =
        planner(light(70, PLENTY, Defect.SCRATCHES_FELT), agreed(75, Defect.SCRATCHES_FELT))
            .plans();
    Plans.NoneReaches none = (Plans.NoneReaches) plans;
    assertThat(none.sentence()).isEqualTo("No plan takes out scratches felt by a nail.");
    assertThat(none.could())
        .containsExactly(
            "Scratches felt by a nail: only wet sanding by trained hands improves them.");
    Agreed sanding = new Agreed(75, Set.of(Defect.SCRATCHES_FELT), true, Optional.of(SAND_P1500));
    Plans sanded = planner(light(70, PLENTY, Defect.SCRATCHES_FELT), sanding).plans();
    assertThat(stages(sanded)).containsExactly(List.of(SAND_P1500, HEAVY, FINISHING));
    assertThat(((Plans.Found) sanded).plans().get(0).staysBehind())
        .containsExactly("Scratches felt by a nail are improved, not gone.");
  }

  @Test
  void sendsWhatIsThroughToAYard() {
    Plans plans =
        planner(light(70, PLENTY), agreed(75, Defect.SCRATCHES_THROUGH, Defect.CLOUDINESS)).plans();
    assertThat(((Plans.NoneReaches) plans).could())
        .containsExactly(
            "Tell the owner that no polishing takes out scratches through the finish and"
                + " cloudiness from the mould. Mending them is for a qualified yard.");
  }

  @Test
  void saysWhenItRunsOnTheEyeScale() {
    Subject seen =
        new Subject(
            Film.GELCOAT,
            Tone.LIGHT,
            new GlossLimit(87, GlossLimit.Why.AGE),
            EyeGloss.start(3),
            Set.of(),
            PLENTY);
    Plans plans = planner(seen, agreed(EyeGloss.lowest(2))).plans();
    assertThat(((Plans.Found) plans).remarks())
        .singleElement()
        .asString()
        .contains("eye scale", "roughly");
    assertThat(planner(light(70, PLENTY), agreed(75)).plans())
        .isInstanceOfSatisfying(Plans.Found.class, f -> assertThat(f.remarks()).isEmpty());
  }

  @Test
  void refusesWhatCannotBeAgreed() {
    assertThatThrownBy(() -> agreed(0))
        .hasMessage("a gloss to agree on is over 0 and at most 120, not 0.0");
    assertThatThrownBy(() -> new Agreed(80, Set.of(), true, Optional.of(HEAVY)))
        .hasMessage("heavy compound is no paper");
    assertThatThrownBy(() -> new Start(-1, 1, Start.By.METER))
        .hasMessage("the gloss of a hull runs from 0 to 120, not -1.0");
  }
}
