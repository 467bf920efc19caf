package hullalmanac.core.finish;

import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.PracticeValue;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Tone;

/**
 * What correction is reckoned from before the record has taught. Every number is common practice,
 * no source; those a business may set are asked of its {@link Practice}.
 */
record FinishPractice(Practice practice) {
  /** The standards throughout. */
  static final FinishPractice STANDARD = new FinishPractice(Practice.STANDARD);

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

  private static final int YOUNG_UNDER = 5;
  private static final int MIDDLING_UNTIL = 15;

  /** Days after the last step within which a reading still belongs to it. */
  static final int AFTER_DAYS = 14;

  /** How surely a starter value of minutes or product is held, in observations. */
  static final double RATE_WORTH = 2;

  /** Shape of the law of the variance of ln minutes and ln product. */
  static final double RATE_SHAPE = 3;

  /** Spread of ln minutes and ln product before anything was learned. */
  static final double RATE_SD = 0.35;

  /** Gloss at 60° towards which a stage moves a surface. */
  double ceiling(Stage law, Tone tone) {
    boolean light = tone == Tone.LIGHT;
    return practice.of(
        switch (law) {
          case FINISHING ->
              light ? PracticeValue.REACH_FINISHING_LIGHT : PracticeValue.REACH_FINISHING_DARK;
          case ONE_STEP ->
              light ? PracticeValue.REACH_ONE_STEP_LIGHT : PracticeValue.REACH_ONE_STEP_DARK;
          case MEDIUM -> light ? PracticeValue.REACH_MEDIUM_LIGHT : PracticeValue.REACH_MEDIUM_DARK;
          case HEAVY -> light ? PracticeValue.REACH_HEAVY_LIGHT : PracticeValue.REACH_HEAVY_DARK;
          default -> light ? PracticeValue.REACH_SANDED_LIGHT : PracticeValue.REACH_SANDED_DARK;
        });
  }

  /** Share of the way to the ceiling that is left after a pass. */
  double q(Stage law) {
    return practice.of(
        switch (law) {
          case FINISHING -> PracticeValue.LEFT_FINISHING;
          case ONE_STEP -> PracticeValue.LEFT_ONE_STEP;
          case MEDIUM -> PracticeValue.LEFT_MEDIUM;
          case HEAVY -> PracticeValue.LEFT_HEAVY;
          default -> PracticeValue.LEFT_SANDED;
        });
  }

  /** The highest gloss of gelcoat of an age in years. */
  double limit(int age) {
    PracticeValue limit =
        age <= MIDDLING_UNTIL ? PracticeValue.LIMIT_MIDDLING : PracticeValue.LIMIT_OLD;
    return practice.of(age < YOUNG_UNDER ? PracticeValue.LIMIT_YOUNG : limit);
  }

  /** What stays in reserve on flats, tenths of a micron. */
  double reserve(Tone tone) {
    return 10
        * practice.of(tone == Tone.DARK ? PracticeValue.RESERVE_DARK : PracticeValue.RESERVE_LIGHT);
  }

  /** Person-minutes for a square metre of a fair surface, one pass. */
  double minutes(Stage law) {
    return practice.of(
        switch (law) {
          case FINISHING -> PracticeValue.MINUTES_FINISHING;
          case ONE_STEP -> PracticeValue.MINUTES_ONE_STEP;
          case MEDIUM -> PracticeValue.MINUTES_MEDIUM;
          case HEAVY -> PracticeValue.MINUTES_HEAVY;
          default -> PracticeValue.MINUTES_SANDED;
        });
  }

  /** Person-minutes for a square metre of what is done besides correcting. */
  double minutes(StepKind kind) {
    return practice.of(
        switch (kind) {
          case WASH -> PracticeValue.MINUTES_WASH;
          case DECONTAMINATE -> PracticeValue.MINUTES_DECONTAMINATE;
          case PROTECT -> PracticeValue.MINUTES_PROTECT;
          default -> throw new IllegalArgumentException("no minutes are reckoned for " + kind);
        });
  }

  /** Millilitres for a square metre and pass, or of another work; paper needs none. */
  double millilitres(Enum<?> work) {
    if (!(work instanceof Stage law)) {
      return practice.of(
          work == StepKind.WASH
              ? PracticeValue.ML_WASH
              : work == StepKind.DECONTAMINATE
                  ? PracticeValue.ML_DECONTAMINATE
                  : PracticeValue.ML_PROTECT);
    }
    return practice.of(
        switch (law) {
          case FINISHING -> PracticeValue.ML_FINISHING;
          case ONE_STEP -> PracticeValue.ML_ONE_STEP;
          case MEDIUM -> PracticeValue.ML_MEDIUM;
          case HEAVY -> PracticeValue.ML_HEAVY;
          default -> throw new IllegalArgumentException("paper needs no product");
        });
  }

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
