package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Plans a visit, empty or like the last one. The first row of each edit is the new visit. */
public final class VisitCopy {
  private final Almanac almanac;
  private final IdSource ids;
  private final NewKeys keys;

  private VisitCopy(Almanac almanac, IdSource ids) {
    this.almanac = almanac;
    this.ids = ids;
    keys = new NewKeys(almanac);
  }

  /** A planned visit without surfaces or steps. */
  public static Edit blank(Almanac almanac, IdSource ids, Id<Boat> boat, LocalDate day) {
    return Edit.put(new VisitCopy(almanac, ids).visit(boat, day, List.of()));
  }

  /**
   * A planned visit with the surfaces and steps of the last visit to the boat that was done;
   * without any when there was none. Minutes, findings and notes are of the day and stay behind,
   * and so does a bottle that is empty or past its use-by.
   *
   * @param day first day of the new visit; steps on later days of the last come as much later
   */
  public static Edit of(Almanac almanac, IdSource ids, Id<Boat> boat, LocalDate day) {
    Optional<Visit> last =
        InRecord.visits(almanac, boat).stream()
            .filter(v -> v.status() == VisitStatus.DONE)
            .max(Comparator.comparing(Visit::day).thenComparing(Visit::id));
    return last.map(v -> new VisitCopy(almanac, ids).like(v, day))
        .orElseGet(() -> blank(almanac, ids, boat, day));
  }

  private Edit like(Visit last, LocalDate day) {
    List<Visit.Part> parts =
        last.surfaces().stream()
            .map(p -> new Visit.Part(p.surface(), WorkState.PLANNED, Optional.empty(), ""))
            .toList();
    Visit visit = visit(last.boat(), day, parts);
    List<Row> put = new ArrayList<>();
    put.add(visit);
    for (Step step : InRecord.steps(almanac, last)) {
      long daysOn = Math.max(0, ChronoUnit.DAYS.between(last.day(), step.day()));
      put.add(step(visit, step, day.plusDays(daysOn)));
    }
    return Edit.put(put);
  }

  private Visit visit(Id<Boat> boat, LocalDate day, List<Visit.Part> parts) {
    return new Visit(
        ids.next(),
        keys.next(Kind.VISIT, InRecord.row(almanac.boats(), boat).key(), day),
        boat,
        day,
        VisitStatus.PLANNED,
        VisitWhy.OTHER,
        Optional.empty(),
        Optional.empty(),
        Handover.NOT_YET,
        parts,
        List.of(),
        "");
  }

  private Step step(Visit visit, Step last, LocalDate day) {
    return new Step(
        ids.next(),
        keys.next(Kind.STEP, visit.key(), last.order()),
        visit.id(),
        last.order(),
        last.kind(),
        day,
        last.surfaces(),
        last.product(),
        last.bottle().filter(b -> usable(InRecord.row(almanac.bottles(), b), day)),
        last.partsWater(),
        last.pad(),
        last.speed(),
        last.passes(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  private static boolean usable(Bottle bottle, LocalDate day) {
    boolean empty = bottle.leftMl().map(ml -> ml == 0).orElse(false);
    boolean past = bottle.useBy().map(day::isAfter).orElse(false);
    return !empty && !past;
  }
}
