package hullalmanac.core.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.reckon.Dilution;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What stands on a card, its mixtures and its dwells. */
class JobCardTest {
  private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");
  private final Job job = new Job();

  @Test
  void stepsStandInTheirOrderWithWhatTheyTake() {
    Product acid = job.product(ProductKind.DECONTAMINANT, Hazard.ACID);
    acid = job.set(acid, "handling.partsWater", Optional.of(4));
    Step second = job.set(job.step(StepKind.DECONTAMINATE, acid, job.topsides), "order", 2);
    Step first = job.step(StepKind.WASH, job.product(ProductKind.SOAP));
    JobCard card = job.card();
    assertThat(card.steps().stream().map(s -> s.step().id()))
        .containsExactly(first.id(), second.id());
    assertThat(card.steps().get(0).where()).isEmpty();
    assertThat(card.steps().get(0).dwell()).isEmpty();
    assertThat(card.steps().get(0).dilution()).isEmpty();
    assertThat(card.steps().get(1).where()).containsExactly("topsides");
    assertThat(card.steps().get(1).dilution()).contains(new Dilution(4));
    job.set(second, "partsWater", Optional.of(10));
    assertThat(job.card().steps().get(1).dilution()).contains(new Dilution(10));
    assertThat(JobCard.of(job.almanac(), new Id<>(77_777))).isEmpty();
  }

  @Test
  void saysWhereSheLiesThatDayAndWhereRunoffIsCaught() {
    Harbour harbour = job.yard.harbour(48.4);
    Berth berth =
        job.yard.berth(job.boat, harbour, Cover.OPEN, Water.SALT, LocalDate.of(2025, 1, 1));
    assertThat(job.card().place()).isEqualTo(harbour.name());
    assertThat(job.card().runoff()).isEmpty();
    assertThat(job.card().checks().get(0)).startsWith("Lifejacket on");
    berth = job.set(berth, "access.runoff", "caught on the pad only");
    assertThat(job.card().runoff()).contains("caught on the pad only");
    Step step =
        job.step(
            StepKind.DECONTAMINATE,
            job.product(ProductKind.DECONTAMINANT, Hazard.ACID),
            job.topsides);
    assertThat(job.stops(step).get(0).sentence()).endsWith("of this berth: caught on the pad only");
    job.set(berth, "water", Water.ASHORE);
    assertThat(job.card().checks().get(0)).startsWith("Stands are not moved");
  }

  @Test
  void checksAndToolsFollowFromTheSteps() {
    assertThat(job.card().checks()).hasSize(4);
    assertThat(job.card().tools()).isEmpty();
    Step cut = job.step(StepKind.CUT, job.product(ProductKind.COMPOUND), job.topsides);
    job.set(cut, "pad", "wool");
    job.step(StepKind.WASH, job.product(ProductKind.SOAP, Hazard.ACID));
    assertThat(job.card().checks())
        .contains(
            "Test spot tried and read",
            "Leads over no water, mains behind a residual-current device",
            "Vents, blower and fuel fittings, hatches closed and taped");
    assertThat(job.card().tools())
        .contains("pad: wool", "gloves and goggles against splashes", "hose, two buckets, mitt")
        .doesNotHaveDuplicates();
  }

  /** The next of those planned; one that is overdue comes after all that are to come. */
  @Test
  void theNextPlannedVisitIsTheOneLookedFor() {
    assertThat(JobCard.next(job.almanac(), job.boat.id(), Job.DAY)).contains(job.visit);
    job.yard.visit(job.boat, Job.DAY.minusDays(3), VisitStatus.PLANNED, VisitWhy.OTHER);
    job.yard.visit(job.boat, Job.DAY.minusDays(1), VisitStatus.DONE, VisitWhy.OTHER);
    assertThat(JobCard.next(job.almanac(), job.boat.id(), Job.DAY)).contains(job.visit);
    assertThat(JobCard.next(job.almanac(), job.boat.id(), Job.DAY.plusDays(1)).orElseThrow().day())
        .isEqualTo(Job.DAY.minusDays(3));
    assertThat(JobCard.next(job.almanac(), new Id<>(77_777), Job.DAY)).isEmpty();
  }

  /**
   * 1 part and 10 parts water in a litre: 1000 / 11 = 90.9 ml; the formula is that of CDC, Best
   * Practices for Environmental Cleaning, appendix E, and its worked example 1 + 9 of 0.5 % from 5
   * % makes 100 ml in a litre.
   */
  @Test
  void aMixtureAddsUpToTheBottleInHand() {
    Mix ten = new Mix(new Dilution(10), 1000);
    assertThat(ten.product()).isEqualTo(91);
    assertThat(ten.water()).isEqualTo(909);
    assertThat(ten.dilution().words()).isEqualTo("1 part and 10 parts water, 11 in all");
    assertThat(new Mix(Dilution.of(5, 0.5), 1000).product()).isEqualTo(100);
    assertThat(new Mix(new Dilution(3), 750).product() + new Mix(new Dilution(3), 750).water())
        .isEqualTo(750);
    assertThatThrownBy(() -> new Mix(new Dilution(3), 0))
        .hasMessage("a bottle in hand holds 1 to 100000 ml, not 0");
  }

  @Test
  void aDwellIsTheLabelsElseOfAcidThreeToFiveMinutes() {
    Product acid = job.product(ProductKind.DECONTAMINANT, Hazard.ACID);
    Step step = job.step(StepKind.DECONTAMINATE, acid, job.topsides);
    assertThat(Dwell.of(step, Optional.of(acid)))
        .contains(new Dwell(Duration.ofMinutes(3), Duration.ofMinutes(5), true));
    Product labelled = job.set(acid, "handling.dwellMin", Optional.of(2));
    assertThat(Dwell.of(step, Optional.of(labelled)))
        .contains(new Dwell(Duration.ofMinutes(2), Duration.ofMinutes(2), false));
    Product both = job.set(labelled, "handling.dwellMax", Optional.of(6));
    assertThat(Dwell.of(step, Optional.of(both)).orElseThrow().longest())
        .isEqualTo(Duration.ofMinutes(6));
    assertThat(Dwell.of(step, Optional.empty())).isEmpty();
  }

  @Test
  void aTimerSaysWhatTheTimeAsks() {
    DwellTimer timer =
        new DwellTimer(new Dwell(Duration.ofMinutes(3), Duration.ofMinutes(5), true), NOON);
    assertThat(timer.phase(NOON.minusSeconds(60))).isEqualTo(DwellTimer.Phase.WORKING);
    assertThat(timer.left(NOON.minusSeconds(60))).isEqualTo(Duration.ofMinutes(3));
    assertThat(timer.left(NOON.plusSeconds(20))).isEqualTo(Duration.ofSeconds(160));
    assertThat(timer.phase(NOON.plusSeconds(179))).isEqualTo(DwellTimer.Phase.WORKING);
    assertThat(timer.phase(NOON.plusSeconds(180))).isEqualTo(DwellTimer.Phase.RINSE);
    assertThat(timer.left(NOON.plusSeconds(200))).isEqualTo(Duration.ofSeconds(100));
    assertThat(timer.phase(NOON.plusSeconds(300))).isEqualTo(DwellTimer.Phase.OVER);
    assertThat(timer.left(NOON.plusSeconds(330))).isEqualTo(Duration.ofSeconds(30));
  }
}
