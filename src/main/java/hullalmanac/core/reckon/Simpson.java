package hullalmanac.core.reckon;

import java.util.List;

/**
 * Area under a curve from ordinates at equal distances, by Simpson's first rule; exact for curves
 * up to the third degree.
 *
 * <pre>
 *   A = h/3 (y0 + 4 y1 + 2 y2 + 4 y3 + … + 4 y(n−1) + yn)
 * </pre>
 *
 * <p>References: C. B. Barrass, D. R. Derrett, Ship Stability for Masters and Mates, chapter 10.
 */
public final class Simpson {
  /** How it is reckoned. */
  public static final Formula FORMULA =
      new Formula(
          "A = h / 3 · (y0 + 4·y1 + 2·y2 + … + 4·y(n−1) + yn), for an odd number of girths y at stations h"
              + " apart; twice that where girths are of one side.",
          "Simpson's first rule, as in Barrass and Derrett, Ship Stability for Masters and Mates,"
              + " chapter 10.");

  private Simpson() {}

  /**
   * The area.
   *
   * @param spacing distance from ordinate to ordinate, over 0
   * @param ordinates an odd number, at least 3, none under 0
   */
  public static double area(double spacing, List<Double> ordinates) {
    if (ordinates.size() < 3 || ordinates.size() % 2 == 0) {
      throw new IllegalArgumentException(
          "Simpson's first rule needs an odd number of stations, at least 3, not "
              + ordinates.size());
    }
    if (!(spacing > 0)) {
      throw new IllegalArgumentException("stations are over 0 apart, not " + spacing);
    }
    double sum = 0;
    for (int i = 0; i < ordinates.size(); i++) {
      double y = ordinates.get(i);
      if (!(y >= 0)) {
        throw new IllegalArgumentException("a girth is not under 0, as " + y);
      }
      boolean end = i == 0 || i == ordinates.size() - 1;
      sum += y * (end ? 1 : i % 2 == 1 ? 4 : 2);
    }
    return spacing / 3 * sum;
  }
}
