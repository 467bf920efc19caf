package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Amount;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** From a record to plans. */
class FewestPassesTest {
  private static final Agreed TO_79 = new Agreed(79, Set.of(), true, Optional.empty());
  private static final Agreed TO_82 = new Agreed(82, Set.of(), true, Optional.empty());

  private final Slipway slip = new Slipway();
  private final Boat boat = slip.boat(2014);
  private final Surface topsides = slip.topsides(boat);
  private final Visit visit =
      slip.set(slip.visit(boat, Slipway.DAY), "status", VisitStatus.PLANNED);

  private FewestPasses passes(FewestPasses.Said said) {
    return FewestPasses.on(slip.almanac(), slip.experience(), topsides.id(), said, Slipway.TODAY);
  }

  private FewestPasses passes() {
    return passes(FewestPasses.Said.NOTHING);
  }

  private static FewestPasses.Said spot(TestSpot... spots) {
    return new FewestPasses.Said(
        false, Optional.empty(), Allowance.ALL, Optional.empty(), Set.of(), List.of(spots));
  }

  private Finding before(double... readings) {
    return slip.gloss(topsides, visit, Moment.BEFORE, readings);
  }

  private static List<Plan> found(Plans plans) {
    assertThat(plans).isInstanceOf(Plans.Found.class);
    return ((Plans.Found) plans).plans();
  }

  @Test
  void plansFromAnInspection() {
    before(70, 71, 69);
    slip.seen(topsides, visit, Optional.empty(), new Observation.FingerRub(RubLevel.CLEAR));
    FewestPasses passes = passes();
    assertThat(passes.seen()).containsExactly(Defect.CHALKING_CLEAR);
    assertThat(passes.limit()).contains(new GlossLimit(87, GlossLimit.Why.AGE));
    assertThat(passes.budget().orElseThrow().flats()).isEqualTo(2500);
    assertThat(passes.area().orElseThrow().squareMetres()).isCloseTo(24.2, within(1e-9));
    Agreed agreed = new Agreed(78, Set.of(Defect.CHALKING_CLEAR), true, Optional.empty());
    List<Plan> plans = found(passes.plans(agreed));
    assertThat(plans.get(0).stages()).contains(Stage.MEDIUM);
    assertThat(plans.get(0).chance()).isGreaterThanOrEqualTo(0.8);
    assertThat(plans.get(0).needs().get(0).gloss().words()).isEqualTo("starter value");
  }

  /** A finishing polish that did little on the spot must not be planned alone any more. */
  @Test
  void aTestSpotUpdatesThePlanAtOnce() {
    before(78, 79, 77);
    List<Plan> unseen = found(passes().plans(TO_79));
    assertThat(unseen.get(0).stages()).containsExactly(Stage.FINISHING);
    TestSpot poor =
        new TestSpot(Stage.FINISHING, 1, Slipway.read(78, 78.5, 77.5), Slipway.read(78.5, 79, 78));
    List<Plan> seen = found(passes(spot(poor)).plans(TO_79));
    assertThat(seen.stream().map(Plan::stages)).doesNotContain(List.of(Stage.FINISHING));
    assertThat(seen.stream().flatMap(p -> p.needs().stream()))
        .filteredOn(n -> n.stage() == Stage.ONE_STEP)
        .allMatch(n -> n.gloss().equals(Origin.STARTER));
    Judged alone = passes(spot(poor)).judge(TO_79, List.of(Stage.FINISHING));
    assertThat(((Judged.Fits) alone).reaches()).isFalse();
    assertThat(((Judged.Fits) alone).plan().needs().get(0).gloss().words())
        .isEqualTo("starter value and the test spot");
  }

