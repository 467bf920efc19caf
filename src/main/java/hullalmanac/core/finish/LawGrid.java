package hullalmanac.core.finish;

import java.util.List;

/**
 * What pairs of readings say of a stage's ceiling C and of ln q, summed up over a grid:
 *
 * <pre>
 *   G_after ~ Normal(min(C, limit) · (1 − r) + r · G_before, v),    r by {@link Passes}
 *   v = s_after² + (r s_before)² + what surfaces differ by
 * </pre>
 *
 * v is that of the law before. A first grid reaches ten standard deviations of the law before
 * either way, a second eight of what the first found, so that it is fine enough however many pairs
 * there were.
 */
final class LawGrid {
  private static final int POINTS = 161;
  private static final double FIRST_REACH = 10;
  private static final double SECOND_REACH = 8;

  /** Narrowest second grid, as a share of the first: the first cannot see less. */
  private static final double NARROWEST = 0.01;

  private final GlossLaw before;
  private final Spread information;
  private final List<Pair> pairs;
  private final double[] weight;

  LawGrid(GlossLaw before, List<Pair> pairs, Spread between) {
    this.before = before;
    this.information = before.spread().inverse();
    this.pairs = pairs;
    this.weight = pairs.stream().mapToDouble(p -> p.weight() / variance(p, between)).toArray();
  }

  /** The Normal of the same means and covariance. */
  GlossLaw law() {
    GlossLaw rough = on(before, FIRST_REACH);
    Spread least = scaled(before.spread(), NARROWEST * NARROWEST);
    Spread wide =
        new Spread(
            Math.max(rough.spread().ceiling(), least.ceiling()),
            Math.max(rough.spread().lnQ(), least.lnQ()),
            0);
    return on(new GlossLaw(rough.ceiling(), rough.lnQ(), wide), SECOND_REACH);
  }

  private static Spread scaled(Spread s, double by) {
    return new Spread(s.ceiling() * by, s.lnQ() * by, s.both() * by);
  }

  private GlossLaw on(GlossLaw middle, double reach) {
    double stepC = 2 * reach * Math.sqrt(middle.spread().ceiling()) / (POINTS - 1);
    double stepX = 2 * reach * Math.sqrt(middle.spread().lnQ()) / (POINTS - 1);
    double[][] log = new double[POINTS][POINTS];
    double most = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < POINTS; j++) {
      double x = middle.lnQ() + (j - POINTS / 2) * stepX;
      double[] left = pairs.stream().mapToDouble(p -> passes(p).left(x)).toArray();
      for (int i = 0; i < POINTS; i++) {
        log[i][j] = log(middle.ceiling() + (i - POINTS / 2) * stepC, x, left);
        most = Math.max(most, log[i][j]);
      }
    }
    Sums sums = new Sums();
    for (int i = 0; i < POINTS; i++) {
      for (int j = 0; j < POINTS; j++) {
        sums.add(Math.exp(log[i][j] - most), (i - POINTS / 2) * stepC, (j - POINTS / 2) * stepX);
      }
    }
    return sums.law(middle);
  }

  /** ln of prior times likelihood, up to a constant. */
  private double log(double ceiling, double lnQ, double[] left) {
    double misfit = information.along(ceiling - before.ceiling(), lnQ - before.lnQ());
    for (int k = 0; k < left.length; k++) {
      Pair p = pairs.get(k);
      double expected = Math.min(ceiling, p.limit()) * (1 - left[k]) + left[k] * p.before().gloss();
      double error = p.after().gloss() - expected;
      misfit += weight[k] * error * error;
    }
    return -misfit / 2;
  }

  private static Passes passes(Pair p) {
    return new Passes(0, p.passes());
  }

  /** Variance of a reading after the work, given the law before. */
  private double variance(Pair p, Spread between) {
    double left = passes(p).left(before.lnQ());
    double byLnQ =
        (p.before().gloss() - Math.min(before.ceiling(), p.limit()))
            * passes(p).slope(before.lnQ());
    return p.after().sd() * p.after().sd()
        + left * left * p.before().sd() * p.before().sd()
        + between.along(1 - left, byLnQ);
  }

  /** Moments around the middle of a grid. */
  private static final class Sums {
    private double weight;
    private double c;
    private double x;
    private double cc;
    private double xx;
    private double cx;

    void add(double w, double byCeiling, double byLnQ) {
      weight += w;
      c += w * byCeiling;
      x += w * byLnQ;
      cc += w * byCeiling * byCeiling;
      xx += w * byLnQ * byLnQ;
      cx += w * byCeiling * byLnQ;
    }

    GlossLaw law(GlossLaw middle) {
      double meanC = c / weight;
      double meanX = x / weight;
      return new GlossLaw(
          middle.ceiling() + meanC,
          middle.lnQ() + meanX,
          new Spread(
              cc / weight - meanC * meanC,
              xx / weight - meanX * meanX,
              cx / weight - meanC * meanX));
    }
  }
}
