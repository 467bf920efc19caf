package hullalmanac.core.life.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.life.fit.FitOutcome.Fitted;
import hullalmanac.core.life.fit.FitOutcome.NoFit;
import hullalmanac.reference.Reference;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Fits of published data. Published digits are met to half a unit of the last; the further digits
 * were computed apart from this program with R 4.2.2, survival 3.5-3, survreg.
 */
class LifetimeFitTest {
  static List<Lifetime> lives(String file) {
    return Reference.read(LifetimeFitTest.class, file).rows().stream()
        .map(
            row ->
                new Lifetime(
                    Double.parseDouble(row.get(0)),
                    row.get(1).equals("inf")
                        ? Double.POSITIVE_INFINITY
                        : Double.parseDouble(row.get(1))))
        .toList();
  }

  private static Fitted fit(LifeLaw law, List<Lifetime> lives) {
    return (Fitted) LifetimeFit.of(law, lives);
  }

  private static void agrees(Fitted f, double mu, double sigma, double logLikelihood) {
    Percentage close = Percentage.withPercentage(1e-3);
    assertThat(f.mu()).isCloseTo(mu, close);
    assertThat(f.sigma()).isCloseTo(sigma, close);
    assertThat(f.logLikelihood()).isCloseTo(logLikelihood, offset(1e-6));
  }

  private static void errors(Fitted f, double mu, double both, double logSigma) {
    Percentage close = Percentage.withPercentage(2e-2);
    assertThat(f.covariance().mu()).isCloseTo(mu, close);
    assertThat(f.covariance().muAndLogSigma()).isCloseTo(both, close);
    assertThat(f.covariance().logSigma()).isCloseTo(logSigma, close);
  }

  /** NIST/SEMATECH e-Handbook 8.4.1.2: η 606.5280, β 1.7208, log-likelihood −75.135. */
  @Test
  void fitsWeibullToTheHandbooksLives() {
    Fitted f = fit(LifeLaw.WEIBULL, lives("nist-apr413.txt"));
    assertThat(Math.exp(f.mu())).isCloseTo(606.5280, within(0.0005));
    assertThat(1 / f.sigma()).isCloseTo(1.7208, within(0.00005));
    assertThat(f.logLikelihood()).isCloseTo(-75.135, within(0.0005));
    agrees(f, 6.40775017, 0.58112598, -75.13461816);
    errors(f, 0.04241289365, 0.02712784240, 0.08515468874);
    assertThat(f.median()).isCloseTo(490.173781, Percentage.withPercentage(1e-3));
    assertThat(f.quantile(0.1)).isCloseTo(164.022439, Percentage.withPercentage(1e-3));
  }

  /** NIST/SEMATECH e-Handbook 8.4.1.2: AIC 154.39 of the log-normal law. */
  @Test
  void fitsLognormalToTheHandbooksLives() {
    Fitted f = fit(LifeLaw.LOGNORMAL, lives("nist-apr413.txt"));
    assertThat(4 - 2 * f.logLikelihood()).isCloseTo(154.39, within(0.005));
    agrees(f, 6.22601507, 0.90891404, -75.19627078);
    errors(f, 0.06271995141, 0.02739142590, 0.06171345859);
    assertThat(f.median()).isCloseTo(505.73613885, Percentage.withPercentage(1e-3));
    assertThat(f.quantile(0.1)).isCloseTo(157.778927, Percentage.withPercentage(1e-3));
    assertThat(f.surviving(505.73613885)).isCloseTo(0.5, within(1e-6));
  }

  /** Meeker and Escobar (1998): μ 6.56, covariance [[0.0581, 0.0374], [0.0374, 0.0405]] in σ. */
  @Test
  void fitsMeekerAndEscobarsLives() {
    List<Lifetime> lives = lives("meeker-escobar.txt");
    Fitted f = fit(LifeLaw.LOGNORMAL, lives);
    agrees(f, 6.56425582, 0.53404920, -39.87958790);
    assertThat(f.covariance().mu()).isCloseTo(0.05810050, Percentage.withPercentage(2e-2));
    assertThat(f.covariance().muAndLogSigma() * f.sigma())
        .isCloseTo(0.03738627, Percentage.withPercentage(2e-2));
    assertThat(f.covariance().logSigma() * f.sigma() * f.sigma())
        .isCloseTo(0.04056245, Percentage.withPercentage(2e-2));
    agrees(fit(LifeLaw.WEIBULL, lives), 6.60438610, 0.31722801, -40.17804637);
  }

  @Test
  void fitsTheRemissionsOfFreireich() {
    List<Lifetime> lives = lives("freireich.txt");
    Fitted weibull = fit(LifeLaw.WEIBULL, lives);
    assertThat(1 / weibull.sigma()).isCloseTo(1.35373452, Percentage.withPercentage(1e-3));
    assertThat(Math.exp(weibull.mu())).isCloseTo(33.76515097, Percentage.withPercentage(1e-3));
    assertThat(weibull.logLikelihood()).isCloseTo(-41.65867848, offset(1e-6));
    agrees(fit(LifeLaw.LOGNORMAL, lives), 3.20306765, 0.97872479, -40.68015587);
  }