  @Test
  void aTestSpotThatShinesRaisesWhatCanBeReached() {
    before(70, 71, 69);
    assertThat(passes().plans(new Agreed(88, Set.of(), true, Optional.empty())))
        .isInstanceOf(Plans.Refused.class);
    TestSpot good =
        new TestSpot(Stage.ONE_STEP, 1, Slipway.read(70, 71, 69), Slipway.read(89, 90, 88));
    assertThat(passes(spot(good)).limit()).contains(new GlossLimit(89, GlossLimit.Why.TEST_SPOT));
    assertThat(passes(spot(good)).plans(new Agreed(88, Set.of(), true, Optional.empty())))
        .isNotInstanceOf(Plans.Refused.class);
  }

  @Test
  void itsOwnBestIsWhatItCanReachAgain() {
    before(70, 71, 69);
    Visit then = slip.visit(boat, LocalDate.of(2023, 5, 1));
    slip.gloss(topsides, then, Moment.AFTER, 89, 90, 88);
    assertThat(passes().limit()).contains(new GlossLimit(89, GlossLimit.Why.OWN_BEST));
  }

  @Test
  void takesTheMeterBeforeTheEye() {
    slip.seen(topsides, visit, Optional.empty(), new Observation.EyeScale(4));
    assertThat(passes().inspection().start()).contains(new Start(55, 8, Start.By.EYE));
    before(70, 71, 69);
    assertThat(passes().inspection().start().orElseThrow().by()).isEqualTo(Start.By.METER);
  }

  @Test
  void whatWasSeenBeforeTheLastCorrectionSaysNothingAnyMore() {
    Visit then = slip.visit(boat, LocalDate.of(2025, 5, 1));
    slip.gloss(topsides, then, Moment.BEFORE, 60, 61, 59);
    slip.seen(
        topsides, then, Optional.of(Moment.BEFORE), new Observation.FingerRub(RubLevel.HEAVY));
    slip.step(
        then, StepKind.POLISH, Optional.of(slip.product(ProductKind.ONE_STEP_POLISH)), topsides);
    assertThat(passes().inspection().start()).isEmpty();
    assertThat(passes().seen()).isEmpty();
    slip.gloss(topsides, then, Moment.AFTER, 84, 85, 83);
    assertThat(passes().inspection().start().orElseThrow().gloss()).isEqualTo(84);
    assertThat(passes().inspection().on()).contains(LocalDate.of(2025, 5, 1));
  }

  @Test
  void theLatestLookOfAKindCounts() {
    Visit then = slip.visit(boat, LocalDate.of(2025, 9, 1));
    slip.seen(topsides, then, Optional.empty(), new Observation.BufferTrails(Amount.MUCH));
    slip.seen(topsides, visit, Optional.empty(), new Observation.BufferTrails(Amount.NONE));
    assertThat(passes().seen()).isEmpty();
  }

  /** 2 passes of medium at 2.5 µm and an unnamed polish at 0.5 come off a known past of 250 µm. */
  @Test
  void whatTheRecordTookOffIsGone() {
    Visit then = slip.visit(boat, LocalDate.of(2025, 5, 1));
    Step cut =
        slip.step(then, StepKind.CUT, Optional.of(slip.product(ProductKind.COMPOUND)), topsides);
    slip.set(cut, "passes", Optional.of(2));
    slip.step(then, StepKind.POLISH, Optional.empty(), topsides);
    assertThat(passes().budget().orElseThrow().flats()).isEqualTo(2500 - 55);
    slip.set(topsides, "past", Past.UNKNOWN);
    assertThat(passes().inspection().ageThen()).contains(11);
    assertThat(passes().budget().orElseThrow().flats()).isEqualTo(1500 - 80 - 55);
  }

  @Test
  void aMeasurementCountsFromItsDay() {
    Visit then = slip.visit(boat, LocalDate.of(2025, 5, 1));
    slip.step(then, StepKind.POLISH, Optional.empty(), topsides);
    Measured before = new Measured(400, Optional.empty(), LocalDate.of(2025, 4, 1));
    Measured after = new Measured(400, Optional.empty(), LocalDate.of(2025, 6, 1));
    assertThat(budget(before)).isEqualTo(1500 - 5);
    assertThat(budget(after)).isEqualTo(1500);
  }

