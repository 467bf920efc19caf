package hullalmanac.core.life.fit;

import hullalmanac.core.life.fit.FitOutcome.Covariance;
import hullalmanac.core.life.fit.FitOutcome.Fitted;
import hullalmanac.core.life.fit.FitOutcome.NoFit;
import java.util.List;

/**
 * Fits a law to lives by maximum likelihood: Newton's method in (μ, ln σ), each step shortened
 * until the likelihood grows, and bent towards the steepest way up where the likelihood is not
 * concave. Standard errors come from the observed information.
 *
 * <p>References: Meeker and Escobar (1998), chapter 8; Lawless, Statistical Models and Methods for
 * Lifetime Data, 2nd ed. (2003), chapter 5.
 */
public final class LifetimeFit {
  private static final int MOST_STEPS = 200;
  private static final double SETTLED = 1e-11;
  private static final double NARROWEST = Math.log(1e-6);
  private static final double WIDEST = Math.log(1e3);

  private LifetimeFit() {}

  /** Fits a law to lives, or says why it cannot be. */
  public static FitOutcome of(LifeLaw law, List<Lifetime> lives) {
    if (lives.stream().allMatch(Lifetime::censored)) {
      return new NoFit("no end was seen");
    }
    double mu = lives.stream().mapToDouble(LifetimeFit::rough).average().orElseThrow();
    double spread =
        lives.stream().mapToDouble(l -> Math.pow(rough(l) - mu, 2)).average().orElseThrow();
    return climb(law, lives, mu, 0.5 * Math.log(Math.max(spread, 0.01)));
  }

  private static double rough(Lifetime life) {
    if (life.censored()) {
      return Math.log(life.lower());
    }
    return Math.log(life.lower() == 0 ? life.upper() / 2 : (life.lower() + life.upper()) / 2);
  }

  private static FitOutcome climb(LifeLaw law, List<Lifetime> lives, double mu0, double tau0) {
    double mu = mu0;
    double tau = tau0;
    LogLikelihoodSlopes at = LogLikelihoodSlopes.of(law, lives, mu, tau);
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] up = direction(at);
      double length = 1;
      LogLikelihoodSlopes next = LogLikelihoodSlopes.of(law, lives, mu + up[0], tau + clamp(up[1]));
      while (!(next.value() >= at.value()) && length > 1e-12) {
        length /= 2;
        next = LogLikelihoodSlopes.of(law, lives, mu + length * up[0], tau + clamp(length * up[1]));
      }
      if (!(next.value() >= at.value())) {
        return settled(at) ? fitted(law, mu, tau, at) : new NoFit("the likelihood does not settle");
      }
      mu += length * up[0];
      tau += clamp(length * up[1]);
      at = next;
      if (tau < NARROWEST) {
        return new NoFit("all ends were seen at the same time");
      }
      if (tau > WIDEST || Math.abs(mu) > 700) {
        return new NoFit("the lives are too little known to settle on a law");
      }
      if (Math.hypot(length * up[0], length * up[1]) < SETTLED && settled(at)) {
        return fitted(law, mu, tau, at);
      }
    }
    return new NoFit("the likelihood does not settle");
  }

  private static boolean settled(LogLikelihoodSlopes at) {
    return Math.hypot(at.byMu(), at.byTau()) < 1e-6 * Math.max(1, Math.abs(at.value()));
  }

  private static double clamp(double step) {
    return Math.max(-2, Math.min(2, step));
  }

  /** Newton's step; where the likelihood is not concave, its bends are shifted until it is. */
  private static double[] direction(LogLikelihoodSlopes at) {
    double a = -at.byMuMu();
    double b = -at.byMuTau();
    double c = -at.byTauTau();
    double least = (a + c) / 2 - Math.hypot((a - c) / 2, b);
    double most = (a + c) / 2 + Math.hypot((a - c) / 2, b);
    double shift = least > 1e-10 * Math.abs(most) ? 0 : 1e-3 * (1 + Math.abs(most)) - least;
    a += shift;
    c += shift;
    double determinant = a * c - b * b;
    return new double[] {
      (c * at.byMu() - b * at.byTau()) / determinant, (a * at.byTau() - b * at.byMu()) / determinant
    };
  }

  private static FitOutcome fitted(LifeLaw law, double mu, double tau, LogLikelihoodSlopes at) {
    double determinant = at.byMuMu() * at.byTauTau() - at.byMuTau() * at.byMuTau();
    if (!(determinant > 0)) {
      return new NoFit("the lives are too little known to settle on a law");
    }
    return new Fitted(
        law,
        mu,
        Math.exp(tau),
        at.value(),
        new Covariance(
            -at.byTauTau() / determinant, at.byMuTau() / determinant, -at.byMuMu() / determinant));
  }
}
