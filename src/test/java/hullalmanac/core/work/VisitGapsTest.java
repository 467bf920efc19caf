package hullalmanac.core.work;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitGapsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  private final Boatyard yard = new Boatyard();
  private final Boat boat = yard.boat(Use.WEEKENDS);
  private final Surface topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
  private final Product sealant = yard.product(ProductKind.POLYMER_SEALANT, 6.0);

  private static List<VisitGaps.Gap> gaps(Almanac almanac, Visit visit) {
    Visit now =
        almanac.visits().stream().filter(v -> v.id().equals(visit.id())).findFirst().orElseThrow();
    return VisitGaps.of(almanac, now, TODAY);
  }

  private static Almanac put(Almanac almanac, hullalmanac.core.record.Row... rows) {
    return almanac.with(Edit.put(rows));
  }

  @Test
  void aPlannedVisitIsMissingItsEndOnItsDayAndAfterButNotBefore() {
    Visit today = yard.visit(boat, TODAY, VisitStatus.PLANNED, VisitWhy.OTHER);
    Visit past = yard.visit(boat, TODAY.minusDays(3), VisitStatus.PLANNED, VisitWhy.OTHER);
    Visit ahead = yard.visit(boat, TODAY.plusDays(1), VisitStatus.PLANNED, VisitWhy.OTHER);
    yard.step(today, StepKind.WASH, null);
    Almanac almanac = yard.almanac();
    assertThat(gaps(almanac, today)).containsExactly(new VisitGaps.StillPlanned(TODAY));
    assertThat(gaps(almanac, past)).containsExactly(new VisitGaps.StillPlanned(TODAY.minusDays(3)));
    assertThat(gaps(almanac, ahead)).isEmpty();
  }

  @Test
  void aVisitOfSeveralDaysIsAskedForTheMinutesOfThoseThatWere() {
    Visit visit = yard.visit(boat, TODAY, VisitStatus.PLANNED, VisitWhy.OTHER);
    Step wash = yard.step(visit, StepKind.WASH, null);
    Step later = With.component(yard.step(visit, StepKind.POLISH, null), "day", TODAY.plusDays(1));
    Visit begun =
        With.component(
            visit,
            "surfaces",
            List.of(new Visit.Part(topsides.id(), WorkState.DONE, Optional.of(TODAY), "")));
    assertThat(gaps(put(yard.almanac(), later, begun), visit))
        .containsExactly(new VisitGaps.StillPlanned(TODAY), new VisitGaps.NoMinutes(wash));
  }

  @Test
  void damageIsMissingWhoWasToldUntilSomebodyWas() {
    Visit visit = yard.visit(boat, TODAY.plusDays(1), VisitStatus.PLANNED, VisitWhy.OTHER);
    Observation.Damage chip = new Observation.Damage("chip");
    Finding found = yard.found(topsides, TODAY, SurfaceState.DIRTY, Entered.GRID, chip, visit);
    yard.found(topsides, TODAY, SurfaceState.DIRTY, chip);
    assertThat(gaps(yard.almanac(), visit)).containsExactly(new VisitGaps.Untold(topsides));
    Optional<Observation.Told> told = Optional.of(new Observation.Told("Ida Brook", TODAY));
    Finding after = With.component(found, "seen", new Observation.Damage("chip", told));
    assertThat(gaps(put(yard.almanac(), after), visit)).isEmpty();
  }

  @Test
  void aDoneVisitIsMissingMinutesBatchAndHandover() {
    Visit visit = yard.visit(boat, TODAY, VisitStatus.DONE, VisitWhy.OTHER);
    Step step = yard.step(visit, StepKind.PROTECT, sealant, topsides);
    Coat coat =
        With.component(yard.coat(topsides, sealant, TODAY), "visit", Optional.of(visit.id()));
    Almanac almanac = put(yard.almanac(), coat);
    assertThat(gaps(almanac, visit))
        .containsExactly(
            new VisitGaps.NoMinutes(step), new VisitGaps.NoBatch(coat), new VisitGaps.NoHandover());
    almanac =
        put(
            almanac,
            With.component(step, "minutes", Optional.of(90)),
            With.component(coat, "batch", "B-17"),
            With.component(visit, "handover", Handover.BY_MESSAGE));
    assertThat(gaps(almanac, visit)).isEmpty();
  }

  @Test
  void aCoatThatEndedUnseenIsMissingALook() {
    Coat old = yard.coat(topsides, sealant, TODAY.minusYears(1));
    Visit visit = yard.visit(boat, TODAY, VisitStatus.DONE, VisitWhy.OTHER);
    Step polish = yard.step(visit, StepKind.POLISH, null, topsides);
    yard.end(old, new Coat.Ending(TODAY, CoatEnd.STRIPPED, EndState.NOT_LOOKED, ""));
    Almanac almanac =
        put(
            yard.almanac(),
            With.component(polish, "minutes", Optional.of(60)),
            With.component(visit, "handover", Handover.ON_THE_SPOT));
    assertThat(gaps(almanac, visit)).containsExactly(new VisitGaps.NotLooked(topsides));
    yard.found(
        topsides,
        TODAY,
        SurfaceState.WASHED,
        Entered.GRID,
        Boatyard.water(WaterBehaviour.FLAT),
        visit);
    assertThat(gaps(almanac.with(Edit.put(yard.almanac().findings())), visit)).isEmpty();
  }

  @Test
  void ofACoatEndedElsewhereNothingIsMissing() {
    Coat old = yard.coat(topsides, sealant, TODAY.minusYears(1));
    Visit visit = yard.visit(boat, TODAY, VisitStatus.DONE, VisitWhy.OTHER);
    yard.end(old, new Coat.Ending(TODAY.minusDays(20), CoatEnd.STRIPPED, EndState.NOT_LOOKED, ""));
    assertThat(gaps(yard.almanac(), visit)).containsExactly(new VisitGaps.NoHandover());
  }

  @Test
  void aCancelledVisitIsMissingNothing() {
    Visit visit =
        new Visit(
            new hullalmanac.core.record.Id<>(900),
            "off",
            boat.id(),
            TODAY,
            VisitStatus.CANCELLED,
            VisitWhy.OTHER,
            Optional.empty(),
            Optional.of(MoveReason.WEATHER),
            Handover.NOT_YET,
            List.of(),
            List.of(),
            "");
    assertThat(gaps(put(yard.almanac(), visit), visit)).isEmpty();
  }
}
