package hullalmanac.core.life.fit;

import java.util.List;

/**
 * ln of the likelihood of lives at one (μ, τ = ln σ), with its first and second derivatives. With w
 * = (ln t − μ)/σ, an exact life gives ln f(w) − τ − ln t, any other ln(F(w_upper) − F(w_lower)).
 */
record LogLikelihoodSlopes(
    double value, double byMu, double byTau, double byMuMu, double byMuTau, double byTauTau) {
  static LogLikelihoodSlopes of(LifeLaw law, List<Lifetime> lives, double mu, double tau) {
    LogLikelihoodSlopes sum = new LogLikelihoodSlopes(0, 0, 0, 0, 0, 0);
    for (Lifetime life : lives) {
      sum =
          sum.plus(life.exact() ? exact(law, life.lower(), mu, tau) : between(law, life, mu, tau));
    }
    return sum;
  }

  private static LogLikelihoodSlopes exact(LifeLaw law, double time, double mu, double tau) {
    double sigma = Math.exp(tau);
    double w = (Math.log(time) - mu) / sigma;
    double slope = law.slope(w);
    double bend = law.bend(w);
    return new LogLikelihoodSlopes(
        law.logDensity(w) - tau - Math.log(time),
        -slope / sigma,
        -w * slope - 1,
        bend / (sigma * sigma),
        (slope + w * bend) / sigma,
        w * slope + w * w * bend);
  }

  private static LogLikelihoodSlopes between(LifeLaw law, Lifetime life, double mu, double tau) {
    double sigma = Math.exp(tau);
    End lower = End.at(law, (Math.log(life.lower()) - mu) / sigma);
    End upper = End.at(law, (Math.log(life.upper()) - mu) / sigma);
    double p =
        lower.w() > 0
            ? law.above(lower.w()) - law.above(upper.w())
            : law.below(upper.w()) - law.below(lower.w());
    double mu1 = -(upper.f() - lower.f()) / sigma;
    double tau1 = -(upper.wf() - lower.wf());
    double mu2 = (upper.df() - lower.df()) / (sigma * sigma);
    double cross = (upper.wdf() - lower.wdf() + upper.f() - lower.f()) / sigma;
    double tau2 = upper.wf() - lower.wf() + upper.wwdf() - lower.wwdf();
    return new LogLikelihoodSlopes(
        Math.log(p),
        mu1 / p,
        tau1 / p,
        mu2 / p - mu1 * mu1 / (p * p),
        cross / p - mu1 * tau1 / (p * p),
        tau2 / p - tau1 * tau1 / (p * p));
  }

  /** One end of an interval: the density f there, its slope df, and both times w and w². */
  private record End(double w, double f, double wf, double df, double wdf, double wwdf) {
    static End at(LifeLaw law, double w) {
      double f = law.density(w);
      if (f == 0) {
        return new End(w, 0, 0, 0, 0, 0);
      }
      double df = f * law.slope(w);
      return new End(w, f, w * f, df, w * df, w * w * df);
    }
  }

  private LogLikelihoodSlopes plus(LogLikelihoodSlopes other) {
    return new LogLikelihoodSlopes(
        value + other.value,
        byMu + other.byMu,
        byTau + other.byTau,
        byMuMu + other.byMuMu,
        byMuTau + other.byMuTau,
        byTauTau + other.byTauTau);
  }
}