  @Test
  void fitsTheIntervalsOfFinkelsteinAndWolfe() {
    List<Lifetime> lives = lives("finkelstein-wolfe.txt");
    Fitted weibull = fit(LifeLaw.WEIBULL, lives);
    agrees(weibull, 4.05201268, 0.89157324, -64.73147062);
    errors(weibull, 0.05106909, 0.02449888, 0.04565212);
    Fitted lognormal = fit(LifeLaw.LOGNORMAL, lives);
    agrees(lognormal, 3.75033267, 1.30804524, -64.73489868);
    errors(lognormal, 0.06384027, 0.02374667, 0.03728646);
    assertThat(lognormal.median()).isCloseTo(42.53522989, Percentage.withPercentage(1e-3));
  }

  @Test
  void saysWhyThereIsNoFit() {
    assertThat(LifetimeFit.of(LifeLaw.WEIBULL, List.of(Lifetime.over(5), Lifetime.over(9))))
        .isEqualTo(new NoFit("no end was seen"));
    assertThat(LifetimeFit.of(LifeLaw.LOGNORMAL, List.of(Lifetime.exactly(5), Lifetime.exactly(5))))
        .isInstanceOf(NoFit.class);
    assertThat(LifetimeFit.of(LifeLaw.LOGNORMAL, List.of(new Lifetime(0, 5))))
        .isInstanceOf(NoFit.class);
  }

  /** With every end seen, the log-normal fit is the mean and the spread of the logarithms. */
  @Property(tries = 200)
  void isMeanAndSpreadWhenEveryEndWasSeen(
      @ForAll @Size(min = 3, max = 20) List<@DoubleRange(min = 1, max = 900) Double> times) {
    double mean = times.stream().mapToDouble(Math::log).average().orElseThrow();
    double spread =
        times.stream().mapToDouble(t -> Math.pow(Math.log(t) - mean, 2)).average().orElseThrow();
    if (spread < 1e-4) {
      return;
    }
    Fitted f = fit(LifeLaw.LOGNORMAL, times.stream().map(Lifetime::exactly).toList());
    assertThat(f.mu()).isCloseTo(mean, within(1e-7));
    assertThat(f.sigma()).isCloseTo(Math.sqrt(spread), within(1e-6));
    assertThat(f.covariance().mu()).isCloseTo(spread / times.size(), within(1e-6));
  }

  /** In another unit only the location moves. */
  @Property(tries = 50)
  void doesNotMindTheUnit(@ForAll @DoubleRange(min = 0.01, max = 100) double unit) {
    for (LifeLaw law : LifeLaw.values()) {
      Fitted f = fit(law, lives("finkelstein-wolfe.txt"));
      Fitted g =
          fit(
              law,
              lives("finkelstein-wolfe.txt").stream()
                  .map(l -> new Lifetime(l.lower() * unit, l.upper() * unit))
                  .toList());
      assertThat(g.mu()).isCloseTo(f.mu() + Math.log(unit), within(1e-6));
      assertThat(g.sigma()).isCloseTo(f.sigma(), within(1e-6));
      assertThat(g.medianError() / g.median())
          .isCloseTo(f.medianError() / f.median(), within(1e-6));
    }
  }

  /** The slopes against differences of the likelihood itself. */
  @Test
  void slopesAreThoseOfTheLikelihood() {
    List<Lifetime> lives = lives("finkelstein-wolfe.txt");
    double h = 1e-5;
    for (LifeLaw law : LifeLaw.values()) {
      for (double mu : DoubleStream.of(3, 3.9, 4.4).toArray()) {
        for (double tau : DoubleStream.of(-0.8, 0, 0.5).toArray()) {
          LogLikelihoodSlopes at = LogLikelihoodSlopes.of(law, lives, mu, tau);
          LogLikelihoodSlopes right = LogLikelihoodSlopes.of(law, lives, mu + h, tau);
          LogLikelihoodSlopes left = LogLikelihoodSlopes.of(law, lives, mu - h, tau);
          LogLikelihoodSlopes up = LogLikelihoodSlopes.of(law, lives, mu, tau + h);
          LogLikelihoodSlopes down = LogLikelihoodSlopes.of(law, lives, mu, tau - h);
          assertThat(at.byMu()).isCloseTo((right.value() - left.value()) / 2 / h, within(1e-4));
          assertThat(at.byTau()).isCloseTo((up.value() - down.value()) / 2 / h, within(1e-4));
          assertThat(at.byMuMu()).isCloseTo((right.byMu() - left.byMu()) / 2 / h, within(1e-4));
          assertThat(at.byMuTau()).isCloseTo((up.byMu() - down.byMu()) / 2 / h, within(1e-4));
          assertThat(at.byTauTau()).isCloseTo((up.byTau() - down.byTau()) / 2 / h, within(1e-4));
        }
      }
    }
  }
}
