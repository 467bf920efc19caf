package hullalmanac.core.finish;

/**
 * Gloss before and after passes of one stage on one surface, with nothing else between.
 *
 * @param passes at least 1
 * @param limit the most that the surface can reach, gloss units; infinite where the stage's own law
 *     is that of this surface
 * @param weight over 0 and at most 1: pairs of one visit share one
 */
record Pair(Reading before, Reading after, int passes, double limit, double weight) {
  /** A gloss with its standard deviation as a measure of the surface, gloss units. */
  record Reading(double gloss, double sd) {
    Reading {
      if (!(gloss >= 0 && sd > 0)) {
        throw new IllegalArgumentException("no reading: " + gloss + " ± " + sd);
      }
    }
  }

  Pair {
    if (passes < 1 || !(weight > 0 && weight <= 1)) {
      throw new IllegalArgumentException("no pair: " + passes + " passes, weight " + weight);
    }
  }

  Pair weighing(double share) {
    return new Pair(before, after, passes, limit, share);
  }
}
