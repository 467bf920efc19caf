package hullalmanac.core.finish;

import hullalmanac.core.record.StepKind;
import java.util.EnumMap;
import java.util.Map;

/**
 * What the work on one surface takes.
 *
 * @param stages of one pass of each stage
 * @param clean person-minutes of washing and decontaminating it
 * @param protect of protecting it
 */
record Effort(Map<Stage, Labour> stages, Estimate clean, Labour protect) {
  Effort {
    stages = Map.copyOf(stages);
  }

  /**
   * One pass over the surface.
   *
   * @param minutes person-minutes
   * @param millilitres of product
   * @param pads pads or sheets
   */
  record Labour(Estimate minutes, Estimate millilitres, int pads) {
    /** Whole person-minutes, at least one, by which plans are compared. */
    int wholeMinutes() {
      return Math.max(1, (int) Math.round(minutes.middle()));
    }
  }

  /** What an area in a condition takes. */
  static Effort of(Area area, Condition condition, Rates rates) {
    double m2 = area.squareMetres();
    Map<Stage, Labour> stages = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      int pads = (int) Math.ceil(m2 / FinishPractice.squareMetresAPad(stage));
      stages.put(
          stage,
          new Labour(
              rates.minutes(stage, condition).times(m2), rates.millilitres(stage).times(m2), pads));
    }
    Estimate wash = rates.minutes(StepKind.WASH, condition).times(m2);
    Estimate decontaminate = rates.minutes(StepKind.DECONTAMINATE, condition).times(m2);
    return new Effort(
        stages,
        together(wash, decontaminate),
        new Labour(
            rates.minutes(StepKind.PROTECT, Condition.FAIR).times(m2),
            rates.protection().times(m2),
            1));
  }

  /** Two works one after the other; the range as if both ran alike, which is a little wide. */
  private static Estimate together(Estimate a, Estimate b) {
    Origin origin = a.origin().boats() <= b.origin().boats() ? a.origin() : b.origin();
    return new Estimate(a.low() + b.low(), a.middle() + b.middle(), a.high() + b.high(), origin);
  }

  int minutes(Stage stage) {
    return stages.get(stage).wholeMinutes();
  }

  /** Whole person-minutes of cleaning and protecting, the same in every plan. */
  int others() {
    return Math.max(1, (int) Math.round(clean.middle())) + protect.wholeMinutes();
  }
}
