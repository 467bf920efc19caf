package hullalmanac.core.finish;

import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Observation;

/**
 * What one stage did to a small spot of this very surface.
 *
 * @param stage a paper stands for the paper and the compound after it
 * @param passes at least 1
 * @param before gloss at 60° before
 * @param after the same after
 */
public record TestSpot(
    Stage stage, int passes, Observation.GlossRead before, Observation.GlossRead after) {
  public TestSpot {
    if (passes < 1 || passes > StageRules.MOST) {
      throw new IllegalArgumentException("a test spot takes 1 to 4 passes, not " + passes);
    }
    if (before.geometry() != Geometry.DEG_60 || after.geometry() != Geometry.DEG_60) {
      throw new IllegalArgumentException("read the test spot at 60°, before and after");
    }
    if (before.mean() > Observation.GlossRead.HIGHEST_NON_METAL
        || after.mean() > Observation.GlossRead.HIGHEST_NON_METAL) {
      throw new IllegalArgumentException(
          "the gloss of a hull runs from 0 to 120 at 60°; read the test spot again");
    }
    if (stage.sands() && passes > 1) {
      throw new IllegalArgumentException("a test spot is sanded once");
    }
  }

  Pair pair() {
    return new Pair(
        new Pair.Reading(before.mean(), FinishPractice.sd(before)),
        new Pair.Reading(after.mean(), FinishPractice.sd(after)),
        passes,
        Double.POSITIVE_INFINITY,
        1);
  }
}
