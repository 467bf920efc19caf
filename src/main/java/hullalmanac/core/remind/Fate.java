package hullalmanac.core.remind;

import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What became of the things that reminders are about, read from the record on a day. */
record Fate(BoatRows rows, LocalDate today) {
  /**
   * Whether a thing is over: done by a visit, or overtaken; nothing while it is neither.
   *
   * @param since what was done before it is not counted
   */
  Optional<ReminderEvent> of(Reminder.About about, LocalDate since) {
    if (about.coat().isPresent()) {
      return coat(rows.coat(about.coat().get()), since);
    }
    return about.duty().isPresent()
        ? duty(rows.duty(about.duty().get()))
        : turn(rows.plan(about.plan().orElseThrow()), about.by());
  }

  private Optional<ReminderEvent> coat(Coat coat, LocalDate since) {
    if (served(coat, since)) {
      return Optional.of(ReminderEvent.WORK_DONE);
    }
    return ended(coat)
        ? Optional.of(laidByVisit(coat) ? ReminderEvent.WORK_DONE : ReminderEvent.OVERTAKEN)
        : Optional.empty();
  }

  private boolean ended(Coat coat) {
    return rows.service().end(coat).filter(end -> !end.isAfter(today)).isPresent();
  }

  /** Whether a visit of ours laid what followed a coat. */
  private boolean laidByVisit(Coat coat) {
    LocalDate end = rows.service().end(coat).orElseThrow();
    return rows.service().of(coat.surface()).stream()
        .anyMatch(c -> !c.id().equals(coat.id()) && c.since().equals(end) && c.visit().isPresent());
  }

  /** Whether a visit protected the surface of a coat; the washes of a care plan do not. */
  private boolean served(Coat coat, LocalDate since) {
    Id<hullalmanac.core.record.Boat> boat =
        rows.forecast(coat.id()).map(f -> f.surface().boat()).orElse(null);
    return boat != null
        && rows.visits(boat).stream()
            .filter(v -> v.status() == VisitStatus.DONE && v.plan().isEmpty())
            .anyMatch(v -> did(v, coat.surface(), since) && protects(v, coat.surface()));
  }

  private boolean did(Visit visit, Id<Surface> surface, LocalDate since) {
    return visit.surfaces().stream()
        .filter(p -> p.surface().equals(surface) && p.state() == WorkState.DONE)
        .flatMap(p -> p.doneOn().stream())
        .anyMatch(day -> !day.isBefore(since) && !day.isAfter(today));
  }

  /** A visit of which no steps were written down on a surface did what it came for. */
  private boolean protects(Visit visit, Id<Surface> surface) {
    List<Step> on =
        rows.steps(visit).stream()
            .filter(s -> s.surfaces().isEmpty() || s.surfaces().contains(surface))
            .toList();
    return on.isEmpty()
        || on.stream().anyMatch(s -> s.kind() == StepKind.PROTECT || s.kind() == StepKind.TOP);
  }

  private Optional<ReminderEvent> duty(Duty duty) {
    if (duty.doneOn().filter(day -> !day.isAfter(today)).isPresent()) {
      return Optional.of(ReminderEvent.WORK_DONE);
    }
    return ended(rows.coat(duty.coat())) ? Optional.of(ReminderEvent.OVERTAKEN) : Optional.empty();
  }

  /** A turn that long passed is not told any more. */
  private Optional<ReminderEvent> turn(CarePlan plan, LocalDate day) {
    List<Visit> standFor =
        rows.visits(plan.boat()).stream().filter(v -> standsFor(v, plan, day)).toList();
    if (standFor.stream().anyMatch(v -> v.status() == VisitStatus.DONE)) {
      return Optional.of(ReminderEvent.WORK_DONE);
    }
    boolean off =
        standFor.stream().anyMatch(v -> v.status() == VisitStatus.CANCELLED)
            || plan.skips().contains(day)
            || plan.until().filter(until -> !day.isBefore(until)).isPresent()
            || day.plusDays(RemindPractice.ONE_RUN_DAYS).isBefore(today);
    return off ? Optional.of(ReminderEvent.OVERTAKEN) : Optional.empty();
  }

  private static boolean standsFor(Visit visit, CarePlan plan, LocalDate day) {
    return visit.plan().equals(Optional.of(plan.id()))
        && (visit.day().equals(day) || visit.moves().stream().anyMatch(m -> m.from().equals(day)));
  }

  /** The day of a visit to come that will do a thing; the turns of a plan are not agreed by it. */
  Optional<LocalDate> visit(Reminder.About about) {
    if (about.plan().isPresent()) {
      return Optional.empty();
    }
    Id<Coat> id = about.coat().orElseGet(() -> rows.duty(about.duty().orElseThrow()).coat());
    return rows.forecast(id)
        .flatMap(
            f ->
                rows.visits(f.surface().boat()).stream()
                    .filter(v -> v.status() == VisitStatus.PLANNED && v.plan().isEmpty())
                    .filter(v -> !v.day().isBefore(today) && takes(v, f.surface().id()))
                    .map(Visit::day)
                    .min(LocalDate::compareTo));
  }

  private static boolean takes(Visit visit, Id<Surface> surface) {
    return visit.surfaces().isEmpty()
        || visit.surfaces().stream()
            .anyMatch(p -> p.surface().equals(surface) && p.state() != WorkState.LEFT);
  }
}
