package hullalmanac.core.life.fit;

/** What came of a fit: a law, or why there is none. */
public sealed interface FitOutcome {
  /**
   * There is no maximum of the likelihood.
   *
   * @param reason why, to stand after "no fit:"
   */
  record NoFit(String reason) implements FitOutcome {}

  /**
   * The law of greatest likelihood.
   *
   * @param mu location of ln T
   * @param sigma scale of ln T
   * @param logLikelihood of the lives in their own unit
   * @param covariance of the estimates
   */
  record Fitted(LifeLaw law, double mu, double sigma, double logLikelihood, Covariance covariance)
      implements FitOutcome {
    /** The time by which a share p of lives has ended, 0 &lt; p &lt; 1. */
    public double quantile(double p) {
      return Math.exp(mu + sigma * law.quantile(p));
    }

    /** The time by which half of them have ended. */
    public double median() {
      return quantile(0.5);
    }

    /** Share of lives that have not ended at a time over 0. */
    public double surviving(double time) {
      return law.above((Math.log(time) - mu) / sigma);
    }

    /** Standard error of the median, by the first term of its series in the estimates. */
    public double medianError() {
      double byTau = law.quantile(0.5) * sigma;
      double variance =
          covariance.mu()
              + 2 * byTau * covariance.muAndLogSigma()
              + byTau * byTau * covariance.logSigma();
      return median() * Math.sqrt(variance);
    }

    /** Standard error of μ. */
    public double muError() {
      return Math.sqrt(covariance.mu());
    }

    /** Standard error of σ, by the first term of its series in ln σ. */
    public double sigmaError() {
      return sigma * Math.sqrt(covariance.logSigma());
    }
  }

  /**
   * Variances and covariance of the estimates, from the observed information.
   *
   * @param mu variance of μ
   * @param muAndLogSigma covariance of μ and ln σ
   * @param logSigma variance of ln σ
   */
  record Covariance(double mu, double muAndLogSigma, double logSigma) {}
}
