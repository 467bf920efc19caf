package hullalmanac.core.record;

/**
 * Identity of one row of kind {@code T}: a random number from 1 to 2⁶³ − 1, so that two copies of a
 * record never issue the same one.
 *
 * @param value the number, positive
 * @param <T> the kind of thing identified
 */
public record Id<T>(long value) implements Comparable<Id<T>> {
  public Id {
    if (value <= 0) {
      throw new IllegalArgumentException("an id is positive, not " + value);
    }
  }

  @Override
  public int compareTo(Id<T> other) {
    return Long.compare(value, other.value);
  }
}
