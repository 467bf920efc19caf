package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Observation;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a surface can reach, and gloss as the planner reads it; common practice, no source. */
class GlossLimitTest {
  @ParameterizedTest
  @CsvSource({"0, 90", "4, 90", "5, 87", "15, 87", "16, 83", "40, 83"})
  void gelcoatReachesLessWithAge(int age, double gloss) {
    assertThat(GlossLimit.usual(FinishPractice.STANDARD, Film.GELCOAT, Optional.of(age)).gloss())
        .isEqualTo(gloss);
    assertThat(
            GlossLimit.usual(FinishPractice.STANDARD, Film.CLEAR_OVER_METALLIC, Optional.of(age))
                .gloss())
        .isEqualTo(90);
  }

  @Test
  void anUnknownAgeCountsAsOld() {
    assertThat(GlossLimit.usual(FinishPractice.STANDARD, Film.GELCOAT, Optional.empty()))
        .isEqualTo(new GlossLimit(83, GlossLimit.Why.AGE_UNKNOWN));
  }

  @Test
  void aWorseReadingSaysNothingOfIt() {
    GlossLimit usual = GlossLimit.usual(FinishPractice.STANDARD, Film.GELCOAT, Optional.of(10));
    assertThat(usual.seen(80, GlossLimit.Why.OWN_BEST)).isEqualTo(usual);
    assertThat(usual.seen(91, GlossLimit.Why.OWN_BEST).gloss()).isEqualTo(91);
  }

  @Test
  void theEyeScaleFallsFromLikeNewToDullAndIsRoughlyKnown() {
    for (int step = 1; step < 5; step++) {
      Start start = EyeGloss.start(step);
      assertThat(start.gloss()).isGreaterThan(EyeGloss.start(step + 1).gloss());
      assertThat(EyeGloss.lowest(step)).isBetween(EyeGloss.start(step + 1).gloss(), start.gloss());
      assertThat(start.sd()).isGreaterThanOrEqualTo(4);
    }
    assertThatThrownBy(() -> EyeGloss.lowest(5))
        .hasMessage("nobody agrees on a finish as dull as 5 on the eye scale");
    assertThatThrownBy(() -> EyeGloss.start(6)).hasMessage("the eye scale runs from 1 to 5, not 6");
  }

  /** ISO 2813: a reading over 100 is legal, and values at other angles are not interchangeable. */
  @Test
  void readsGlossAtSixtyDegreesOnly() {
    assertThat(Start.of(gloss(Geometry.DEG_60, 105))).isPresent();
    assertThat(Start.of(gloss(Geometry.DEG_20, 60))).isEmpty();
    assertThat(Start.of(gloss(Geometry.DEG_85, 60))).isEmpty();
  }

  private static Observation gloss(Geometry geometry, double reading) {
    return new Observation.GlossRead(geometry, List.of(reading), Optional.empty());
  }

  /**
   * Gloss of an ideal smooth surface of index 1.52 by Fresnel, computed apart with R 4.2.2:
   * 92.430914.
   */
  @Test
  void noStarterCeilingIsOverWhatAnIdealSurfaceMayHave() {
    double ideal = 100 * reflectance(1.52) / reflectance(1.567);
    assertThat(ideal).isCloseTo(92.430914, org.assertj.core.api.Assertions.within(1e-6));
    for (Stage stage : Stage.values()) {
      for (hullalmanac.core.record.Tone tone : hullalmanac.core.record.Tone.values()) {
        assertThat(FinishPractice.STANDARD.ceiling(stage.law(), tone)).isLessThan(ideal);
      }
    }
  }

  /** Fresnel's reflectance at 60°, unpolarised. */
  private static double reflectance(double n) {
    double cos = Math.cos(Math.PI / 3);
    double inside = Math.sqrt(1 - Math.pow(Math.sin(Math.PI / 3) / n, 2));
    double s = (cos - n * inside) / (cos + n * inside);
    double p = (n * cos - inside) / (n * cos + inside);
    return (s * s + p * p) / 2;
  }
}