  @Test
  void noMoreComesOffThanWasAgreed() {
    before(70, 71, 69);
    FewestPasses passes = passes(allowed(20, 0.5));
    assertThat(passes.budget()).contains(new Budget(200, 5, Budget.Basis.AGREED));
    assertThat(passes.spare().orElseThrow().flats()).isEqualTo(2500);
    Agreed untaped = new Agreed(79, Set.of(), false, Optional.empty());
    assertThat(passes().judge(untaped, List.of(Stage.ONE_STEP))).isInstanceOf(Judged.Fits.class);
    assertThat(passes.judge(untaped, List.of(Stage.ONE_STEP)))
        .isEqualTo(
            new Judged.Refused(
                "These stages take 1.5 µm, and no more than 0.5 can be spared where edges are not"
                    + " taped (as agreed)."));
    assertThat(passes(allowed(250, 125)).budget().orElseThrow().basis())
        .isEqualTo(Budget.Basis.KNOWN_PAST);
  }

  @Test
  void nobodyAgreesOnMoreThanCanBeSpared() {
    before(70, 71, 69);
    assertThat(passes(allowed(251, 125)).plans(TO_79))
        .isEqualTo(
            new Plans.Refused(
                "No more than 250.0 µm can be spared on flats (as new, less what the record took"
                    + " off): agree on that or less."));
    assertThat(passes(allowed(250, 126)).plans(TO_79))
        .isInstanceOfSatisfying(
            Plans.Refused.class, r -> assertThat(r.sentence()).contains("at edges and corners"));
    assertThatThrownBy(() -> new Allowance(Optional.of(-1.0), Optional.empty()))
        .hasMessage("0 to 1000 µm may come off, not -1.0");
  }

  private static FewestPasses.Said allowed(double flats, double edges) {
    return new FewestPasses.Said(
        false,
        Optional.empty(),
        new Allowance(Optional.of(flats), Optional.of(edges)),
        Optional.empty(),
        Set.of(),
        List.of());
  }

  private int budget(Measured measured) {
    return passes(
            new FewestPasses.Said(
                false, Optional.of(measured), Allowance.ALL, Optional.empty(), Set.of(), List.of()))
        .budget()
        .orElseThrow()
        .flats();
  }

  @Test
  void saysWhatIsMissing() {
    assertThat(passes().plans(TO_82))
        .isInstanceOfSatisfying(
            Plans.Refused.class,
            r -> assertThat(r.sentence()).startsWith("Nobody looked at the gloss"));
    before(70, 71, 69);
    slip.set(boat, "loa", Optional.empty());
    assertThat(passes().plans(TO_82))
        .isInstanceOfSatisfying(
            Plans.Refused.class, r -> assertThat(r.sentence()).startsWith("The area is not known"));
    Area entered = new Area(20, Area.How.ENTERED);
    FewestPasses.Said said =
        new FewestPasses.Said(
            false, Optional.empty(), Allowance.ALL, Optional.of(entered), Set.of(), List.of());
    assertThat(passes(said).plans(TO_82)).isInstanceOf(Plans.Found.class);
  }

  @Test
  void aDirtyLookIsNoLook() {
    slip.set(before(70, 71, 69), "state", SurfaceState.DIRTY);
    assertThat(passes().inspection().start()).isEmpty();
  }

