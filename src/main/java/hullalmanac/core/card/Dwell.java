package hullalmanac.core.card;

import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import java.time.Duration;
import java.util.Optional;

/**
 * For how long something stays on.
 *
 * @param shortest before this it has not worked
 * @param longest after this it may harm, or dries
 * @param practice whether it is common practice, no source, rather than what its label says
 */
public record Dwell(Duration shortest, Duration longest, boolean practice) {
  /** An acidic decontaminant dwells 3 to 5 minutes (common practice, no source). */
  private static final Dwell ACID = new Dwell(Duration.ofMinutes(3), Duration.ofMinutes(5), true);

  public Dwell {
    if (shortest.isNegative() || longest.isZero() || longest.compareTo(shortest) < 0) {
      throw new IllegalArgumentException("no dwell runs from " + shortest + " to " + longest);
    }
  }

  /** The dwell of a step; absent where nothing stays on. */
  static Optional<Dwell> of(Step step, Optional<Product> product) {
    Optional<Integer> low = product.flatMap(p -> p.handling().dwellMin());
    Optional<Integer> high = product.flatMap(p -> p.handling().dwellMax());
    if (low.isPresent() || high.isPresent()) {
      int from = low.orElse(0);
      int to = Math.max(from, high.or(() -> low).orElse(0));
      return to == 0
          ? Optional.empty()
          : Optional.of(new Dwell(Duration.ofMinutes(from), Duration.ofMinutes(to), false));
    }
    boolean acid = product.filter(p -> p.hazards().contains(Hazard.ACID)).isPresent();
    return acid && step.kind() == StepKind.DECONTAMINATE ? Optional.of(ACID) : Optional.empty();
  }
}
