package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** The visits that care plans make by themselves. */
public final class PlannedVisits {
  private PlannedVisits() {}

  /**
   * The visits of all care plans that are not in the record yet. A day of a plan for which a visit
   * of that plan stands, whatever became of it, or from which one was moved, makes no other.
   *
   * @param today no visit is made before it
   * @param until the first day for which none is made
   */
  public static Edit edit(Almanac almanac, IdSource ids, LocalDate today, LocalDate until) {
    NewKeys keys = new NewKeys(almanac);
    List<Row> put = new ArrayList<>();
    for (CarePlan plan : almanac.carePlans()) {
      Boat boat = InRecord.row(almanac.boats(), plan.boat());
      if (boat.status() == BoatStatus.ACTIVE) {
        days(plan, today, until)
            .filter(day -> almanac.visits().stream().noneMatch(v -> covers(v, plan, day)))
            .forEach(
                day ->
                    put.add(
                        new Visit(
                            ids.next(),
                            keys.next(Kind.VISIT, boat.key(), day),
                            boat.id(),
                            day,
                            VisitStatus.PLANNED,
                            VisitWhy.PLAN,
                            Optional.of(plan.id()),
                            Optional.empty(),
                            Handover.NOT_YET,
                            List.of(),
                            List.of(),
                            "")));
      }
    }
    return Edit.put(put);
  }

  /**
   * The days of a care plan: every so many weeks from its first day, in its months, but for those
   * agreed to fall out.
   *
   * @param from the first day to look at
   * @param until the first day not to look at
   */
  public static Stream<LocalDate> days(CarePlan plan, LocalDate from, LocalDate until) {
    LocalDate end = plan.until().filter(until::isAfter).orElse(until);
    long weeks = Math.max(0, ChronoUnit.WEEKS.between(plan.from(), from));
    return LongStream.iterate(weeks / plan.everyWeeks(), turn -> turn + 1)
        .mapToObj(turn -> plan.from().plusWeeks(turn * plan.everyWeeks()))
        .takeWhile(day -> day.isBefore(end))
        .filter(day -> !day.isBefore(from))
        .filter(day -> plan.months().contains(day.getMonth()))
        .filter(day -> !plan.skips().contains(day));
  }

  private static boolean covers(Visit visit, CarePlan plan, LocalDate day) {
    return visit.plan().equals(Optional.of(plan.id()))
        && (visit.day().equals(day) || visit.moves().stream().anyMatch(m -> m.from().equals(day)));
  }
}
