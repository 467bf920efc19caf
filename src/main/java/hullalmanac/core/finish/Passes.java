package hullalmanac.core.finish;

/**
 * What passes of one stage leave of the way to its ceiling. A pass leaves q of it, or closes 1 − q;
 * a second pass closes half of what the first would, a third a quarter:
 *
 * <pre>r = Π (1 − (1 − q) / 2^k),   k = first, first + 1, …</pre>
 *
 * @param first 0 when they are the first passes of the stage, 1 after one
 * @param passes how many, at least 1
 */
record Passes(int first, int passes) {
  /** The share r that is left, over 0; over 1 where q is: such a stage leads away a little. */
  double left(double lnQ) {
    double q = Math.exp(lnQ);
    double left = 1;
    for (int k = first; k < first + passes; k++) {
      double share = 1.0 / (1 << k);
      left *= (1 - share) + q * share;
    }
    return left;
  }

  /** The slope of that share by ln q. */
  double slope(double lnQ) {
    double q = Math.exp(lnQ);
    double sum = 0;
    for (int k = first; k < first + passes; k++) {
      double share = 1.0 / (1 << k);
      sum += share / ((1 - share) + q * share);
    }
    return left(lnQ) * sum * q;
  }
}
