package hullalmanac.core.finish;

import java.util.List;

/**
 * Clean, correct in these stages, protect.
 *
 * @param stages at most four, in falling order of cut; none when washing and protecting will do
 * @param totals what it is compared by
 * @param chance of reaching the agreed gloss
 * @param path gloss after each stage
 * @param needs one entry a kind of stage, in order
 * @param staysBehind in plain words, one sentence each
 * @param left of the budget
 */
public record Plan(
    List<Stage> stages,
    Totals totals,
    double chance,
    GlossPath path,
    List<Need> needs,
    Around around,
    List<String> staysBehind,
    Budget left) {
  public Plan {
    stages = List.copyOf(stages);
    needs = List.copyOf(needs);
    staysBehind = List.copyOf(staysBehind);
  }

  /**
   * What plans are compared by.
   *
   * @param passes of correction
   * @param minutes whole person-minutes, cleaning and protecting too
   * @param tenths of a micron taken off
   */
  public record Totals(int passes, int minutes, int tenths) {
    /** Microns taken off. */
    public double microns() {
      return tenths / 10.0;
    }

    /** Whether this is as good in each and better in one. */
    boolean beats(Totals other) {
      return passes <= other.passes
          && minutes <= other.minutes
          && tenths <= other.tenths
          && !equals(other);
    }
  }

  /**
   * What one kind of stage takes.
   *
   * @param minutes person-minutes of all its passes
   * @param millilitres of product of all its passes; 0 for paper
   * @param pads of this tool
   * @param gloss what is known of how it moves gloss rests on
   */
  public record Need(
      Stage stage,
      int passes,
      Estimate minutes,
      Estimate millilitres,
      int pads,
      String pad,
      Origin gloss) {}

  /**
   * What comes before and after the correction.
   *
   * @param clean person-minutes of washing and decontaminating
   * @param protect person-minutes
   * @param protection millilitres
   */
  public record Around(Estimate clean, Estimate protect, Estimate protection) {}

  /** What people call it: "two-stage correction: medium compound, finishing polish". */
  public String words() {
    if (stages.isEmpty()) {
      return "no correction: clean and protect";
    }
    String count = List.of("one", "two", "three", "four").get(stages.size() - 1);
    return count
        + "-stage correction: "
        + String.join(", ", stages.stream().map(Stage::words).toList());
  }
}
