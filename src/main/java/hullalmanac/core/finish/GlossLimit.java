package hullalmanac.core.finish;

import java.util.Optional;

/**
 * The gloss that a surface can reach at all, until its own best or a test spot says otherwise.
 *
 * @param gloss at 60°, gloss units
 */
public record GlossLimit(double gloss, Why why) {
  private static final int OLD = 100;
  private static final double OF_PAINT = 90;

  /** What it rests on. */
  public enum Why {
    AGE("by its age, common practice"),
    AGE_UNKNOWN("its age is not known, so as an old one; common practice"),
    PAINT("of paint, common practice"),
    OWN_BEST("its own best on record"),
    TEST_SPOT("seen on the test spot");

    private final String words;

    Why(String words) {
      this.words = words;
    }

    /** What it rests on, in words. */
    public String words() {
      return words;
    }
  }

  public GlossLimit {
    if (!(gloss > 0)) {
      throw new IllegalArgumentException("a surface can reach some gloss, not " + gloss);
    }
  }

  /**
   * What is usual (common practice, no source): urethane 90; gelcoat 90 under 5 years, 87 to 15, 83
   * older, unless the business has set these.
   *
   * @param age of the finish in years; absent counts as old
   */
  static GlossLimit usual(FinishPractice practice, Film film, Optional<Integer> age) {
    if (film != Film.GELCOAT) {
      return new GlossLimit(OF_PAINT, Why.PAINT);
    }
    return age.map(a -> new GlossLimit(practice.limit(a), Why.AGE))
        .orElseGet(() -> new GlossLimit(practice.limit(OLD), Why.AGE_UNKNOWN));
  }

  /** The same once more was seen: a best below the limit says nothing of it. */
  public GlossLimit seen(double best, Why why) {
    return best > gloss ? new GlossLimit(best, why) : this;
  }
}
