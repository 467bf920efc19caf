package hullalmanac.core.finish;

import hullalmanac.core.record.Tone;
import java.util.EnumSet;
import java.util.Set;

/**
 * One surface as it stands before the work.
 *
 * @param limit the gloss that it can reach at all
 * @param seen what is there
 */
record Subject(
    Film film, Tone tone, GlossLimit limit, Start start, Set<Defect> seen, Budget budget) {
  Subject {
    seen = Set.copyOf(seen.isEmpty() ? EnumSet.noneOf(Defect.class) : EnumSet.copyOf(seen));
  }
}
