package hullalmanac.core.life.fit;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A law of lives as a location-scale law of their logarithm: ln T = μ + σ W, with W standard normal
 * (log-normal lives) or of the smallest extreme value (Weibull lives: shape 1/σ, scale exp μ).
 *
 * <p>References: Meeker and Escobar, Statistical Methods for Reliability Data (1998), chapter 4.
 */
public enum LifeLaw {
  LOGNORMAL {
    @Override
    double logDensity(double w) {
      return -0.5 * w * w - HALF_LOG_TWO_PI;
    }

    @Override
    double slope(double w) {
      return -w;
    }

    @Override
    double bend(double w) {
      return -1;
    }

    @Override
    double below(double w) {
      return NORMAL.cumulativeProbability(w);
    }

    @Override
    double above(double w) {
      return NORMAL.survivalProbability(w);
    }

    @Override
    double quantile(double p) {
      return NORMAL.inverseCumulativeProbability(p);
    }
  },
  WEIBULL {
    @Override
    double logDensity(double w) {
      return w - Math.exp(w);
    }

    @Override
    double slope(double w) {
      return 1 - Math.exp(w);
    }

    @Override
    double bend(double w) {
      return -Math.exp(w);
    }

    @Override
    double below(double w) {
      return -Math.expm1(-Math.exp(w));
    }

    @Override
    double above(double w) {
      return Math.exp(-Math.exp(w));
    }

    @Override
    double quantile(double p) {
      return Math.log(-Math.log1p(-p));
    }
  };

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final double HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

  /** ln of the density of W. */
  abstract double logDensity(double w);

  /** First derivative of {@link #logDensity}. */
  abstract double slope(double w);

  /** Second derivative of {@link #logDensity}. */
  abstract double bend(double w);

  /** P(W ≤ w). */
  abstract double below(double w);

  /** P(W &gt; w). */
  abstract double above(double w);

  /** The w with P(W ≤ w) = p, 0 &lt; p &lt; 1. */
  abstract double quantile(double p);

  /** Density of W; 0 at either infinity. */
  double density(double w) {
    return Double.isInfinite(w) ? 0 : Math.exp(logDensity(w));
  }
}
