package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/** Rules for pairs of days. */
final class Days {
  private Days() {}

  /** Refuses an end that is not after its beginning. */
  static void inOrder(LocalDate from, Optional<LocalDate> until) {
    until.ifPresent(
        end -> {
          if (!end.isAfter(from)) {
            throw new IllegalArgumentException(
                "it ends on " + end + ", not after it began on " + from);
          }
        });
  }
}
