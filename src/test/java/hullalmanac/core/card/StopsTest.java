package hullalmanac.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What stops a step on this boat, and what does not. Common practice, no source, unless named. */
class StopsTest {
  private final Job job = new Job();
  private final Product acid = job.product(ProductKind.DECONTAMINANT, Hazard.ACID);
  private final Product wax = job.product(ProductKind.CARNAUBA, Hazard.WAX);
  private final Product silicone = job.product(ProductKind.SILICA_SPRAY, Hazard.SILICONE);

  private String said(Step step, Stop.Rule rule) {
    return job.stops(step).stream()
        .filter(s -> s.rule() == rule)
        .map(Stop::sentence)
        .reduce("", String::concat);
  }

  @Test
  void acidIsStoppedWhereGlassMayBeTintedOrMirrored() {
    Step step = job.step(StepKind.DECONTAMINATE, acid, job.topsides);
    assertThat(job.rules(step)).containsExactly(Stop.Rule.ACID_RUNOFF);
    Surface windows = job.surface(SurfaceKind.WINDOWS, Finish.GLASS);
    assertThat(said(step, Stop.Rule.ACID_ON_GLASS))
        .isEqualTo(
            "Acid spoils tinted and mirrored glass. Look whether hers is: windows. It runs down:"
                + " mask it and rinse at once.");
    job.set(windows, "note", "mirrored, fitted 2021");
    assertThat(said(step, Stop.Rule.ACID_ON_GLASS)).contains("which she has: windows");
    job.set(windows, "note", "owner complained of spots");
    assertThat(said(step, Stop.Rule.ACID_ON_GLASS)).contains("Look whether hers is");
    job.set(windows, "note", "plain");
    assertThat(job.rules(step)).containsExactly(Stop.Rule.ACID_RUNOFF);
  }

  @Test
  void acidOnTheWholeBoatCoversTheGlassItself() {
    job.surface(SurfaceKind.WINDOWS, Finish.GLASS);
    Step step = job.step(StepKind.DECONTAMINATE, acid);
    assertThat(said(step, Stop.Rule.ACID_ON_GLASS)).contains("This step covers it");
  }

  @Test
  void acidIsStoppedNearBareMetalAndTeak() {
    Step step = job.step(StepKind.DECONTAMINATE, acid, job.topsides);
    job.surface(SurfaceKind.METALWORK, Finish.METAL);
    job.surface(SurfaceKind.TEAK, Finish.TEAK);
    assertThat(said(step, Stop.Rule.ACID_ON_METAL_OR_TEAK)).contains("metalwork; teak");
    Step soap = job.step(StepKind.WASH, job.product(ProductKind.SOAP), job.topsides);
    assertThat(job.rules(soap)).isEmpty();
  }

  @Test
  void acidAndHypochloriteNeverMeetInOneVisit() {
    Step step = job.step(StepKind.DECONTAMINATE, acid, job.topsides);
    assertThat(job.rules(step)).doesNotContain(Stop.Rule.ACID_WITH_HYPOCHLORITE);
    Step bleach =
        job.step(StepKind.OTHER, job.product(ProductKind.OTHER, Hazard.HYPOCHLORITE), job.topsides);
    assertThat(job.rules(step)).contains(Stop.Rule.ACID_WITH_HYPOCHLORITE);
    assertThat(job.rules(bleach)).containsExactly(Stop.Rule.ACID_WITH_HYPOCHLORITE);
  }

  @Test
  void waxIsStoppedOnNonSkidUnlessItIsMarkedNonSlip() {
    Surface nonSkid = job.surface(SurfaceKind.NON_SKID, Finish.GELCOAT);
    Step hull = job.step(StepKind.PROTECT, wax, job.topsides);
    Step whole = job.step(StepKind.PROTECT, wax);
    Step foot = job.step(StepKind.PROTECT, wax, nonSkid);
    assertThat(job.rules(hull)).isEmpty();
    assertThat(job.rules(whole)).containsExactly(Stop.Rule.SLIPPERY_UNDER_FOOT);
    assertThat(said(foot, Stop.Rule.SLIPPERY_UNDER_FOOT)).endsWith("keep it off non-skid.");
    job.set(wax, "nonSlip", true);
    assertThat(job.rules(foot)).isEmpty();
  }

