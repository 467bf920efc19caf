package hullalmanac.core.life;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Coats drawn from the model itself: a life, and what is seen of it. */
final class Drawn {
  /** Chances that a look misleads, as the model has them for a clean, a washed, a dirty surface. */
  private static final double[] MISLED = {0.05, 0.15, 0.35};

  private final Random random;

  Drawn(long seed) {
    random = new Random(seed);
  }

  /**
   * One coat.
   *
   * @param metAt dose at which it was met in service
   */
  record Coat(double lnLife, LogLikelihood seen, Optional<Double> metAt) {
    Lesson lesson(double share) {
      return new Lesson(seen, metAt, share);
    }
  }

  double normal(double mean, double sd) {
    return mean + sd * random.nextGaussian();
  }

  double uniform(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  boolean chance(double p) {
    return random.nextDouble() < p;
  }

  /** A coat of a law Normal(μ, σ²) in ln L, with looks at water, for some also with gloss. */
  Coat coat(double mu, double sigma) {
    boolean met = chance(0.2);
    double metAt = Math.exp(normal(mu - 0.5, 0.5));
    double lnLife = normal(mu, sigma);
    while (met && lnLife <= Math.log(metAt)) {
      lnLife = normal(mu, sigma);
    }
    LogLikelihood seen = new LogLikelihood();
    double dose = met ? metAt : 0;
    int looks = random.nextInt(5);
    for (int i = 0; i < looks; i++) {
      dose += Math.exp(normal(mu - 1.2, 0.5));
      look(seen, lnLife, dose, MISLED[random.nextInt(MISLED.length)]);
    }
    if (met) {
      seen.addSurvived(metAt);
    } else if (chance(0.3)) {
      gloss(seen, lnLife, mu);
    }
    return new Coat(lnLife, seen, met ? Optional.of(metAt) : Optional.empty());
  }

  /** One look at water; says whether it found the coat alive. */
  boolean look(LogLikelihood seen, double lnLife, double dose, double misled) {
    boolean good = chance(WaterLook.good(lnLife, dose, misled));
    seen.add(x -> good ? WaterLook.good(x, dose, misled) : WaterLook.bare(x, dose, misled));
    return good;
  }

  private void gloss(LogLikelihood seen, double lnLife, double mu) {
    double firstSd = 0.026;
    List<GlossEvidence.Reading> readings = readings(lnLife, mu, firstSd, 4);
    seen.add(x -> GlossEvidence.likelihood(readings, firstSd, Math.exp(x)));
  }

  /** Gloss readings that share the error of the first. */
  List<GlossEvidence.Reading> readings(double lnLife, double mu, double firstSd, int count) {
    double shared = normal(0, firstSd);
    List<GlossEvidence.Reading> readings = new ArrayList<>();
    double dose = 0;
    for (int i = 0; i < count; i++) {
      dose += Math.exp(normal(mu - 1.2, 0.3));
      double worn = Math.log(0.93) * Math.min(dose / Math.exp(lnLife), 1.5);
      double sd = 0.027;
      double error = chance(0.05) ? normal(0, 0.30) : normal(0, sd);
      readings.add(new GlossEvidence.Reading(worn + shared + error, dose, sd));
    }
    return readings;
  }
}
