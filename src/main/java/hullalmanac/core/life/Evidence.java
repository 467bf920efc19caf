package hullalmanac.core.life;

import hullalmanac.core.life.fit.Lifetime;
import hullalmanac.core.record.Finding;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one coat's findings say of its life.
 *
 * @param logLikelihood ln ℓ(L) at the points of {@link LogLife}; all 0 when nothing was said
 * @param metAt for a coat that was met already in service, its dose on that day: ℓ(L) is 0 below
 *     it, and whoever learns from it divides by P(L &gt; metAt), since a shorter life would not
 *     have been met (left truncation)
 * @param used findings that were used, in order of the day
 * @param bareOn last day on which it was seen bare, washed or cleaner, with nothing since that
 *     reopens it
 * @param firstGloss the first gloss reading, where there is one
 * @param life the life in doses as looks at a clean surface bracket it: ended between the last good
 *     one and the first bare one; for pictures, not for dates; absent when nobody looked, or when
 *     it was met in service
 */
record Evidence(
    LogLikelihood logLikelihood,
    Optional<Double> metAt,
    List<Finding> used,
    List<Unused> unused,
    Optional<LocalDate> bareOn,
    Optional<FirstGloss> firstGloss,
    Optional<Lifetime> life) {
  Evidence {
    used =
        used.stream()
            .sorted(Comparator.comparing(Finding::day).thenComparing(Finding::id))
            .toList();
    unused = List.copyOf(unused);
  }

  /** Whether the likelihood tells any two lives apart. */
  boolean saysAnything() {
    return logLikelihood.saysAnything();
  }
}
