package hullalmanac.core.finish;

import java.util.List;

/**
 * Simpson's first rule: the area under evenly spaced ordinates,
 *
 * <pre>h/3 · (y0 + 4 y1 + 2 y2 + … + 4 y(n−1) + yn)</pre>
 *
 * exact where the curve is a cubic. Source: Barrass and Derrett, Ship Stability for Masters and
 * Mates, chapter 10.
 */
public final class Simpson {
  private Simpson() {}

  /**
   * The area under ordinates.
   *
   * @param interval distance between them, over 0
   * @param ordinates an odd number of them, at least 3, none negative, in the interval's unit
   * @return in the square of that unit
   * @throws IllegalArgumentException with a sentence for people
   */
  public static double area(double interval, List<Double> ordinates) {
    if (!(interval > 0 && Double.isFinite(interval))) {
      throw new IllegalArgumentException("stations are some way apart, not " + interval);
    }
    int n = ordinates.size();
    if (n < 3 || n % 2 == 0) {
      throw new IllegalArgumentException(
          "Simpson's first rule takes an odd number of stations, at least 3, not " + n);
    }
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double y = ordinates.get(i);
      if (!(y >= 0 && Double.isFinite(y))) {
        throw new IllegalArgumentException("a girth is not negative: " + y);
      }
      sum += y * (i == 0 || i == n - 1 ? 1 : i % 2 == 1 ? 4 : 2);
    }
    return interval / 3 * sum;
  }
}
