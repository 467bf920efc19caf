package hullalmanac.core.life;

import java.util.function.DoubleUnaryOperator;

/**
 * ln ℓ(L) at the points of {@link LogLife}, gathered look by look. Nothing said is 0 everywhere.
 */
final class LogLikelihood {
  private final double[] log = new double[LogLife.POINTS];

  /** Adds the logarithm of a likelihood of ln L. */
  void add(DoubleUnaryOperator likelihood) {
    for (int i = 0; i < log.length; i++) {
      log[i] += Math.log(Math.max(likelihood.applyAsDouble(LogLife.at(i)), Double.MIN_NORMAL));
    }
  }

  /** Adds that the life is longer than a dose, sharply: the share of each cell above it. */
  void addSurvived(double dose) {
    double bound = Math.log(dose);
    for (int i = 0; i < log.length; i++) {
      double above = (LogLife.at(i) + LogLife.STEP / 2 - bound) / LogLife.STEP;
      boolean last = i == log.length - 1;
      double share = last && bound < LogLife.HIGHEST ? 1 : Math.max(0, Math.min(1, above));
      log[i] += Math.log(Math.max(share, Double.MIN_NORMAL));
    }
  }

  /** Adds the logarithm of (1 − h) times one likelihood and h times another. */
  void addMixture(double h, LogLikelihood one, LogLikelihood other) {
    for (int i = 0; i < log.length; i++) {
      log[i] += Math.log((1 - h) * Math.exp(one.log[i]) + h * Math.exp(other.log[i]));
    }
  }

  /** ln ℓ at a point. */
  double at(int point) {
    return log[point];
  }
}
