package hullalmanac.core.record;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One operation of a visit on some surfaces.
 *
 * @param order place within the visit, from 1
 * @param surfaces where it was done; empty means the whole boat
 * @param partsWater parts of water to one part of product
 * @param pad pad or tool
 * @param speed machine speed, in the person's own words
 * @param passes how often
 * @param minutes the person's own minutes
 * @param helperMinutes a helper's minutes
 * @param timedSince since when it is being timed; absent while it is not
 * @param climate reading of air and surface, for one that lays a coat
 */
public record Step(
    Id<Step> id,
    String key,
    Id<Visit> visit,
    int order,
    StepKind kind,
    LocalDate day,
    List<Id<Surface>> surfaces,
    Optional<Id<Product>> product,
    Optional<Id<Bottle>> bottle,
    Optional<Integer> partsWater,
    String pad,
    String speed,
    Optional<Integer> passes,
    Optional<Integer> minutes,
    Optional<Integer> helperMinutes,
    Optional<Instant> timedSince,
    Optional<Climate> climate,
    String note)
    implements Row {
  /** The most minutes that a step can have taken. */
  public static final int MOST_MINUTES = 6000;

  public Step {
    Texts.key(key);
    surfaces = List.copyOf(surfaces);
    if (order < 1) {
      throw new IllegalArgumentException("the first step of a visit has number 1, not " + order);
    }
    partsWater.ifPresent(v -> requireCount(v, 1, 1000, "parts of water"));
    passes.ifPresent(v -> requireCount(v, 1, 99, "passes"));
    minutes.ifPresent(v -> requireCount(v, 0, MOST_MINUTES, "minutes"));
    helperMinutes.ifPresent(v -> requireCount(v, 0, MOST_MINUTES, "a helper's minutes"));
  }

  private static void requireCount(int value, int low, int high, String what) {
    if (value < low || value > high) {
      throw new IllegalArgumentException(
          what + " run from " + low + " to " + high + ", not " + value);
    }
  }
}
