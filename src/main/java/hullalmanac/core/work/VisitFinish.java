package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Finishes a visit: what was planned in it is done, its steps have laid coats, and coats that were
 * in service have ended.
 *
 * <p>Common practice, no source:
 *
 * <ul>
 *   <li>Cutting and polishing take off what lies on a surface, on their own day. Decontaminating
 *       alone costs a coat life, and its clock counts that; before a new coat it counts as taking
 *       off the old one.
 *   <li>A topper ends toppers; a base coat ends all that lies there.
 *   <li>What water did on a surface in the visit was seen before a new coat was laid, and of the
 *       topper where there was one.
 * </ul>
 *
 * <p>It can be done again after a step was corrected: coats keep their identity, what the visit did
 * not do after all is taken back.
 */
public final class VisitFinish {
  private final Visit visit;
  private final LocalDate day;
  private final VisitWork planned;
  private final VisitWork work;
  private final List<Visit.Part> parts;
  private final CoatsOfVisit coats;

  private VisitFinish(
      Almanac almanac, IdSource ids, Visit visit, LocalDate day, Optional<VisitWork> earlier) {
    this.visit = visit;
    this.day = day;
    planned = VisitWork.of(almanac, visit);
    work = planned.later(daysLate());
    parts = parts();
    coats = new CoatsOfVisit(almanac, ids, visit, earlier);
    for (Visit.Part part : parts) {
      part.doneOn()
          .ifPresent(
              on ->
                  coats.treat(
                      InRecord.row(almanac.surfaces(), part.surface()),
                      Treatment.of(work, part.surface(), on)));
    }
  }

  /**
   * Finishes a visit.
   *
   * @param day on which what was still open was done, unless its steps have days of their own: when
   *     it lies before or after all of them, the last of what is open falls on it and the rest
   *     moves along
   */
  public static Change finish(Almanac almanac, IdSource ids, Id<Visit> id, LocalDate day) {
    return finish(almanac, ids, id, day, Optional.empty());
  }

  /**
   * Finishes a visit.
   *
   * @param earlier its work as it was before something of it was changed; for a visit that was
   *     finished already
   */
  static Change finish(
      Almanac almanac, IdSource ids, Id<Visit> id, LocalDate day, Optional<VisitWork> earlier) {
    Visit visit = InRecord.row(almanac.visits(), id);
    if (visit.status() == VisitStatus.CANCELLED) {
      return Change.refused(
          new Problem(
              Kind.VISIT,
              visit.key(),
              "status",
              "the visit was cancelled",
              "Plan it again before you write down what was done"));
    }
    VisitFinish finish = new VisitFinish(almanac, ids, visit, day, earlier);
    List<Problem> problems = finish.coats.problems();
    return problems.isEmpty()
        ? Change.checked(almanac, finish.edit())
        : new Change.Refused(problems);
  }

  /**
   * Surfaces on which finishing the visit ends a coat of which nobody wrote down what water did: to
   * be asked, as far as somebody looked, before it is finished.
   */
  public static List<Surface> questions(Almanac almanac, Id<Visit> id, LocalDate day) {
    Visit visit = InRecord.row(almanac.visits(), id);
    return visit.status() == VisitStatus.CANCELLED
        ? List.of()
        : new VisitFinish(almanac, notKept(), visit, day, Optional.empty()).coats.notLooked();
  }

  /** Ids of rows that are thrown away again. */
  private static IdSource notKept() {
    return new IdSource(LongStream.iterate(-2, last -> last - 2).iterator()::nextLong);
  }

  private long daysLate() {
    Optional<LocalDate> first =
        planned.steps().stream().map(Step::day).min(Comparator.naturalOrder());
    Optional<LocalDate> last =
        planned.steps().stream().map(Step::day).max(Comparator.naturalOrder());
    Optional<LocalDate> lastOpen =
        planned.steps().stream()
            .filter(planned::open)
            .map(Step::day)
            .max(Comparator.naturalOrder());
    if (visit.status() != VisitStatus.PLANNED || lastOpen.isEmpty()) {
      return 0;
    }
    boolean within = !day.isBefore(first.orElseThrow()) && !day.isAfter(last.orElseThrow());
    return within ? 0 : ChronoUnit.DAYS.between(lastOpen.get(), day);
  }

  private List<Visit.Part> parts() {
    List<Visit.Part> all = new ArrayList<>();
    Set<Id<Surface>> missing = new LinkedHashSet<>();
    for (Step step : work.steps()) {
      missing.addAll(visit.surfaces().isEmpty() ? work.surfaces(step) : step.surfaces());
    }
    for (Visit.Part part : visit.surfaces()) {
      missing.remove(part.surface());
      all.add(part.state() == WorkState.PLANNED ? done(part.surface(), part.note()) : part);
    }
    work.boat().stream().filter(missing::contains).forEach(s -> all.add(done(s, "")));
    return all;
  }

  private Visit.Part done(Id<Surface> surface, String note) {
    return new Visit.Part(surface, WorkState.DONE, Optional.of(doneOn(surface)), note);
  }

  /**
   * The day of the last step on a surface; but when that step was done elsewhere before, the day of
   * finishing.
   */
  private LocalDate doneOn(Id<Surface> surface) {
    Optional<LocalDate> last = work.lastDay(surface);
    boolean doneElsewhere =
        work.on(surface).stream()
            .filter(s -> last.equals(Optional.of(s.day())))
            .anyMatch(s -> !work.open(s));
    return doneElsewhere ? day : last.orElse(day);
  }

  private Edit edit() {
    List<Row> put = new ArrayList<>();
    Visit finished = finished();
    if (!finished.equals(visit)) {
      put.add(finished);
    }
    work.steps().stream().filter(s -> !planned.steps().contains(s)).forEach(put::add);
    put.addAll(coats.changed());
    return Edit.put(put).and(Edit.remove(coats.gone()));
  }

  private Visit finished() {
    LocalDate first =
        Stream.concat(
                work.steps().stream().map(Step::day),
                parts.stream().flatMap(p -> p.doneOn().stream()))
            .min(Comparator.naturalOrder())
            .orElse(day);
    boolean otherDay =
        visit.status() == VisitStatus.PLANNED
            && planned.done().isEmpty()
            && !first.equals(visit.day());
    Visit moved = otherDay ? Altered.moved(visit, first, MoveReason.SELF) : visit;
    return Altered.done(moved, first, parts);
  }
}
