package hullalmanac.core.finish;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What was agreed with the owner, and how the work may be done.
 *
 * @param gloss to be reached at 60°, gloss units; see {@link EyeGloss#lowest} where none is
 *     measured
 * @param gone what is to be gone; of scratches felt by a nail: improved
 * @param edgesTaped whether edges and corners are taped and lose nothing
 * @param paper where trained hands may sand: the finest paper that takes the deepest scratch down;
 *     absent where nobody sands
 */
public record Agreed(double gloss, Set<Defect> gone, boolean edgesTaped, Optional<Stage> paper) {
  private static final double HIGHEST = 120;

  public Agreed {
    if (!(gloss > 0 && gloss <= HIGHEST)) {
      throw new IllegalArgumentException(
          "a gloss to agree on is over 0 and at most 120, not " + gloss);
    }
    gone = Set.copyOf(gone.isEmpty() ? EnumSet.noneOf(Defect.class) : EnumSet.copyOf(gone));
    paper.ifPresent(
        p -> {
          if (!p.sands()) {
            throw new IllegalArgumentException(p.words() + " is no paper");
          }
        });
  }
}
