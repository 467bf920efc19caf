package hullalmanac.core.finish;

/** What the planner says of stages that a person chose. */
public sealed interface Judged {
  /**
   * They can be done.
   *
   * @param reaches whether they reach what was agreed
   */
  record Fits(Plan plan, boolean reaches) implements Judged {}

  /** They cannot; a sentence. */
  record Refused(String sentence) implements Judged {}
}
