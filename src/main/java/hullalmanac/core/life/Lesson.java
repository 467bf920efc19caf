package hullalmanac.core.life;

import java.util.List;
import java.util.Optional;

/**
 * What one coat teaches of its product's lives: the marginal likelihood of a law Normal(μ, σ²) of
 * ln L,
 *
 * <pre>
 *   ln Σ_L N(ln L; μ, σ) ℓ(L) − ln P(L &gt; D₀ | μ, σ)
 * </pre>
 *
 * the last only for a coat that was met in service at dose D₀: a shorter life would not have been
 * met (left truncation).
 */
final class Lesson {
  private final double[] likelihood;
  private final double logScale;
  private final Optional<double[]> survived;
  private final double share;

  /**
   * @param share weight of the lesson: one over the number of coats of the product laid in the same
   *     visit, which are not independent
   */
  Lesson(LogLikelihood evidence, Optional<Double> metAt, double share) {
    this.share = share;
    likelihood = evidence.relative();
    logScale = evidence.logScale();
    survived = metAt.map(Lesson::survived);
  }

  private static double[] survived(double dose) {
    LogLikelihood survived = new LogLikelihood();
    survived.addSurvived(dose);
    return survived.relative();
  }

  /** What several coats teach together. */
  static ProductLife.Taught all(List<Lesson> lessons) {
    return (mu, sigma) -> {
      LogLife.Row law = LogLife.normal(mu, sigma);
      double sum = 0;
      for (Lesson lesson : lessons) {
        sum += lesson.log(law);
      }
      return sum;
    };
  }

  /** ln of the marginal likelihood of a law, given its chances over the cells, times the share. */
  double log(LogLife.Row law) {
    double whole = Math.max(law.times(likelihood), Double.MIN_NORMAL);
    double met = survived.map(s -> Math.max(law.times(s), Double.MIN_NORMAL)).orElse(1.0);
    return share * (Math.log(whole) + logScale - Math.log(met));
  }
}
