package hullalmanac.core.report;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.finish.Budget;
import hullalmanac.core.finish.Estimate;
import hullalmanac.core.finish.GlossPath;
import hullalmanac.core.finish.Origin;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Stage;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionTest {
  private static Plan plan(Budget.Basis basis, Stage... stages) {
    Estimate nothing = new Estimate(0, 0, 0, Origin.STARTER);
    return new Plan(
        List.of(stages),
        new Plan.Totals(stages.length, 60, 5),
        0.9,
        new GlossPath(List.of(), 80),
        List.of(),
        new Plan.Around(nothing, nothing, nothing),
        List.of(),
        new Budget(50, 50, basis));
  }

  private static List<String> said(Plan plan) {
    return Caution.of(plan).stream().map(Caution::text).toList();
  }

  @Test
  void everyCutIsToBeTriedAndTaped() {
    assertThat(said(plan(Budget.Basis.MEASURED, Stage.FINISHING)))
        .hasSize(2)
        .anyMatch(s -> s.contains("Test spot") && s.contains("tape"))
        .anyMatch(s -> s.contains("cap on the hours"));
    assertThat(said(plan(Budget.Basis.MEASURED))).isEmpty();
  }

  @Test
  void sandingIsForTrainedHands() {
    assertThat(said(plan(Budget.Basis.MEASURED, Stage.SAND_P2000, Stage.MEDIUM, Stage.FINISHING)))
        .anyMatch(s -> s.contains("trained hands only"));
  }

  @Test
  void whatIsNotKnownOrThinIsSaid() {
    assertThat(said(plan(Budget.Basis.BY_AGE, Stage.MEDIUM)))
        .anyMatch(s -> s.contains("past of this surface is not known"));
    assertThat(said(plan(Budget.Basis.NO_AGE, Stage.MEDIUM)))
        .anyMatch(s -> s.contains("past of this surface is not known"));
    assertThat(said(plan(Budget.Basis.THIN_FILM, Stage.FINISHING)))
        .anyMatch(s -> s.contains("qualified yard"));
  }
}
