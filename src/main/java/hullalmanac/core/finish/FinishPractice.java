package hullalmanac.core.finish;

import hullalmanac.core.record.Observation;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Tone;

/** Starter values of correction. Every number here is common practice, no source. */
final class FinishPractice {
  /** A plan is good when it reaches the agreed gloss with this chance. */
  static final double CHANCE = 0.8;

  /**
   * How far the ceiling of a stage may lie from the starter value in one's own hands, gloss units.
   */
  static final double CEILING_SD = 2.0;

  /** The same for ln q. */
  static final double LN_Q_SD = 0.25;

  /** How surfaces differ around what is usual, in ceiling and ln q. */
  static final Spread BETWEEN_SURFACES = Spread.independent(2.0, 0.25);

  /** How a whole surface differs from a small spot on it. */
  static final Spread SPOT_TO_WHOLE = Spread.independent(1.0, 0.10);

  /** Days after the last step within which a reading still belongs to it. */
  static final int AFTER_DAYS = 14;

  /** How surely a starter value of minutes or product is held, in observations. */
  static final double RATE_WORTH = 2;

  /** Shape of the law of the variance of ln minutes and ln product. */
  static final double RATE_SHAPE = 3;

  /** Spread of ln minutes and ln product before anything was learned. */
  static final double RATE_SD = 0.35;

  private FinishPractice() {}

  /** Gloss at 60° towards which a stage moves a surface. */
  static double ceiling(Stage law, Tone tone) {
    boolean light = tone == Tone.LIGHT;
    return switch (law) {
      case FINISHING -> light ? 90 : 91;
      case ONE_STEP -> light ? 87 : 86;
      case MEDIUM -> light ? 84 : 80;
      case HEAVY -> light ? 80 : 74;
      default -> light ? 82 : 76;
    };
  }

  /** Share of the way to the ceiling that is left after a pass. */
  static double q(Stage law) {
    return switch (law) {
      case FINISHING -> 0.55;
      case ONE_STEP -> 0.35;
      case MEDIUM -> 0.30;
      case HEAVY -> 0.20;
      default -> 0.10;
    };
  }

  /** Person-minutes for a square metre of a fair surface, one pass. */
  static double minutes(Stage law) {
    return switch (law) {
      case FINISHING -> 4;
      case ONE_STEP, MEDIUM -> 6;
      case HEAVY -> 8;
      default -> 12;
    };
  }

  /** Person-minutes for a square metre of what is done besides correcting. */
  static double minutes(StepKind kind) {
    return switch (kind) {
      case WASH -> 1.2;
      case DECONTAMINATE -> 1.3;
      case PROTECT -> 3;
      default -> throw new IllegalArgumentException("no minutes are reckoned for " + kind);
    };
  }

  /** Millilitres for a square metre and pass; paper needs none. */
  static double millilitres(Stage law) {
    return switch (law) {
      case FINISHING -> 8;
      case ONE_STEP, MEDIUM -> 10;
      case HEAVY -> 12;
      default -> 0;
    };
  }

  /** Millilitres of protection for a square metre. */
  static final double PROTECTION_ML = 6;

  /** Square metres after which a pad or a sheet is changed. */
  static double squareMetresAPad(Stage stage) {
    return stage.sands() ? 1 : stage.law() == Stage.HEAVY ? 4 : 6;
  }

  /** The pad or tool of a stage. */
  static String pad(Stage stage) {
    return switch (stage) {
      case FINISHING -> "soft foam";
      case ONE_STEP -> "medium foam";
      case MEDIUM -> "cutting foam";
      case HEAVY -> "wool";
      default -> "wet paper";
    };
  }

  /**
   * Standard deviation of a mean of gloss readings as a measure of the surface, gloss units: 2.5 %
   * beside the scatter of the mean, 3.5 % of a single reading, at least half a unit.
   */
  static double sd(Observation.GlossRead g) {
    int n = g.readings().size();
    double sd =
        n == 1
            ? 0.035 * g.mean()
            : Math.hypot(0.025 * g.mean(), g.spread().orElse(0.0) / Math.sqrt(n));
    return Math.max(0.5, sd);
  }
}
