package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.fixture.OpenSample;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is kept from one forecast to the next never changes an answer. */
@Tag("slow")
class NextForecastTest {
  private static final Almanac SAMPLE = OpenSample.fleet().almanac();
  private static final LocalDate TODAY = OpenSample.fleet().asOf();

  private static Almanac with(Finding finding) {
    List<Finding> findings = new ArrayList<>(SAMPLE.findings());
    findings.add(finding);
    Almanac a = SAMPLE;
    return new Almanac(
        a.business(),
        a.harbours(),
        a.parties(),
        a.boats(),
        a.roles(),
        a.surfaces(),
        a.berths(),
        a.carePlans(),
        a.products(),
        a.bottles(),
        a.visits(),
        a.steps(),
        a.coats(),
        a.duties(),
        findings,
        a.photos());
  }

  @Test
  void isAsANewOneAfterAFinding() {
    Forecaster first = new Forecaster(SAMPLE, TODAY);
    CoatForecast some =
        first.inService().stream()
            .filter(f -> f.outcome() instanceof Outcome.Dated)
            .findFirst()
            .orElseThrow();
    Almanac changed =
        with(
            new Finding(
                new Id<>(Long.MAX_VALUE),
                "new",
                some.surface().id(),
                Optional.empty(),
                TODAY,
                SurfaceState.DECONTAMINATED,
                Entered.GRID,
                new Observation.WaterSeen(WaterBehaviour.FLAT),
                ""));
    List<CoatForecast> next = first.next(changed, TODAY).inService();
    assertThat(next).isEqualTo(new Forecaster(changed, TODAY).inService());
    assertThat(next).isNotEqualTo(first.inService());
  }

  @Test
  void isAsANewOneOnAnotherDay() {
    LocalDate later = TODAY.plusDays(40);
    LocalDate earlier = TODAY.minusDays(200);
    Forecaster first = new Forecaster(SAMPLE, TODAY);
    assertThat(first.next(SAMPLE, later).inService())
        .isEqualTo(new Forecaster(SAMPLE, later).inService());
    assertThat(first.next(SAMPLE, earlier).next(SAMPLE, TODAY).inService())
        .isEqualTo(first.inService());
  }
}
