package hullalmanac.core.life;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * ln ℓ(L) at the points of {@link LogLife}, gathered look by look. Nothing said is 0 everywhere.
 *
 * <p>Kept as ℓ relative to a scale, so that adding a look is a product and not a logarithm at each
 * point. What is over 1e300 times less likely than the likeliest life is held at that.
 */
final class LogLikelihood {
  private static final double LEAST = 1e-300;
  private static final double SCALE_BELOW = 1e-100;

  private final double[] relative = new double[LogLife.POINTS];
  private double logScale;

  LogLikelihood() {
    Arrays.fill(relative, 1);
  }

  /** Adds the logarithm of a likelihood of ln L. */
  void add(DoubleUnaryOperator likelihood) {
    double[] values = new double[LogLife.POINTS];
    for (int i = 0; i < LogLife.POINTS; i++) {
      values[i] = likelihood.applyAsDouble(LogLife.at(i));
    }
    add(values);
  }

  /** Adds the logarithm of a likelihood given at the points. */
  void add(double[] likelihood) {
    double most = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      relative[i] = Math.max(relative[i] * likelihood[i], LEAST);
      most = Math.max(most, relative[i]);
    }
    if (most < SCALE_BELOW) {
      scale(most);
    }
  }

  /** Adds the logarithm of a likelihood that is the same for every life. */
  void add(double likelihood) {
    logScale += Math.log(likelihood);
  }

  /** Adds that the life is longer than a dose, sharply: the share of each cell above it. */
  void addSurvived(double dose) {
    add(LogLife.above(dose));
  }

  /** Adds the logarithm of (1 − h) times one likelihood and h times another. */
  void addMixture(double h, LogLikelihood one, LogLikelihood other) {
    double scale = Math.max(one.logScale, other.logScale);
    double ofOne = (1 - h) * Math.exp(one.logScale - scale);
    double ofOther = h * Math.exp(other.logScale - scale);
    double[] mixed = new double[LogLife.POINTS];
    for (int i = 0; i < LogLife.POINTS; i++) {
      mixed[i] = ofOne * one.relative[i] + ofOther * other.relative[i];
    }
    add(mixed);
    logScale += scale;
  }

  private void scale(double most) {
    for (int i = 0; i < LogLife.POINTS; i++) {
      relative[i] = Math.max(relative[i] / most, LEAST);
    }
    logScale += Math.log(most);
  }

  /** ln ℓ at a point. */
  double at(int point) {
    return Math.log(relative[point]) + logScale;
  }

  /** ℓ at a point relative to {@link #logScale}. */
  double relative(int point) {
    return relative[point];
  }

  /** {@link #relative(int)} at every point. */
  double[] relative() {
    return relative.clone();
  }

  /** ln of what {@link #relative} is relative to. */
  double logScale() {
    return logScale;
  }

  /** Whether it tells any two lives apart. */
  boolean saysAnything() {
    for (double value : relative) {
      if (value != relative[0]) {
        return true;
      }
    }
    return false;
  }
}
