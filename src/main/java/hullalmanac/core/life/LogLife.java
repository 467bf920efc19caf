package hullalmanac.core.life;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The fixed grid on which ln L lives: 512 points from ln 1 to ln 30000, L in doses of the exposure
 * clock. Each point stands for the cell halfway to its neighbours; the end cells take the tails.
 */
final class LogLife {
  static final int POINTS = 512;
  static final double LOWEST = 0;
  static final double HIGHEST = Math.log(30_000);
  static final double STEP = (HIGHEST - LOWEST) / (POINTS - 1);

  private LogLife() {}

  /** ln L of a point. */
  static double at(int point) {
    return LOWEST + point * STEP;
  }

  /**
   * Chances of Normal(mean, sd) over the cells within nine standard deviations of the mean, the
   * tails in the outermost of them.
   */
  static final class Row {
    private final int from;
    private final double[] chances;

    private Row(int from, double[] chances) {
      this.from = from;
      this.chances = chances;
    }

    /** Σ chance × value over the cells. */
    double times(double[] values) {
      double sum = 0;
      for (int i = 0; i < chances.length; i++) {
        sum += chances[i] * values[from + i];
      }
      return sum;
    }

    /** Adds {@code weight} times the chances. */
    void addTo(double[] sums, double weight) {
      for (int i = 0; i < chances.length; i++) {
        sums[from + i] += weight * chances[i];
      }
    }
  }

  static Row normal(double mean, double sd) {
    NormalDistribution normal = NormalDistribution.of(mean, sd);
    int from = within((int) Math.floor((mean - 9 * sd - LOWEST) / STEP));
    int to = within((int) Math.ceil((mean + 9 * sd - LOWEST) / STEP));
    double[] chances = new double[to - from + 1];
    double below = 0;
    for (int i = from; i < to; i++) {
      double upTo = normal.cumulativeProbability(at(i) + STEP / 2);
      chances[i - from] = upTo - below;
      below = upTo;
    }
    chances[to - from] = 1 - below;
    return new Row(from, chances);
  }

  private static int within(int point) {
    return Math.max(0, Math.min(POINTS - 1, point));
  }
}
