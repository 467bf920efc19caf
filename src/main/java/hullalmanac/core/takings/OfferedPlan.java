package hullalmanac.core.takings;

import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.With;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A plan of correction as an estimate: an option with its steps, priced by its hours, before those
 * that her services make; what it leaves is said beforehand.
 */
public final class OfferedPlan {
  private static final String NAME = "fewest passes";
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  private OfferedPlan() {}

  /**
   * The estimate to be written, a draft.
   *
   * @param gloss that was agreed, at 60 degrees
   */
  public static Edit of(
      Almanac almanac, IdSource ids, Id<Surface> id, Plan plan, double gloss, LocalDate day) {
    Surface surface = Accounts.row(almanac.surfaces(), id);
    Estimate begun = (Estimate) EstimateDraft.of(almanac, ids, surface.boat(), day).put().get(0);
    List<Estimate.Option> options = new ArrayList<>();
    options.add(option(almanac, surface, plan));
    options.addAll(begun.options());
    Set<Estimate.Expectation> expectations = new LinkedHashSet<>(begun.expectations());
    expectations.add(
        new Estimate.Expectation(
            Estimate.Result.IMPROVES,
            String.format(
                Locale.ROOT,
                "gloss of the %s: %.0f at 60°, %d chances in 10",
                surface.name().isBlank() ? surface.kind().words() : surface.name(),
                gloss,
                (int) Math.floor(10 * plan.chance() + 1e-9))));
    plan.staysBehind()
        .forEach(s -> expectations.add(new Estimate.Expectation(Estimate.Result.STAYS, s)));
    return Edit.put(
        With.component(
            With.component(begun, "options", List.copyOf(options)),
            "expectations",
            List.copyOf(expectations)));
  }

  private static Estimate.Option option(Almanac almanac, Surface surface, Plan plan) {
    return new Estimate.Option(
        NAME,
        steps(plan),
        List.of(surface.id()),
        line(almanac, plan).stream().toList(),
        Share.NONE,
        Texts.capital(plan.words()));
  }

  private static List<StepKind> steps(Plan plan) {
    Set<StepKind> kinds = new LinkedHashSet<>();
    kinds.add(StepKind.WASH);
    kinds.add(StepKind.DECONTAMINATE);
    for (Stage stage : plan.stages()) {
      kinds.add(stage.compareTo(Stage.ONE_STEP) >= 0 ? StepKind.POLISH : StepKind.CUT);
    }
    kinds.add(StepKind.PROTECT);
    return List.copyOf(kinds);
  }

  /** All its hours at the price of one; nothing where none is set, to be written by hand. */
  private static Optional<PriceLine> line(Almanac almanac, Plan plan) {
    Optional<Money> hour = almanac.business().billing().charges().hour();
    return hour.map(
        h ->
            new PriceLine(
                "",
                plan.words(),
                BigDecimal.valueOf(plan.totals().minutes())
                    .divide(SIXTY, 2, RoundingMode.HALF_UP)
                    .max(new BigDecimal("0.01")),
                PriceUnit.HOUR,
                h,
                almanac.business().billing().taxes(),
                Optional.empty()));
  }
}
