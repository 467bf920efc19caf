package hullalmanac.core.finish;

import static hullalmanac.core.finish.Stage.FINISHING;
import static hullalmanac.core.finish.Stage.HEAVY;
import static hullalmanac.core.finish.Stage.MEDIUM;
import static hullalmanac.core.finish.Stage.ONE_STEP;
import static hullalmanac.core.finish.Stage.SAND_P1500;
import static hullalmanac.core.finish.Stage.SAND_P2000;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Tone;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StageRulesTest {
  private static Optional<String> light(Stage... stages) {
    return StageRules.against(List.of(stages), Film.GELCOAT, Tone.LIGHT, true);
  }

  private static Optional<String> dark(Stage... stages) {
    return StageRules.against(List.of(stages), Film.GELCOAT, Tone.DARK, true);
  }

  /** C(8 + 4, 4): multisets of at most four out of eight. */
  @Test
  void looksAtEveryFallingSeries() {
    assertThat(StageRules.FALLING).hasSize(495).doesNotHaveDuplicates();
  }

  @Test
  void heavyCompoundAndPaperNeedAFinishingPolish() {
    assertThat(light(HEAVY)).hasValueSatisfying(s -> assertThat(s).contains("finishing polish"));
    assertThat(light(HEAVY, MEDIUM)).isPresent();
    assertThat(light(HEAVY, ONE_STEP)).isPresent();
    assertThat(light(HEAVY, FINISHING)).isEmpty();
    assertThat(light(SAND_P1500, HEAVY)).isPresent();
    assertThat(light(SAND_P1500, HEAVY, FINISHING)).isEmpty();
  }

  @Test
  void mediumCompoundNeedsOneOnDarkSurfacesOnly() {
    assertThat(light(MEDIUM)).isEmpty();
    assertThat(dark(MEDIUM))
        .contains(
            "A finishing polish comes last after paper and heavy compound, on dark surfaces also"
                + " after medium compound.");
    assertThat(dark(MEDIUM, FINISHING)).isEmpty();
    assertThat(dark(ONE_STEP)).isEmpty();
  }

  @Test
  void aCompoundFollowsAPaperAtOnce() {
    assertThat(light(SAND_P1500, MEDIUM, FINISHING)).isPresent();
    assertThat(light(SAND_P2000, MEDIUM, FINISHING)).isEmpty();
    assertThat(light(SAND_P2000, FINISHING)).isPresent();
    assertThat(light(SAND_P2000)).isPresent();
    assertThat(light(SAND_P1500, SAND_P2000, HEAVY, FINISHING))
        .hasValueSatisfying(s -> assertThat(s).startsWith("One paper"));
  }

  @Test
  void paperIsForTrainedHandsAndGelcoat() {
    List<Stage> sanded = List.of(SAND_P2000, MEDIUM, FINISHING);
    assertThat(StageRules.against(sanded, Film.GELCOAT, Tone.LIGHT, false))
        .contains("Wet sanding is for trained hands only.");
    assertThat(StageRules.against(sanded, Film.CLEAR_OVER_METALLIC, Tone.LIGHT, true))
        .contains("Paint and clear are too thin to sand.");
  }

  @Test
  void cutFallsInAtMostFourStages() {
    assertThat(light(FINISHING, MEDIUM))
        .contains("Cut falls from stage to stage: no medium compound after finishing polish.");
    assertThat(light(ONE_STEP, ONE_STEP, FINISHING, FINISHING)).isEmpty();
    assertThat(light(ONE_STEP, ONE_STEP, FINISHING, FINISHING, FINISHING))
        .contains("A plan has at most four stages, not 5.");
  }

  @Test
  void someFinishesTakeNoAbrasives() {
    assertThat(StageRules.against(List.of(FINISHING), Film.NO_ABRASIVES, Tone.LIGHT, true))
        .contains("This finish takes no abrasives: it is washed and protected only.");
    assertThat(StageRules.against(List.of(), Film.NO_ABRASIVES, Tone.LIGHT, true)).isEmpty();
  }
}
