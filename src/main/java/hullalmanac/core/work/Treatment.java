package hullalmanac.core.work;

import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the steps of a visit did to the protection of one surface.
 *
 * @param base the base coat that was laid
 * @param topper the topper that was laid
 * @param strippedOn the day on which cutting or polishing took off what was there
 * @param spoiltBy a step that would take off what the visit itself had laid: wrongly ordered
 */
record Treatment(
    Optional<Laying> base,
    Optional<Laying> topper,
    Optional<LocalDate> strippedOn,
    Optional<Step> spoiltBy) {
  private static final int MOST_LAYERS = 9;

  /**
   * One coat laid.
   *
   * @param step which laid it; of several the last
   * @param layers 1 to 9: passes of all steps with the same product
   * @param cleared whether the surface was decontaminated, cut or polished before
   */
  record Laying(Step step, LocalDate day, int layers, boolean cleared) {}

  /**
   * Reads the steps on a surface. Each counts on its own day; when the surface was done later than
   * its last step says, so many days later.
   */
  static Treatment of(VisitWork work, Id<Surface> surface, LocalDate doneOn) {
    List<Step> steps = work.on(surface);
    long late = work.late(surface, doneOn);
    Optional<Laying> base = laying(steps, StepKind.PROTECT, late);
    Optional<Laying> topper = laying(steps, StepKind.TOP, late);
    Optional<LocalDate> stripped =
        steps.stream().filter(VisitWork::strips).findFirst().map(s -> s.day().plusDays(late));
    return new Treatment(base, topper, stripped, spoiltBy(steps));
  }

  /** Whether it left all coats as they were. */
  boolean leavesCoats() {
    return base.isEmpty() && topper.isEmpty() && strippedOn.isEmpty();
  }

  private static Optional<Laying> laying(List<Step> steps, StepKind kind, long late) {
    List<Step> all = steps.stream().filter(s -> s.kind() == kind).toList();
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Step last = all.get(all.size() - 1);
    int layers =
        all.stream()
            .filter(s -> s.product().equals(last.product()))
            .mapToInt(s -> s.passes().orElse(1))
            .sum();
    boolean cleared =
        steps.subList(0, steps.indexOf(last)).stream()
            .anyMatch(s -> VisitWork.strips(s) || s.kind() == StepKind.DECONTAMINATE);
    return Optional.of(
        new Laying(last, last.day().plusDays(late), Math.min(MOST_LAYERS, layers), cleared));
  }

  private static Optional<Step> spoiltBy(List<Step> steps) {
    Optional<Step> firstLaid = steps.stream().filter(VisitWork::lays).findFirst();
    return firstLaid.flatMap(
        laid ->
            steps.subList(steps.indexOf(laid) + 1, steps.size()).stream()
                .filter(VisitWork::strips)
                .findFirst());
  }
}
