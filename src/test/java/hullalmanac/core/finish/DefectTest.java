package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Amount;
import hullalmanac.core.record.ChalkingScale;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.ScratchDepth;
import hullalmanac.core.record.SurfaceState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DefectTest {
  private static Optional<Defect> seen(Observation seen) {
    return Defect.seen(seen, SurfaceState.WASHED);
  }

  /**
   * ISO 4628-6: 0 is none and 5 the worst. ASTM D4214: 10 is none and lower is worse. The borders
   * of trace, clear and heavy are a house rule on each scale.
   */
  @ParameterizedTest
  @CsvSource({
    "iso-4628-6, 0, ",
    "iso-4628-6, 0.5, CHALKING_TRACE",
    "iso-4628-6, 1, CHALKING_TRACE",
    "iso-4628-6, 1.5, CHALKING_CLEAR",
    "iso-4628-6, 3, CHALKING_CLEAR",
    "iso-4628-6, 3.5, CHALKING_HEAVY",
    "iso-4628-6, 5, CHALKING_HEAVY",
    "astm-d4214, 10, ",
    "astm-d4214, 9.5, CHALKING_TRACE",
    "astm-d4214, 8, CHALKING_TRACE",
    "astm-d4214, 7.5, CHALKING_CLEAR",
    "astm-d4214, 6, CHALKING_CLEAR",
    "astm-d4214, 5.5, CHALKING_HEAVY",
    "astm-d4214, 0, CHALKING_HEAVY"
  })
  void readsEachScaleOfChalkingInItsOwnDirection(String scale, double rating, Defect defect) {
    ChalkingScale on =
        hullalmanac.core.record.Coded.parse(ChalkingScale.class, scale).orElseThrow();
    assertThat(seen(new Observation.Chalking(on, rating))).isEqualTo(Optional.ofNullable(defect));
  }

  @Test
  void chalkingNeverSeemsLessAsEachScaleRunsToItsWorst() {
    List<Integer> iso = new ArrayList<>();
    List<Integer> astm = new ArrayList<>();
    for (double step = 0; step <= 5; step += 0.5) {
      iso.add(rank(new Observation.Chalking(ChalkingScale.ISO_4628_6, step)));
      astm.add(rank(new Observation.Chalking(ChalkingScale.ASTM_D4214, 10 - 2 * step)));
    }
    assertThat(iso).isSorted().startsWith(0).endsWith(3);
    assertThat(astm).isSorted().startsWith(0).endsWith(3);
  }

  private static int rank(Observation chalking) {
    return seen(chalking)
        .map(d -> d == Defect.CHALKING_TRACE ? 1 : d == Defect.CHALKING_CLEAR ? 2 : 3)
        .orElse(0);
  }

  @Test
  void readsFingersNailsAndTrails() {
    assertThat(seen(new Observation.FingerRub(RubLevel.NONE))).isEmpty();
    assertThat(seen(new Observation.FingerRub(RubLevel.CLEAR))).contains(Defect.CHALKING_CLEAR);
    assertThat(seen(new Observation.Scratches(ScratchDepth.NONE))).isEmpty();
    assertThat(seen(new Observation.Scratches(ScratchDepth.FELT))).contains(Defect.SCRATCHES_FELT);
    assertThat(seen(new Observation.Scratches(ScratchDepth.THROUGH)))
        .contains(Defect.SCRATCHES_THROUGH);
    assertThat(seen(new Observation.BufferTrails(Amount.NONE))).isEmpty();
    assertThat(seen(new Observation.BufferTrails(Amount.LITTLE))).contains(Defect.BUFFER_TRAILS);
  }

  @Test
  void stainsAndSpotsComeOffByWashingUnlessTheyAreEtchedIn() {
    Observation spots = new Observation.WaterSpots(Amount.SOME);
    assertThat(seen(new Observation.Staining(Amount.MUCH))).isEmpty();
    assertThat(seen(spots)).isEmpty();
    assertThat(Defect.seen(spots, SurfaceState.DECONTAMINATED)).contains(Defect.ETCHED_WATER_MARKS);
  }

  private static boolean gone(Defect d, Stage... stages) {
    return d.reachedBy(List.of(stages), Optional.empty());
  }

  @Test
  void theLightestStageOfEachIsThatOfTheTable() {
    assertThat(gone(Defect.CHALKING_TRACE, Stage.FINISHING)).isTrue();
    assertThat(gone(Defect.LIGHT_SCUFFS, Stage.FINISHING)).isFalse();
    assertThat(gone(Defect.LIGHT_SCUFFS, Stage.ONE_STEP)).isTrue();
    assertThat(gone(Defect.SCUFFS_NOT_FELT, Stage.ONE_STEP, Stage.FINISHING)).isFalse();
    assertThat(gone(Defect.SCUFFS_NOT_FELT, Stage.MEDIUM)).isTrue();
    assertThat(gone(Defect.SCUFFS_JUST_FELT, Stage.MEDIUM, Stage.FINISHING)).isFalse();
    assertThat(gone(Defect.SCUFFS_JUST_FELT, Stage.HEAVY, Stage.FINISHING)).isTrue();
    assertThat(gone(Defect.CLOUDINESS, Stage.HEAVY, Stage.FINISHING)).isFalse();
    for (Defect d : Defect.values()) {
      assertThat(gone(d)).isFalse();
    }
  }

  @Test
  void aCompoundLeavesMarksOfTheMachineUntilAPolishFollows() {
    assertThat(gone(Defect.BUFFER_TRAILS, Stage.MEDIUM)).isFalse();
    assertThat(gone(Defect.BUFFER_TRAILS, Stage.MEDIUM, Stage.FINISHING)).isTrue();
    assertThat(gone(Defect.SWIRLS, Stage.MEDIUM, Stage.ONE_STEP)).isTrue();
  }

  @Test
  void aPaperTakesDownWhatAFinerOneWouldNot() {
    List<Stage> fine = List.of(Stage.SAND_P2000, Stage.MEDIUM, Stage.FINISHING);
    List<Stage> coarse = List.of(Stage.SAND_P1000, Stage.HEAVY, Stage.FINISHING);
    Optional<Stage> asked = Optional.of(Stage.SAND_P1500);
    assertThat(Defect.SCRATCHES_FELT.reachedBy(fine, asked)).isFalse();
    assertThat(Defect.SCRATCHES_FELT.reachedBy(coarse, asked)).isTrue();
  }
}
