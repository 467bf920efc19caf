package hullalmanac.core.life.fit;

/**
 * One life, as far as it is known: it ended after {@code lower} and not after {@code upper}.
 *
 * @param lower 0 or more
 * @param upper equal to {@code lower} when the end was seen exactly; infinite when it was not seen
 *     (right-censored)
 */
public record Lifetime(double lower, double upper) {
  public Lifetime {
    if (!(lower >= 0) || Double.isInfinite(lower)) {
      throw new IllegalArgumentException("a life begins to count at 0 or more, not at " + lower);
    }
    if (!(upper >= lower)) {
      throw new IllegalArgumentException("a life cannot end at " + upper + ", before " + lower);
    }
    if (upper == 0) {
      throw new IllegalArgumentException("a life is longer than 0");
    }
    if (lower == 0 && Double.isInfinite(upper)) {
      throw new IllegalArgumentException("a life of which nothing is known says nothing");
    }
  }

  /** A life whose end was seen exactly. */
  public static Lifetime exactly(double time) {
    return new Lifetime(time, time);
  }

  /** A life that had not ended at a time. */
  public static Lifetime over(double time) {
    return new Lifetime(time, Double.POSITIVE_INFINITY);
  }

  /** Whether the end was seen exactly. */
  public boolean exact() {
    return lower == upper;
  }

  /** Whether the end was not seen. */
  public boolean censored() {
    return Double.isInfinite(upper);
  }
}
