package hullalmanac.core.life;

import hullalmanac.core.record.Finding;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What one coat's findings say of its life.
 *
 * @param logLikelihood ln ℓ(L) at the points of {@link LogLife}; all 0 when nothing was said
 * @param used findings that were used, in order of the day
 * @param bareOn last day on which it was seen bare, washed or cleaner, with nothing since that
 *     reopens it
 * @param firstGloss the first gloss reading, where there is one
 */
record Evidence(
    LogLikelihood logLikelihood,
    List<Finding> used,
    List<Unused> unused,
    Optional<LocalDate> bareOn,
    Optional<Finding> firstGloss) {
  Evidence {
    used = List.copyOf(used);
    unused = List.copyOf(unused);
  }
}
