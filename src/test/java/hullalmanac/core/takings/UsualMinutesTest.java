package hullalmanac.core.takings;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.price.PricedArea;
import hullalmanac.core.price.UsualMinutes;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.sample.SampleRecord;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas by rule of thumb, and how long a square metre took. */
class UsualMinutesTest {
  private final Till till = new Till();

  private Boat measured(Boat boat) {
    return With.component(
        With.component(
            With.component(boat, "loa", Optional.of(Length.ofMetres(9.5))),
            "beam",
            Optional.of(Length.ofMetres(3.0))),
        "freeboard",
        Optional.of(Length.ofMetres(1.1)));
  }

  /**
   * Common practice, no standard source: rules of thumb of marine paint guides, with length 9.5,
   * beam 3.0, freeboard 1.1 m: topsides 2 · 1.1 · 12.5 = 27.5, deck 0.75 · 9.5 · 3 = 21.375.
   */
  @ParameterizedTest
  @CsvSource({"HULL, 27.5", "DECK, 21.4", "WHOLE_BOAT, 48.9"})
  void theAreaFollowsFromTheMeasures(Extent extent, String metres) {
    assertThat(PricedArea.of(measured(till.tern), extent).orElseThrow())
        .isEqualByComparingTo(metres);
    assertThat(PricedArea.of(till.tern, extent)).isEmpty();
  }

  private void took(int minutes, int helper, int daysAgo) {
    Visit visit = till.visit(till.tern, Till.DAY.minusDays(daysAgo), StepKind.WASH);
    Step step =
        till.now.steps().stream()
            .filter(s -> s.visit().equals(visit.id()))
            .findFirst()
            .orElseThrow();
    till.now =
        till.now.with(
            Edit.put(
                With.component(
                    With.component(step, "minutes", Optional.of(minutes)),
                    "helperMinutes",
                    Optional.of(helper))));
  }

  private Optional<UsualMinutes> usual(String key) {
    Rate rate =
        till.now.books().rates().stream()
            .filter(r -> r.key().equals(key))
            .findFirst()
            .orElseThrow();
    return UsualMinutes.of(till.now, rate);
  }

  /** By hand, over 48.875 m² rounded to 48.9: 489 minutes are 10.0 a m², 978 are 20.0. */
  @Test
  void theMiddleOfTheNewestVisitsIsTaken() {
    till.now = till.now.with(Edit.put(measured(till.tern)));
    assertThat(usual("wash")).isEmpty();
    took(489, 0, 3);
    assertThat(usual("wash").orElseThrow().perSquareMetre()).isEqualByComparingTo("10.0");
    took(489, 489, 2);
    assertThat(usual("wash").orElseThrow().perSquareMetre()).isEqualByComparingTo("15.0");
    took(978, 0, 1);
    UsualMinutes three = usual("wash").orElseThrow();
    assertThat(three.perSquareMetre()).isEqualByComparingTo("20.0");
    assertThat(three.visits()).isEqualTo(3);
    assertThat(usual("hull")).as("a visit without all of its steps").isEmpty();
    for (int i = 0; i < 14; i++) {
      took(489, 0, 0);
    }
    assertThat(usual("wash").orElseThrow().visits()).isEqualTo(14);
    assertThat(usual("wash").orElseThrow().perSquareMetre()).isEqualByComparingTo("10.0");
  }

  /** By hand: 275 minutes on the hull alone, 27.5 m², are 10.0; on one side of it 20.0. */
  @Test
  void theMinutesAreForTheSurfacesTheStepWasDoneOn() {
    till.now = till.now.with(Edit.put(measured(till.tern)));
    took(275, 0, 1);
    Surface hull =
        With.component(
            SampleRecord.make().almanac().surfaces().stream()
                .filter(s -> Extent.of(s.kind()) == Extent.HULL)
                .findFirst()
                .orElseThrow(),
            "boat",
            till.tern.id());
    Step step =
        till.now.steps().stream()
            .filter(s -> s.minutes().equals(Optional.of(275)))
            .findFirst()
            .orElseThrow();
    till.now =
        till.now.with(
            Edit.put(
                With.component(hull, "side", Side.BOTH),
                With.component(step, "surfaces", List.of(hull.id()))));
    assertThat(usual("wash").orElseThrow().perSquareMetre()).isEqualByComparingTo("10.0");
    till.now = till.now.with(Edit.put(With.component(hull, "side", Side.PORT)));
    assertThat(usual("wash").orElseThrow().perSquareMetre()).isEqualByComparingTo("20.0");
  }
}
