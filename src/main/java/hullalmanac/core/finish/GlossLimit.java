package hullalmanac.core.finish;

import java.util.Optional;

/**
 * The gloss that a surface can reach at all, until its own best or a test spot says otherwise.
 *
 * @param gloss at 60°, gloss units
 */
public record GlossLimit(double gloss, Why why) {
  private static final int YOUNG_UNDER = 5;
  private static final int MIDDLING_UNTIL = 15;

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
   * older.
   *
   * @param age of the finish in years; absent counts as old
   */
  public static GlossLimit usual(Film film, Optional<Integer> age) {
    if (film != Film.GELCOAT) {
      return new GlossLimit(90, Why.PAINT);
    }
    if (age.isEmpty()) {
      return new GlossLimit(83, Why.AGE_UNKNOWN);
    }
    double gloss = age.get() < YOUNG_UNDER ? 90 : age.get() <= MIDDLING_UNTIL ? 87 : 83;
    return new GlossLimit(gloss, Why.AGE);
  }

  /** The same once more was seen: a best below the limit says nothing of it. */
  public GlossLimit seen(double best, Why why) {
    return best > gloss ? new GlossLimit(best, why) : this;
  }
}
