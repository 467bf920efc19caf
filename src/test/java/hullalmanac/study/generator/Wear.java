package hullalmanac.study.generator;

/** Running sums of what wears the coats of one surface, as far as the plan of washes reaches. */
final class Wear {
  static final int NEVER = Integer.MAX_VALUE;

  private final Span span;
  private final double[] weather;
  private final int[] washes;
  private final double perWash;

  /**
   * The wear of a surface.
   *
   * @param weather wear from the first day of the span to the end of each day, without washes
   * @param washes number of regular washes from the first day of the span to the end of each day
   */
  Wear(Span span, double[] weather, int[] washes, double perWash) {
    this.span = span;
    this.weather = weather;
    this.washes = washes;
    this.perWash = perWash;
  }

  /**
   * Wear from the end of one day to the end of another.
   *
   * @param extraWash day of a wash beside the regular ones, or {@link #NEVER}
   */
  double between(int after, int until, int extraWash) {
    int a = after - span.first();
    int b = until - span.first();
    int extra = extraWash > after && extraWash <= until ? 1 : 0;
    return weather[b] - weather[a] + perWash * (washes[b] - washes[a] + extra);
  }

  /** The first day by whose end so much has gathered, or {@link #NEVER} within the span. */
  int reaches(double dose, int after, int extraWash) {
    int low = after + 1;
    int high = span.last() + 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (between(after, middle, extraWash) >= dose) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low > span.last() ? NEVER : low;
  }
}
