package hullalmanac.core.finish;

import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Tone;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** How each stage moves the gloss of one surface, and what that rests on. */
final class SurfaceLaws {
  private final Map<Stage, Experience.Learned> laws = new EnumMap<>(Stage.class);

  SurfaceLaws(Map<Stage, Experience.Learned> laws) {
    this.laws.putAll(laws);
  }

  /**
   * What is known of stages in general, spread by how surfaces differ; no ceiling over what this
   * surface can reach, until its test spots say so. A spot updates its own stage at once.
   */
  static SurfaceLaws of(
      Experience experience, Finish finish, Tone tone, GlossLimit limit, List<TestSpot> spots) {
    Map<Stage, Experience.Learned> laws = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      Experience.Learned general = experience.law(stage, finish, tone);
      List<Pair> own =
          spots.stream().filter(s -> s.stage().law() == stage.law()).map(TestSpot::pair).toList();
      GlossLaw law =
          general
              .law()
              .plus(FinishPractice.BETWEEN_SURFACES)
              .cappedAt(limit.gloss())
              .taught(own, FinishPractice.SPOT_TO_WHOLE);
      Origin origin = own.isEmpty() ? general.origin() : general.origin().withSpot();
      laws.put(stage, new Experience.Learned(law, origin));
    }
    return new SurfaceLaws(laws);
  }

  GlossLaw law(Stage stage) {
    return laws.get(stage).law();
  }

  Origin origin(Stage stage) {
    return laws.get(stage).origin();
  }
}
