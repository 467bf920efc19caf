package hullalmanac.core.finish;

import hullalmanac.core.record.Tone;
import java.util.List;

/**
 * How a stage moves the gloss of a surface towards its ceiling C:
 *
 * <pre>
 *   G_after = C − q · (C − G_before)          (C, ln q) ~ Normal
 * </pre>
 *
 * Pairs of readings before and after update it. Given q, a reading after is linear in C and the
 * update is the textbook one of a Normal mean with known variance; over ln q, and where a surface's
 * own limit lies under C, it is summed up on a grid, and the Normal of the same means and
 * covariance goes on. The order of the pairs does not matter, and nothing is drawn at random.
 *
 * @param ceiling mean of C, gloss units at 60°
 * @param lnQ mean of ln q
 */
record GlossLaw(double ceiling, double lnQ, Spread spread) {
  /** What is usual of a stage, before any reading. */
  static GlossLaw starter(FinishPractice practice, Stage law, Tone tone) {
    return new GlossLaw(
        practice.ceiling(law, tone),
        Math.log(practice.q(law)),
        Spread.independent(FinishPractice.CEILING_SD, FinishPractice.LN_Q_SD));
  }

  /** The law of one more surface: as surfaces differ by so much. */
  GlossLaw plus(Spread more) {
    return new GlossLaw(ceiling, lnQ, spread.plus(more));
  }

  /** The law on a surface that can reach no more than a limit. */
  GlossLaw cappedAt(double limit) {
    return new GlossLaw(Math.min(ceiling, limit), lnQ, spread);
  }

  /**
   * The law after pairs of readings.
   *
   * @param between how the surfaces of the pairs differ from the law's own
   */
  GlossLaw taught(List<Pair> pairs, Spread between) {
    return pairs.isEmpty() ? this : new LawGrid(this, pairs, between).law();
  }
}
