package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The steps of a visit in the order in which they are done, and which surfaces each covers.
 *
 * @param boat all surfaces of the boat
 */
record VisitWork(Visit visit, List<Step> steps, List<Id<Surface>> boat) {
  VisitWork {
    steps = steps.stream().sorted(InRecord.IN_ORDER).toList();
    boat = List.copyOf(boat);
  }

  static VisitWork of(Almanac almanac, Visit visit) {
    return new VisitWork(
        visit,
        InRecord.steps(almanac, visit),
        InRecord.surfaces(almanac, visit.boat()).stream().map(Surface::id).toList());
  }

  /** The surfaces of a step, all of the boat when it names none. */
  List<Id<Surface>> surfaces(Step step) {
    return step.surfaces().isEmpty() ? boat : step.surfaces();
  }

  /** The steps on a surface, in order. */
  List<Step> on(Id<Surface> surface) {
    return steps.stream().filter(s -> surfaces(s).contains(surface)).toList();
  }

  /** The last day on which a step covers a surface. */
  Optional<LocalDate> lastDay(Id<Surface> surface) {
    return on(surface).stream().map(Step::day).max(Comparator.naturalOrder());
  }

  /**
   * All days on which something of it was done, on surfaces that were done late that much later.
   */
  Set<LocalDate> days() {
    Set<LocalDate> days = new HashSet<>();
    days.add(visit.day());
    steps.forEach(s -> days.add(s.day()));
    for (Visit.Part part : visit.surfaces()) {
      part.doneOn()
          .ifPresent(
              done -> {
                days.add(done);
                long late = late(part.surface(), done);
                on(part.surface()).forEach(s -> days.add(s.day().plusDays(late)));
              });
    }
    return days;
  }

  /** How many days later than its last step says a surface was done, 0 or more. */
  long late(Id<Surface> surface, LocalDate doneOn) {
    return lastDay(surface)
        .map(last -> Math.max(0, ChronoUnit.DAYS.between(last, doneOn)))
        .orElse(0L);
  }

  /** Surfaces written down as done. */
  Set<Id<Surface>> done() {
    return visit.surfaces().stream()
        .filter(p -> p.state() == WorkState.DONE)
        .map(Visit.Part::surface)
        .collect(Collectors.toSet());
  }

  /** Whether nothing of a step is written down as done. */
  boolean open(Step step) {
    Set<Id<Surface>> done = done();
    return surfaces(step).stream().noneMatch(done::contains);
  }

  /** This work with the steps of which nothing is done so many days later. */
  VisitWork later(long days) {
    return new VisitWork(
        visit,
        steps.stream()
            .map(s -> open(s) ? Altered.step(s, s.day().plusDays(days), s.surfaces()) : s)
            .toList(),
        boat);
  }

  /** Whether a step takes off what lay on a surface (common practice, no source). */
  static boolean strips(Step step) {
    return step.kind() == StepKind.CUT || step.kind() == StepKind.POLISH;
  }

  /** Whether a step lays a coat. */
  static boolean lays(Step step) {
    return step.kind() == StepKind.PROTECT || step.kind() == StepKind.TOP;
  }
}
