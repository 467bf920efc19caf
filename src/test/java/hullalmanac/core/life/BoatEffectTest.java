package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoatEffectTest {
  private static final double SIGMA = 0.45;
  private static final double MU = Math.log(150);
  private static final double SD_OF_SEEN = 0.08;

  private final Scene scene = new Scene();
  private final Product product = new Boatyard().product(ProductKind.POLYMER_SEALANT, 6.0);
  private final Drawn drawn = new Drawn(5);

  private Coat coat() {
    return scene.yard.coat(scene.topsides, product, LocalDate.of(2025, 4, 1));
  }

  /** Evidence that a life was about so long, as a normal law in ln L. */
  private static Evidence about(double lnLife) {
    LogLikelihood log = new LogLikelihood();
    log.add(x -> Math.exp(-0.5 * Math.pow((x - lnLife) / SD_OF_SEEN, 2)));
    return evidence(log, Optional.empty());
  }

  private static Evidence evidence(LogLikelihood log, Optional<Double> metAt) {
    return new Evidence(
        log, metAt, List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static LifeChances normal(double mean, double sd) {
    double[] chances = new double[LogLife.POINTS];
    LogLife.normal(mean, sd).addTo(chances, 1);
    return LifeChances.of(chances);
  }

  private static double mean(LifeChances chances) {
    double mean = 0;
    for (int i = 0; i < LogLife.POINTS; i++) {
      mean += chances.at(i) * LogLife.at(i);
    }
    return mean;
  }

  /**
   * Coats at known ln L are normal data for b: its posterior mean is the textbook shrinkage Σ dᵢ /
   * (n + v/t) with v the variance within a boat and of the looks, t between boats (Gelman et al.,
   * Bayesian Data Analysis, 3rd ed., section 2.5).
   */
  @Test
  void shrinksAsTheNormalLawDoes() {
    double share = 0.25;
    double within = Math.sqrt(1 - share) * SIGMA;
    LifeChances such = normal(MU, within);
    BoatEffect effect = new BoatEffect(share);
    double[] off = {0.3, 0.5, 0.1};
    double sum = 0;
    for (double d : off) {
      effect.add(coat(), BoatEffect.says(such, about(MU + d)));
      sum += d;
    }
    double v = within * within + SD_OF_SEEN * SD_OF_SEEN;
    double expected = sum / (off.length + v / (share * SIGMA * SIGMA));
    Coat next = coat();
    assertThat(effect.meanBesides(next, SIGMA)).isCloseTo(expected, within(2e-3));
    assertThat(mean(effect.on(next, such, SIGMA))).isCloseTo(MU + expected, within(2e-3));
  }

  /** That a coat was met in service says nothing of its boat: only such coats are met. */
  @Test
  void learnsNothingFromACoatOnlyMet() {
    LogLikelihood met = new LogLikelihood();
    met.addSurvived(150);
    BoatEffect effect = new BoatEffect(0.25);
    effect.add(coat(), BoatEffect.says(normal(MU, 0.4), evidence(met, Optional.of(150.0))));
    assertThat(effect.meanBesides(coat(), SIGMA)).isCloseTo(0, within(1e-9));
    BoatEffect seen = new BoatEffect(0.25);
    seen.add(coat(), BoatEffect.says(normal(MU, 0.4), evidence(met, Optional.empty())));
    assertThat(seen.meanBesides(coat(), SIGMA)).isGreaterThan(0.05);
  }

  @Test
  void leavesACoatsOwnFindingsOut() {
    BoatEffect effect = new BoatEffect(0.25);
    Coat own = coat();
    effect.add(own, BoatEffect.says(normal(MU, 0.4), about(MU + 0.5)));
    assertThat(effect.knowsBesides(own)).isFalse();
    assertThat(effect.knowsBesides(coat())).isTrue();
    assertThat(effect.meanBesides(own, SIGMA)).isCloseTo(0, within(1e-12));
  }

  private BoatEffects learned(double truth, double share) {
    BoatEffects effects = new BoatEffects(share);
    LifeChances such = normal(MU, Math.sqrt(1 - share) * SIGMA);
    Drawn random = new Drawn(11);
    for (int boat = 1; boat <= 120; boat++) {
      double b = random.normal(0, Math.sqrt(truth) * SIGMA);
      for (int i = 0; i < 4; i++) {
        double lnLife = random.normal(MU + b, Math.sqrt(1 - truth) * SIGMA);
        Evidence evidence = about(lnLife);
        Lesson lesson = new Lesson(evidence.logLikelihood(), Optional.empty(), 1);
        Lives.Taught taught =
            new Lives.Taught(new Id<Boat>(boat), coat(), 1, lesson, evidence, false);
        effects.add(taught, BoatEffect.says(such, evidence), SIGMA);
      }
    }
    return effects;
  }

  @Test
  void takesFromTheRecordHowMuchBoatsDiffer() {
    Map<Double, Double> found =
        Map.of(
            0.10, BoatEffects.likeliest(share -> learned(0.10, share)).share(),
            0.55, BoatEffects.likeliest(share -> learned(0.55, share)).share());
    found.forEach((truth, share) -> assertThat(share).isEqualTo(truth));
  }

  /** On boats that differ, a next coat is told better with the effect than without. */
  @Test
  void tellsTheNextCoatOfABoatBetter() {
    double share = 0.4;
    LifeChances within = normal(MU, Math.sqrt(1 - share) * SIGMA);
    List<Double> with = new ArrayList<>();
    List<Double> without = new ArrayList<>();
    for (int boat = 0; boat < 300; boat++) {
      BoatEffect effect = new BoatEffect(share);
      double b = drawn.normal(0, Math.sqrt(share) * SIGMA);
      for (int i = 0; i < 5; i++) {
        effect.add(
            coat(),
            BoatEffect.says(within, about(drawn.normal(MU + b, Math.sqrt(1 - share) * SIGMA))));
      }
      double next = drawn.normal(MU + b, Math.sqrt(1 - share) * SIGMA);
      with.add(Math.pow(mean(effect.on(coat(), within, SIGMA)) - next, 2));
      without.add(Math.pow(MU - next, 2));
    }
    double ratio =
        with.stream().mapToDouble(x -> x).sum() / without.stream().mapToDouble(x -> x).sum();
    assertThat(ratio).isBetween(0.60, 0.82);
  }
}