  @Test
  void abrasivesAreStoppedOnPaintAndWrap() {
    Surface painted = job.surface(SurfaceKind.CABIN_SIDES, Finish.URETHANE_PAINT);
    Surface wrapped = job.surface(SurfaceKind.STRIPE, Finish.VINYL);
    Product compound = job.product(ProductKind.COMPOUND, Hazard.ABRASIVE);
    assertThat(job.rules(job.step(StepKind.CUT, compound, job.topsides))).isEmpty();
    assertThat(job.rules(job.step(StepKind.CUT, compound, painted)))
        .containsExactly(Stop.Rule.ABRASIVE_ON_PAINT);
    assertThat(job.rules(job.step(StepKind.POLISH, null, wrapped)))
        .containsExactly(Stop.Rule.ABRASIVE_ON_PAINT);
    assertThat(job.rules(job.step(StepKind.WASH, job.product(ProductKind.SOAP), painted)))
        .isEmpty();
  }

  @Test
  void siliconeIsStoppedBeforeAPaintingThatIsPlanned() {
    Step step = job.step(StepKind.PROTECT, silicone, job.topsides);
    assertThat(job.rules(step)).isEmpty();
    Visit later =
        job.yard.visit(job.boat, LocalDate.of(2026, 9, 1), VisitStatus.PLANNED, VisitWhy.OTHER);
    job.set(later, "note", "Yard: repaint the topsides");
    assertThat(said(step, Stop.Rule.SILICONE_BEFORE_PAINT))
        .isEqualTo(
            "Paint does not hold on silicone, and painting is planned for 1 September 2026.");
    job.set(later, "note", "Wash and look");
    assertThat(job.rules(step)).isEmpty();
    Step other = job.yard.step(later, StepKind.OTHER, null, job.topsides);
    job.set(other, "note", "antifouling");
    assertThat(job.rules(step)).containsExactly(Stop.Rule.SILICONE_BEFORE_PAINT);
    Step waxed = job.step(StepKind.PROTECT, wax, job.topsides);
    assertThat(job.rules(waxed)).isEmpty();
  }

  @Test
  void aPaintingThatIsOverStopsNothingAndOneInANoteDoes() {
    Step step = job.step(StepKind.PROTECT, silicone, job.topsides);
    Visit before =
        job.yard.visit(job.boat, LocalDate.of(2025, 9, 1), VisitStatus.PLANNED, VisitWhy.OTHER);
    job.set(before, "note", "repainted");
    assertThat(job.rules(step)).isEmpty();
    job.set(job.topsides, "note", "to be repainted this winter");
    assertThat(said(step, Stop.Rule.SILICONE_BEFORE_PAINT)).endsWith("written down for her.");
  }

  @Test
  void solventIsStoppedOnClearPlasticAndCoatsOnTheBottom() {
    Surface hatch = job.surface(SurfaceKind.WINDOWS, Finish.ACRYLIC);
    Surface bottom = job.surface(SurfaceKind.BOTTOM, Finish.GELCOAT);
    Product solvent = job.product(ProductKind.OTHER, Hazard.SOLVENT);
    assertThat(job.rules(job.step(StepKind.OTHER, solvent, hatch)))
        .containsExactly(Stop.Rule.SOLVENT_ON_CLEAR_PLASTIC);
    assertThat(job.rules(job.step(StepKind.OTHER, solvent, job.topsides))).isEmpty();
    assertThat(job.rules(job.step(StepKind.PROTECT, wax, bottom)))
        .containsExactly(Stop.Rule.COAT_ON_BOTTOM);
  }

  @Test
  void everyRuleSaysWhereItIsKnownFrom() {
    assertThat(Arrays.stream(Stop.Rule.values()).map(Stop.Rule::source))
        .allMatch(s -> s.contains("no source") || s.contains("GHS") || s.contains("CDC"));
    assertThat(Stop.STANDING).contains("label", "local codes", "licensed practice");
  }
}
