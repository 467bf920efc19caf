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

  private static final double TAILS = 7;
  private static final double COARSE = 0.35;

  private LogLife() {}

  /** ln L of a point. */
  static double at(int point) {
    return LOWEST + point * STEP;
  }

  /** Share of each cell that lies above a dose; what the last cell stands for has no end. */
  static double[] above(double dose) {
    double bound = Math.log(dose);
    double[] shares = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      double above = (at(i) + STEP / 2 - bound) / STEP;
      boolean last = i == POINTS - 1;
      shares[i] = last && bound < HIGHEST ? 1 : Math.max(0, Math.min(1, above));
    }
    return shares;
  }

  /**
   * Chances of Normal(mean, sd) over the cells within seven standard deviations of the mean, the
   * tails in the outermost of them.
   */
  static final class Row {
    private final int from;
    private final double[] chances;

    private Row(int from, double[] chances) {
      this.from = from;
      this.chances = chances;
    }

    /** Σ chance × value over the cells, in four sums side by side that need not wait in line. */
    double times(double[] values) {
      double a = 0;
      double b = 0;
      double c = 0;
      double d = 0;
      int i = 0;
      for (; i + 3 < chances.length; i += 4) {
        a += chances[i] * values[from + i];
        b += chances[i + 1] * values[from + i + 1];
        c += chances[i + 2] * values[from + i + 2];
        d += chances[i + 3] * values[from + i + 3];
      }
      for (; i < chances.length; i++) {
        a += chances[i] * values[from + i];
      }
      return a + b + c + d;
    }

    /** Adds {@code weight} times the chances. */
    void addTo(double[] sums, double weight) {
      for (int i = 0; i < chances.length; i++) {
        sums[from + i] += weight * chances[i];
      }
    }
  }

  /**
   * Chances of a cell by the midpoint with its first two corrections: with a = step/σ and φ the
   * normal density,
   *
   * <pre>
   *   Φ(z + a/2) − Φ(z − a/2) = a φ(z) [1 + a² (z² − 1)/24 + a⁴ (z⁴ − 6z² + 3)/1920] + O(a⁷)
   * </pre>
   *
   * φ itself by its recurrence from cell to cell, outward from the mean: for the widest step in
   * use, a = 0.35, each chance is right to 1e-8.
   */
  static Row normal(double mean, double sd) {
    int from = within((int) Math.floor((mean - TAILS * sd - LOWEST) / STEP));
    int to = within((int) Math.ceil((mean + TAILS * sd - LOWEST) / STEP));
    double a = STEP / sd;
    if (a > COARSE || from == to) {
      return byDistribution(mean, sd, from, to);
    }
    double[] chances = new double[to - from + 1];
    int middle = Math.max(from, Math.min(to, (int) Math.round((mean - LOWEST) / STEP)));
    double z = (at(middle) - mean) / sd;
    double density = Math.exp(-0.5 * z * z) * a / Math.sqrt(2 * Math.PI);
    fill(chances, middle - from, 1, new double[] {z, density, a});
    fill(chances, middle - from, -1, new double[] {-z, density, a});
    NormalDistribution normal = NormalDistribution.of(mean, sd);
    chances[0] = normal.cumulativeProbability(at(from) + STEP / 2);
    chances[to - from] = normal.survivalProbability(at(to) - STEP / 2);
    return new Row(from, chances);
  }

  /** Fills one way from the middle; {@code start} holds z, a φ(z) and a there. */
  private static void fill(double[] chances, int middle, int way, double[] start) {
    double z = start[0];
    double density = start[1];
    double a = start[2];
    double aa = a * a;
    double ratio = Math.exp(-a * z - aa / 2);
    double ratioOfRatios = Math.exp(-aa);
    for (int i = middle; i >= 0 && i < chances.length; i += way) {
      double zz = z * z;
      chances[i] = density * (1 + aa * (zz - 1) / 24 + aa * aa * (zz * zz - 6 * zz + 3) / 1920);
      density *= ratio;
      ratio *= ratioOfRatios;
      z += a;
    }
  }

  private static Row byDistribution(double mean, double sd, int from, int to) {
    NormalDistribution normal = NormalDistribution.of(mean, sd);
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