  @Test
  void paintTakesNoAbrasivesUnlessItIsKnownToBeBuffable() {
    Surface painted =
        slip.surface(boat, SurfaceKind.CABIN_SIDES, Finish.URETHANE_PAINT, Tone.LIGHT);
    slip.gloss(painted, visit, Moment.BEFORE, 70, 71, 69);
    Plans plans =
        FewestPasses.on(
                slip.almanac(),
                slip.experience(),
                painted.id(),
                FewestPasses.Said.NOTHING,
                Slipway.TODAY)
            .plans(TO_82);
    assertThat(plans)
        .isInstanceOfSatisfying(
            Plans.NoneReaches.class,
            n -> assertThat(n.sentence()).startsWith("This finish takes no abrasives"));
    FewestPasses.Said acrylic =
        new FewestPasses.Said(
            true, Optional.empty(), Allowance.ALL, Optional.empty(), Set.of(), List.of());
    FewestPasses buffable =
        FewestPasses.on(slip.almanac(), slip.experience(), painted.id(), acrylic, Slipway.TODAY);
    assertThat(buffable.budget()).contains(new Budget(100, 100, Budget.Basis.THIN_FILM));
    assertThat(found(buffable.plans(TO_82)))
        .allMatch(p -> p.totals().microns() <= 10 && !p.stages().contains(Stage.HEAVY));
  }

  @Test
  void reckonsNoStagesForTeak() {
    Surface teak = slip.surface(boat, SurfaceKind.TEAK, Finish.TEAK, Tone.DARK);
    FewestPasses passes =
        FewestPasses.on(
            slip.almanac(), slip.experience(), teak.id(), FewestPasses.Said.NOTHING, Slipway.TODAY);
    assertThat(passes.budget()).isEmpty();
    assertThat(passes.limit()).isEmpty();
    assertThat(passes.plans(TO_82))
        .isEqualTo(new Plans.Refused("No stages are reckoned for teak."));
    assertThat(passes.judge(TO_82, List.of())).isInstanceOf(Judged.Refused.class);
  }

  @Test
  void refusesATestSpotThatTellsNothing() {
    Observation.GlossRead at20 =
        new Observation.GlossRead(Geometry.DEG_20, List.of(60.0), Optional.empty());
    assertThatThrownBy(() -> new TestSpot(Stage.MEDIUM, 1, at20, Slipway.read(80)))
        .hasMessage("read the test spot at 60°, before and after");
    assertThatThrownBy(() -> new TestSpot(Stage.MEDIUM, 0, Slipway.read(60), Slipway.read(80)))
        .hasMessage("a test spot takes 1 to 4 passes, not 0");
    assertThatThrownBy(() -> new TestSpot(Stage.SAND_P1000, 2, Slipway.read(60), Slipway.read(80)))
        .hasMessage("a test spot is sanded once");
    assertThatThrownBy(() -> new TestSpot(Stage.MEDIUM, 1, Slipway.read(60), Slipway.read(121)))
        .hasMessageStartingWith("the gloss of a hull runs from 0 to 120");
  }

  /** 24.2 m² at a starter value of 8 ml takes 194 ml, over 320 ml one time in ten. */
  @Test
  void saysWhatIsOnTheShelfForAStage() {
    before(78, 79, 77);
    Product polish = slip.product(ProductKind.POLISH);
    slip.product(ProductKind.COMPOUND);
    Bottle first = slip.bottle(polish, 500, 200);
    Plan.Need need = found(passes().plans(TO_79)).get(0).needs().get(0);
    assertThat(need.millilitres().middle()).isCloseTo(8 * 24.2, within(1e-6));
    assertThat(supplies()).containsExactly(new Supply(polish, Optional.of(200)));
    assertThat(supplies().get(0).enoughFor(need)).contains(false);
    slip.bottle(polish, 500, 500);
    assertThat(supplies().get(0).enoughFor(need)).contains(true);
    slip.set(first, "useBy", Optional.of(Slipway.TODAY.minusDays(1)));
    assertThat(supplies()).containsExactly(new Supply(polish, Optional.of(500)));
  }

  private List<Supply> supplies() {
    return Supply.of(slip.almanac(), Stage.FINISHING, Slipway.TODAY);
  }
}
