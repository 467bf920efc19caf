package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Changes what is written of a visit: its surfaces, what was seen, its steps. Where the visit is
 * done already, the coats that it laid and ended follow; but where these were not written down from
 * its steps (in lists that were brought in), they are left as they are.
 */
public final class VisitChange {
  private final Almanac almanac;
  private final IdSource ids;
  private final Id<Visit> id;

  private VisitChange(Almanac almanac, IdSource ids, Id<Visit> id) {
    this.almanac = almanac;
    this.ids = ids;
    this.id = id;
  }

  /**
   * Makes a change.
   *
   * @param id the visit
   * @param edit of the visit or of rows that belong to it
   */
  public static Change of(Almanac almanac, IdSource ids, Id<Visit> id, Edit edit) {
    return new VisitChange(almanac, ids, id).of(edit);
  }

  private Change of(Edit edit) {
    Change first = Change.checked(almanac, edit);
    Visit before = InRecord.row(almanac.visits(), id);
    if (first instanceof Change.Refused || before.status() != VisitStatus.DONE) {
      return first;
    }
    Visit edited = InRecord.row(almanac.with(edit).visits(), id);
    List<Problem> open = open(before, edited);
    if (!open.isEmpty()) {
      return new Change.Refused(open);
    }
    return fromSteps(before) ? finished(before, edited, edit) : first;
  }

  private boolean fromSteps(Visit done) {
    return VisitFinish.finish(almanac, ids, id, done.day()) instanceof Change.Ready ready
        && ready.edit().isEmpty();
  }

  private Change finished(Visit before, Visit edited, Edit edit) {
    Optional<VisitWork> earlier = Optional.of(VisitWork.of(almanac, before));
    Change change = VisitFinish.finish(almanac.with(edit), ids, id, before.day(), earlier);
    if (!(change instanceof Change.Ready ready)) {
      return change;
    }
    Edit all = edit.and(ready.edit());
    List<Problem> back = back(before, edited, InRecord.row(almanac.with(all).visits(), id));
    return back.isEmpty() ? new Change.Ready(all) : new Change.Refused(back);
  }

  /** Of a visit that is done nothing is planned any more. */
  private List<Problem> open(Visit before, Visit edited) {
    List<Problem> problems = new ArrayList<>();
    for (Visit.Part part : edited.surfaces()) {
      boolean was =
          part(before, part.surface()).filter(p -> p.state() == WorkState.PLANNED).isPresent();
      if (part.state() == WorkState.PLANNED && !was) {
        problems.add(
            problem(
                before,
                words(part.surface()) + ": the visit was done, and nothing is planned in it",
                "Write done, or left and why"));
      }
    }
    return problems;
  }

  /** A surface that was taken out and is in it again, because a step is of it. */
  private List<Problem> back(Visit before, Visit edited, Visit after) {
    return after.surfaces().stream()
        .map(Visit.Part::surface)
        .filter(s -> part(before, s).isPresent() && part(edited, s).isEmpty())
        .map(
            s ->
                problem(
                    before,
                    words(s) + ": a step of the visit was done there",
                    "Write left and why, or take the surface out of the step"))
        .toList();
  }

  private static Optional<Visit.Part> part(Visit visit, Id<Surface> surface) {
    return visit.surfaces().stream().filter(p -> p.surface().equals(surface)).findFirst();
  }

  private String words(Id<Surface> surface) {
    return InRecord.row(almanac.surfaces(), surface).words();
  }

  private static Problem problem(Visit visit, String message, String advice) {
    return new Problem(Kind.VISIT, visit.key(), "surface", message, advice);
  }
}
