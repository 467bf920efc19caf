package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.life.fit.FitOutcome.Fitted;
import hullalmanac.core.life.fit.LifeLaw;
import hullalmanac.core.life.fit.Lifetime;
import hullalmanac.core.life.fit.LifetimeFit;
import hullalmanac.reference.Reference;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whether what is learned is as sure as it says: where truth is drawn from the model itself, its
 * place in what was learned must be uniform.
 *
 * <p>References: Talts, Betancourt, Simpson, Vehtari and Gelman, arXiv:1804.06788 (2018).
 */
@Tag("slow")
class CalibrationTest {
  private static final int FLEETS = 300;
  private static final int COATS = 8;
  private static final int BINS = 20;

  /** 0.999 point of χ² with 19 degrees of freedom; computed apart with R 4.2.2, qchisq. */
  private static final double MOST = 43.8202;

  private static final double MU_MEAN = 5;

  /** Places of the truth in each of three kinds of answer. */
  private record Places(List<Double> mu, List<Double> seenCoats, List<Double> nextCoat) {}

  private static Places places(long seed, int fleets) {
    Drawn drawn = new Drawn(seed);
    Places places = new Places(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (int fleet = 0; fleet < fleets; fleet++) {
      double mu = drawn.normal(MU_MEAN, LifePractice.PRIOR_MU_SD);
      double sigma =
          Math.exp(drawn.normal(LifePractice.PRIOR_LN_SIGMA_MEAN, LifePractice.PRIOR_LN_SIGMA_SD));
      List<Drawn.Coat> coats = new ArrayList<>();
      List<Lesson> lessons = new ArrayList<>();
      for (int i = 0; i < COATS; i++) {
        coats.add(drawn.coat(mu, sigma));
        lessons.add(coats.get(i).lesson(1));
      }
      ProductLife life = ProductLife.of(MU_MEAN, Lesson.all(lessons));
      places.mu().add(placeOfMu(life, mu));
      places
          .nextCoat()
          .add(
              life.predictive(ProductLife.Spread.overall(0))
                  .lapsed(Math.exp(drawn.normal(mu, sigma))));
      LifeChances own =
          life.predictiveWithout(lessons.get(0), ProductLife.Spread.overall(0))
              .times(coats.get(0).seen());
      places.seenCoats().add(own.lapsed(Math.exp(coats.get(0).lnLife())));
    }
    return places;
  }

  /** P(μ ≤ truth), straight between the points of the grid. */
  static double placeOfMu(ProductLife life, double mu) {
    double half = (life.mu(1) - life.mu(0)) / 2;
    double sum = 0;
    for (int i = 0; i < life.muPoints(); i++) {
      double share = Math.max(0, Math.min(1, (mu - (life.mu(i) - half)) / (2 * half)));
      for (int j = 0; j < life.sigmaPoints(); j++) {
        sum += share * life.weight(i, j);
      }
    }
    return sum;
  }

  static double chiSquare(List<Double> places) {
    int[] bins = new int[BINS];
    places.forEach(p -> bins[Math.min(BINS - 1, (int) (p * BINS))]++);
    double expected = places.size() / (double) BINS;
    double sum = 0;
    for (int count : bins) {
      sum += (count - expected) * (count - expected) / expected;
    }
    return sum;
  }

  @Test
  void truthDrawnFromTheModelLiesAnywhereInWhatIsLearned() {
    Places places = places(20260501, FLEETS);
    assertThat(chiSquare(places.mu())).as("μ").isLessThan(MOST);
    assertThat(chiSquare(places.seenCoats())).as("coats in service").isLessThan(MOST);
    assertThat(chiSquare(places.nextCoat())).as("the next coat").isLessThan(MOST);
  }

  /** The check can fail: against a prior that is off by one deviation the places are not even. */
  @Test
  void seesALawThatIsOff() {
    Drawn drawn = new Drawn(3);
    List<Double> places = new ArrayList<>();
    LifeChances prior = ProductLife.prior(MU_MEAN + 0.4).predictive(ProductLife.Spread.overall(0));
    for (int i = 0; i < FLEETS; i++) {
      places.add(prior.lapsed(Math.exp(drawn.normal(MU_MEAN, 0.5))));
    }
    assertThat(chiSquare(places)).isGreaterThan(MOST);
  }

  /**
   * With a flat prior and evidence by differences of the distribution function, the most likely
   * point of the grid lies within one step of the fit by maximum likelihood. Data: Finkelstein and
   * Wolfe 1985, as in the tests of the fits; months taken for 30.44 doses.
   */
  @Test
  void mostLikelyPointIsTheFitOfMaximumLikelihood() {
    List<Lifetime> lives =
        Reference.read(Lifetime.class, "finkelstein-wolfe.txt").rows().stream()
            .map(
                row ->
                    new Lifetime(
                        30.44 * Double.parseDouble(row.get(0)),
                        row.get(1).equals("inf")
                            ? Double.POSITIVE_INFINITY
                            : 30.44 * Double.parseDouble(row.get(1))))
            .toList();
    Fitted fit = (Fitted) LifetimeFit.of(LifeLaw.LOGNORMAL, lives);
    List<Lesson> lessons = lives.stream().map(CalibrationTest::interval).toList();
    double centre = fit.mu() + 0.02;
    ProductLife.Taught taught = Lesson.all(lessons);
    ProductLife life =
        ProductLife.of(
            centre,
            (mu, sigma) -> {
              double z = (mu - centre) / LifePractice.PRIOR_MU_SD;
              double y =
                  (Math.log(sigma) - LifePractice.PRIOR_LN_SIGMA_MEAN)
                      / LifePractice.PRIOR_LN_SIGMA_SD;
              return taught.log(mu, sigma) + 0.5 * (z * z + y * y);
            });
    int best = 0;
    int points = life.muPoints() * life.sigmaPoints();
    for (int k = 1; k < points; k++) {
      if (weight(life, k) > weight(life, best)) {
        best = k;
      }
    }
    double mu = life.mu(best / life.sigmaPoints());
    double sigma = life.sigma(best % life.sigmaPoints());
    assertThat(mu).isCloseTo(fit.mu(), within(life.mu(1) - life.mu(0)));
    assertThat(Math.log(sigma))
        .isCloseTo(Math.log(fit.sigma()), within(Math.log(life.sigma(1) / life.sigma(0))));
  }

  private static double weight(ProductLife life, int point) {
    return life.weight(point / life.sigmaPoints(), point % life.sigmaPoints());
  }

  /** 1 within the interval and 0 outside, with the cells at its ends in part. */
  private static Lesson interval(Lifetime life) {
    LogLikelihood log = new LogLikelihood();
    log.add(x -> covered(x, Math.log(life.lower()), Math.log(life.upper())));
    return new Lesson(log, java.util.Optional.empty(), 1);
  }

  private static double covered(double x, double from, double until) {
    double low = Math.max(x - LogLife.STEP / 2, from);
    double high = Math.min(x + LogLife.STEP / 2, until);
    return Math.max(0, (high - low) / LogLife.STEP);
  }
}
