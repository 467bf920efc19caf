package hullalmanac.core.finish;

import hullalmanac.core.record.Coded;
import java.util.Optional;
import java.util.Set;

/** How a surface stands before the work, as far as it bears on minutes and product. */
public enum Condition implements Coded {
  FAIR("fair", 1.0),
  WORN("worn", 1.2),
  POOR("poor", 1.5);

  /** At and above this gloss a surface is fair, at and above the other worn (common practice). */
  private static final double FAIR_FROM = 70;

  private static final double WORN_FROM = 50;

  private final String code;
  private final double effort;

  Condition(String code, double effort) {
    this.code = code;
    this.effort = effort;
  }

  @Override
  public String code() {
    return code;
  }

  /** Minutes and product it takes, a fair surface taking 1 (common practice, no source). */
  double effort() {
    return effort;
  }

  /** The condition that gloss and defects say. */
  static Condition of(Optional<Double> gloss, Set<Defect> seen) {
    double g = gloss.orElse(FAIR_FROM);
    if (seen.contains(Defect.CHALKING_HEAVY) || g < WORN_FROM) {
      return POOR;
    }
    return seen.contains(Defect.CHALKING_CLEAR) || g < FAIR_FROM ? WORN : FAIR;
  }
}
