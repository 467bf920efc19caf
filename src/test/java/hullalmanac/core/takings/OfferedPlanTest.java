package hullalmanac.core.takings;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.finish.Experience;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Plans;
import hullalmanac.core.plan.Asked;
import hullalmanac.core.plan.SurfacePlans;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.sample.SampleRecord;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A plan that is offered says its hours, its steps and what it leaves. */
class OfferedPlanTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  private static final Almanac SAMPLE = SampleRecord.make().almanac();

  private static Surface topsides() {
    return SAMPLE.surfaces().stream()
        .filter(s -> s.key().startsWith("siskin") && s.key().contains("topsides"))
        .findFirst()
        .orElseThrow();
  }

  private static Plan plan() {
    Asked asked = With.component(Asked.of(topsides().id()), "gloss", Optional.of(84.0));
    Plans plans = SurfacePlans.of(SAMPLE, Experience.of(SAMPLE, TODAY), asked, TODAY).plans();
    return ((Plans.Found) plans).plans().get(0);
  }

  private static Estimate offered(Almanac almanac, Plan plan) {
    Edit edit =
        OfferedPlan.of(
            almanac, new IdSource(new Random(1)::nextLong), topsides().id(), plan, 84, TODAY);
    assertThat(Change.checked(almanac, edit)).isInstanceOf(Change.Ready.class);
    return (Estimate) edit.put().get(0);
  }

  /** Hours times the price of one, to two decimals: reckoned here by hand. */
  @Test
  void asksForItsHoursAtThePriceOfOne() {
    Plan plan = plan();
    Estimate.Option option = offered(SAMPLE, plan).options().get(0);
    PriceLine line = option.lines().get(0);
    assertThat(line.unit()).isEqualTo(PriceUnit.HOUR);
    assertThat(line.quantity())
        .isEqualByComparingTo(
            new BigDecimal(plan.totals().minutes() / 60.0).setScale(2, RoundingMode.HALF_UP));
    assertThat(line.price()).isEqualTo(SAMPLE.business().billing().charges().hour().orElseThrow());
    assertThat(option.surfaces()).containsExactly(topsides().id());
    assertThat(option.steps())
        .startsWith(StepKind.WASH, StepKind.DECONTAMINATE)
        .endsWith(StepKind.PROTECT)
        .contains(StepKind.POLISH)
        .doesNotHaveDuplicates();
  }

  @Test
  void saysBeforehandWhatItLeavesAndHowLikelyTheGlossIs() {
    Plan plan = plan();
    Estimate estimate = offered(SAMPLE, plan);
    assertThat(estimate.state()).isEqualTo(Estimate.State.DRAFT);
    assertThat(estimate.expectations().stream().map(Estimate.Expectation::words))
        .containsAll(plan.staysBehind())
        .anyMatch(w -> w.contains("84 at 60°") && w.contains("chances in 10"));
  }

  @Test
  void standsBeforeTheServicesAndHasNoLineWhereAnHourHasNoPrice() {
    Almanac without =
        SAMPLE.with(
            Edit.all(
                Almanac.empty(
                    With.component(
                        SAMPLE.business(),
                        "billing.charges",
                        hullalmanac.core.record.Billing.Charges.UNKNOWN))));
    Estimate estimate = offered(without, plan());
    assertThat(estimate.options().get(0).lines()).isEmpty();
    assertThat(estimate.options()).hasSizeGreaterThan(1);
  }
}
