package hullalmanac.core.finish;

import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Where the gloss of a surface may stand: a mixture of Normals. Given ln q of a stage, gloss before
 * and after and the ceiling are linear in one another, so all stays Normal; ln q itself is summed
 * out over 23 points, 0.4 standard deviations apart. Parts whose means lie within 0.4 of a gloss
 * unit then become one with the same mean and variance, and what weighs less than a millionth is
 * left out. Chances are right to 0.002: held against four million points of another rule and
 * against draws (GlossSpreadTest).
 */
final class GlossSpread {
  private static final int POINTS = 23;
  private static final double STEP = 0.4;
  private static final double BIN = 0.4;
  private static final double[] Z = new double[POINTS];
  private static final double[] SHARE = new double[POINTS];

  static {
    double sum = 0;
    for (int j = 0; j < POINTS; j++) {
      Z[j] = STEP * (j - POINTS / 2);
      SHARE[j] = Math.exp(-Z[j] * Z[j] / 2);
      sum += SHARE[j];
    }
    for (int j = 0; j < POINTS; j++) {
      SHARE[j] /= sum;
    }
  }

  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
  private static final double WIDE = 12;
  private static final int MOST_STEPS = 200;
  private static final double CLOSE = 1e-9;
  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

  private final double[] mean;
  private final double[] sd;
  private final double[] weight;

  private GlossSpread(double[] mean, double[] sd, double[] weight) {
    this.mean = mean;
    this.sd = sd;
    this.weight = weight;
  }

  static GlossSpread of(Start start) {
    return new GlossSpread(
        new double[] {start.gloss()}, new double[] {start.sd()}, new double[] {1});
  }

  /** Where it may stand after passes of one stage. */
  GlossSpread after(GlossLaw law, Passes passes) {
    Spread spread = law.spread();
    double lnQSd = Math.sqrt(spread.lnQ());
    double ceilingVariance =
        Math.max(0, spread.ceiling() - spread.both() * spread.both() / spread.lnQ());
    Parts parts = new Parts();
    for (int j = 0; j < POINTS; j++) {
      double left = passes.left(law.lnQ() + lnQSd * Z[j]);
      double ceiling = law.ceiling() + spread.both() / lnQSd * Z[j];
      double own = ceilingVariance * (1 - left) * (1 - left);
      for (int i = 0; i < mean.length; i++) {
        parts.add(
            weight[i] * SHARE[j],
            ceiling * (1 - left) + left * mean[i],
            own + left * left * sd[i] * sd[i]);
      }
    }
    return parts.together();
  }

  /** Parts of a mixture, gathered by their means; what lies outside is gathered at the ends. */
  private static final class Parts {
    private static final double LOWEST = -100;
    private static final int BINS = 750;
    private static final double LEAST = 1e-6;

    private final double[] weights = new double[BINS];
    private final double[] sums = new double[BINS];
    private final double[] squares = new double[BINS];

    void add(double weight, double mean, double variance) {
      int bin = (int) Math.max(0, Math.min(BINS - 1, (mean - LOWEST) / BIN));
      weights[bin] += weight;
      sums[bin] += weight * mean;
      squares[bin] += weight * (mean * mean + variance);
    }

    GlossSpread together() {
      int[] filled = IntStream.range(0, BINS).filter(b -> weights[b] > LEAST).toArray();
      double kept = IntStream.of(filled).mapToDouble(b -> weights[b]).sum();
      double[] means = new double[filled.length];
      double[] sds = new double[filled.length];
      double[] shares = new double[filled.length];
      for (int k = 0; k < filled.length; k++) {
        double weight = weights[filled[k]];
        shares[k] = weight / kept;
        means[k] = sums[filled[k]] / weight;
        sds[k] = Math.sqrt(Math.max(0, squares[filled[k]] / weight - means[k] * means[k]));
      }
      return new GlossSpread(means, sds, shares);
    }
  }

  /** Chance that the gloss is at least so much. */
  double atLeast(double gloss) {
    double sum = 0;
    for (int i = 0; i < mean.length; i++) {
      sum += weight[i] * above(gloss, mean[i], sd[i]);
    }
    return Math.max(0, Math.min(1, sum));
  }

  private static double above(double gloss, double mean, double sd) {
    if (sd == 0) {
      return mean >= gloss ? 1 : 0;
    }
    return STANDARD.survivalProbability((gloss - mean) / sd);
  }

  /**
   * The gloss below which it stands with a chance: Newton's steps, halving where they lead outside.
   *
   * @param chance over 0 and under 1
   */
  double quantile(double chance) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < mean.length; i++) {
      low = Math.min(low, mean[i] - WIDE * sd[i]);
      high = Math.max(high, mean[i] + WIDE * sd[i]);
    }
    double at = (low + high) / 2;
    for (int i = 0; i < MOST_STEPS && high - low > CLOSE; i++) {
      double over = 1 - atLeast(at) - chance;
      if (over < 0) {
        low = at;
      } else {
        high = at;
      }
      double next = at - over / density(at);
      boolean inside = next > low && next < high;
      double to = inside ? next : (low + high) / 2;
      if (Math.abs(to - at) < CLOSE) {
        return to;
      }
      at = to;
    }
    return at;
  }

  private double density(double gloss) {
    double sum = 0;
    for (int i = 0; i < mean.length; i++) {
      if (sd[i] > 0) {
        double z = (gloss - mean[i]) / sd[i];
        sum += weight[i] * Math.exp(-z * z / 2) / (sd[i] * ROOT_TWO_PI);
      }
    }
    return sum;
  }
}
