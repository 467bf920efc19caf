package hullalmanac.core.life;

/** Chances of a life over the cells of {@link LogLife}: not negative, adding up to 1. */
final class LifeChances {
  private static final double NEXT_TO_NOTHING = 1e-12;

  private final double[] chances;

  private LifeChances(double[] chances) {
    this.chances = chances;
  }

  /**
   * Scales values over the cells so that they add up to 1.
   *
   * @throws IllegalStateException when all are 0
   */
  static LifeChances of(double[] values) {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    if (!(sum > 0)) {
      throw new IllegalStateException("evidence leaves no possible life");
    }
    double[] chances = new double[LogLife.POINTS];
    for (int i = 0; i < LogLife.POINTS; i++) {
      chances[i] = values[i] / sum;
    }
    return new LifeChances(chances);
  }

  /** Σ chance × ℓ, relative to the evidence's scale, for lives so many cells longer. */
  double expected(LogLikelihood evidence, int cells) {
    double sum = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      if (chances[i] > NEXT_TO_NOTHING) {
        sum += chances[i] * evidence.relative(within(i + cells));
      }
    }
    return sum;
  }

  /** Adds {@code weight} times the chances of lives so many cells longer. */
  void addTo(double[] sums, double weight, int cells) {
    for (int i = 0; i < LogLife.POINTS; i++) {
      sums[within(i + cells)] += weight * chances[i];
    }
  }

  private static int within(int point) {
    return Math.max(0, Math.min(LogLife.POINTS - 1, point));
  }

  /** Chance of a cell. */
  double at(int cell) {
    return chances[cell];
  }

  /** These chances after evidence: each times ℓ(L). */
  LifeChances times(LogLikelihood evidence) {
    double[] product = new double[LogLife.POINTS];
    for (int i = 0; i < LogLife.POINTS; i++) {
      product[i] = chances[i] * evidence.relative(i);
    }
    return of(product);
  }

  /** P(L ≤ dose), straight within a cell in ln L. */
  double lapsed(double dose) {
    if (dose <= 0) {
      return 0;
    }
    double x = (Math.log(dose) - LogLife.LOWEST) / LogLife.STEP + 0.5;
    if (x <= 0) {
      return 0;
    }
    if (x >= LogLife.POINTS) {
      return 1;
    }
    int whole = (int) x;
    double sum = 0;
    for (int i = 0; i < whole; i++) {
      sum += chances[i];
    }
    return Math.min(1, sum + (x - whole) * chances[whole]);
  }

  /**
   * The dose by which a share p of such coats, 0 &lt; p &lt; 1, has lapsed; the inverse of {@link
   * #lapsed}.
   */
  double quantile(double p) {
    double sum = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      if (sum + chances[i] >= p) {
        double inCell = (p - sum) / chances[i];
        return Math.exp(LogLife.at(i) + (inCell - 0.5) * LogLife.STEP);
      }
      sum += chances[i];
    }
    return Math.exp(LogLife.HIGHEST + LogLife.STEP / 2);
  }
}
