package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** Moves a planned visit to another day, or cancels it. */
public final class VisitMove {
  private VisitMove() {}

  /**
   * Moves a visit, and with it the steps of which nothing was done yet.
   *
   * @param day the new planned day
   */
  public static Change move(Almanac almanac, Visit visit, LocalDate day, MoveReason reason) {
    if (visit.status() != VisitStatus.PLANNED) {
      return Change.refused(
          problem(
              visit,
              "day",
              "the visit was " + visit.status().words() + " and is not to be moved",
              "Plan a new visit"));
    }
    if (day.equals(visit.day())) {
      return new Change.Ready(Edit.put(List.of()));
    }
    VisitWork planned = VisitWork.of(almanac, visit);
    List<Step> later = planned.later(ChronoUnit.DAYS.between(visit.day(), day)).steps();
    List<Row> put = new ArrayList<>();
    put.add(Altered.moved(visit, day, reason));
    later.stream().filter(s -> !planned.steps().contains(s)).forEach(put::add);
    return new Change.Ready(Edit.put(put));
  }

  /** Cancels a visit of which nothing was done yet. */
  public static Change cancel(Almanac almanac, Visit visit, MoveReason reason) {
    if (visit.status() == VisitStatus.DONE) {
      return Change.refused(
          problem(visit, "status", "the visit was done", "Take it out if it never took place"));
    }
    if (!VisitWork.of(almanac, visit).done().isEmpty()) {
      return Change.refused(
          problem(
              visit,
              "status",
              "some of the visit was done already",
              "Mark the rest as left and finish it"));
    }
    return new Change.Ready(Edit.put(Altered.cancelled(visit, reason)));
  }

  private static Problem problem(Visit visit, String field, String message, String advice) {
    return new Problem(Kind.VISIT, visit.key(), field, message, advice);
  }
}
