package hullalmanac.core.record;

import java.util.function.LongSupplier;

/**
 * Issues new ids from a source of random numbers that the caller passes in.
 *
 * @param random gives uniformly random 64-bit numbers
 */
public record IdSource(LongSupplier random) {
  /** Returns a fresh id; 63 random bits, never 0. */
  public <T> Id<T> next() {
    long value;
    do {
      value = random.getAsLong() >>> 1;
    } while (value == 0);
    return new Id<>(value);
  }
}
