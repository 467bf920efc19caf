package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A protection laid on one surface on one day, in service until renewed or stripped.
 *
 * @param laidOn the day it was laid; absent when nobody knows
 * @param knownFrom for a coat that the business met already in service, the day it was met; needed
 *     when {@code laidOn} is absent
 * @param over for a topper, the coat it lies on
 * @param layers how many layers
 * @param ending how it ended; absent while in service or when a later coat on the surface says it
 */
public record Coat(
    Id<Coat> id,
    String key,
    Id<Surface> surface,
    Id<Product> product,
    Optional<LocalDate> laidOn,
    Optional<LocalDate> knownFrom,
    Optional<Id<Visit>> visit,
    Optional<Id<Bottle>> bottle,
    String batch,
    int layers,
    Optional<Id<Coat>> over,
    Optional<Ending> ending,
    String note)
    implements Row {
  public Coat {
    Texts.key(key);
    if (laidOn.isEmpty() && knownFrom.isEmpty()) {
      throw new IllegalArgumentException(
          "a coat has the day it was laid, or the day it was first met in service");
    }
    if (laidOn.isPresent() && knownFrom.isPresent() && knownFrom.get().isBefore(laidOn.get())) {
      throw new IllegalArgumentException(
          "a coat cannot be met on " + knownFrom.get() + ", before it was laid");
    }
    if (layers < 1 || layers > 9) {
      throw new IllegalArgumentException("a coat has 1 to 9 layers, not " + layers);
    }
    ending.ifPresent(
        e -> {
          if (e.on().isBefore(laidOn.or(() -> knownFrom).orElseThrow())) {
            throw new IllegalArgumentException(
                "a coat cannot end on " + e.on() + ", before it began");
          }
        });
  }

  /** The first day on which it is known to be in service. */
  public LocalDate since() {
    return laidOn.or(() -> knownFrom).orElseThrow();
  }

  /**
   * How a coat's service ended.
   *
   * @param seen what was seen just before, or that nobody looked
   * @param reason why, in words; empty when not said
   */
  public record Ending(LocalDate on, CoatEnd how, EndState seen, String reason) {}
}
