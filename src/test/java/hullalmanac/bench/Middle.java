package hullalmanac.bench;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * The median of measured values with an interval that holds whatever their distribution is: two of
 * the values themselves, as far in as they may be with 95 in 100 of the chances between them. J. D.
 * Gibbons and S. Chakraborti, Nonparametric Statistical Inference, "Confidence interval for a
 * population quantile".
 *
 * @param low lower end, in the unit of the values
 * @param median the middle value, or the mean of the two in the middle
 * @param high upper end
 * @param coverage chance that the interval holds the true median, at least 0.95
 */
public record Middle(double low, double median, double high, double coverage) {
  private static final double WANTED = 0.95;

  /**
   * The median of at least six values: of fewer, no two hold it with 95 chances in 100.
   *
   * @throws IllegalArgumentException for fewer
   */
  public static Middle of(double... values) {
    int n = values.length;
    BinomialDistribution below = BinomialDistribution.of(n, 0.5);
    int outside = 0;
    while (2 * below.cumulativeProbability(outside) <= 1 - WANTED) {
      outside++;
    }
    if (outside == 0) {
      throw new IllegalArgumentException("six values at least, not " + n);
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return new Middle(
        sorted[outside - 1],
        (sorted[(n - 1) / 2] + sorted[n / 2]) / 2,
        sorted[n - outside],
        1 - 2 * below.cumulativeProbability(outside - 1));
  }
}
