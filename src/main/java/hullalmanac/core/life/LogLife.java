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
   * Adds {@code weight} times the chances of Normal(mean, sd) over the cells to {@code chances}.
   */
  static void addNormal(double[] chances, double mean, double sd, double weight) {
    NormalDistribution normal = NormalDistribution.of(mean, sd);
    double below = 0;
    int from = Math.max(0, (int) Math.floor((mean - 9 * sd - LOWEST) / STEP));
    int to = Math.min(POINTS - 1, (int) Math.ceil((mean + 9 * sd - LOWEST) / STEP));
    for (int i = from; i < to; i++) {
      double upTo = normal.cumulativeProbability(at(i) + STEP / 2);
      chances[i] += weight * (upTo - below);
      below = upTo;
    }
    if (to >= 0) {
      chances[Math.max(0, to)] += weight * (1 - below);
    }
  }
}
