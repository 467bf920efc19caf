package hullalmanac.core.finish;

import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Observation;
import java.util.Optional;

/**
 * The gloss of a surface before the work.
 *
 * @param gloss at 60°, gloss units, from 0 to 120
 * @param sd how well it is known, gloss units, not negative
 */
public record Start(double gloss, double sd, By by) {
  /** Read off a meter, or by eye. */
  public enum By {
    METER,
    EYE
  }

  public Start {
    if (!(gloss >= 0 && gloss <= Observation.GlossRead.HIGHEST_NON_METAL)) {
      throw new IllegalArgumentException("the gloss of a hull runs from 0 to 120, not " + gloss);
    }
    if (!(sd >= 0)) {
      throw new IllegalArgumentException("a spread is not negative: " + sd);
    }
  }

  /** What an observation says of the gloss: readings at 60°, or the eye scale; else nothing. */
  public static Optional<Start> of(Observation seen) {
    if (seen instanceof Observation.GlossRead g && g.geometry() == Geometry.DEG_60) {
      return Optional.of(new Start(g.mean(), FinishPractice.sd(g), By.METER));
    }
    return seen instanceof Observation.EyeScale e
        ? Optional.of(EyeGloss.start(e.step()))
        : Optional.empty();
  }
}
