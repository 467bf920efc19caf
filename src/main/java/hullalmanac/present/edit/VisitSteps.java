package hullalmanac.present.edit;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Stopwatch;
import hullalmanac.core.work.VisitChange;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.TimedWords;
import hullalmanac.service.Fleet;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The steps of a visit: to write in, to add, to take out, to time. */
final class VisitSteps {
  private final Desk desk;
  private final Id<Visit> visit;
  private final Function<Fleet, List<Surface>> surfaces;
  private final Rows<Step> rows;

  /**
   * @param surfaces of the visit's boat
   */
  VisitSteps(Desk desk, Id<Visit> visit, Function<Fleet, List<Surface>> surfaces) {
    this.desk = desk;
    this.visit = visit;
    this.surfaces = surfaces;
    rows =
        new Rows<>(
            new Rows.Block<>(
                "steps",
                "What was done",
                f -> of(f.almanac()),
                s -> s.id().toString(),
                s -> s.kind().words(),
                this::fields,
                this::written),
            desk);
  }

  Rows<Step> rows() {
    return rows;
  }

  SheetState.Grid grid(Fleet fleet) {
    return rows.grid(fleet, "Nothing was done yet.");
  }

  /** In their order. */
  List<Step> of(Almanac almanac) {
    return almanac.steps().stream()
        .filter(s -> s.visit().equals(visit))
        .sorted(Comparator.comparingInt(Step::order))
        .toList();
  }

  private List<FieldOf<Step>> fields(Fleet fleet) {
    VisitFields make = new VisitFields(new FieldMaker(fleet.almanac().business(), fleet.asOf()));
    List<FieldOf<Step>> fields = new ArrayList<>();
    boolean planned =
        fleet.almanac().visits().stream()
            .anyMatch(v -> v.id().equals(visit) && v.status() == VisitStatus.PLANNED);
    if (planned || of(fleet.almanac()).stream().anyMatch(s -> s.timedSince().isPresent())) {
      fields.add(VisitFields.time(new TimedWords(desk.now())));
    }
    fields.addAll(make.step(fleet.almanac(), surfaces.apply(fleet), now(fleet)));
    return fields;
  }

  private LocalDateTime now(Fleet fleet) {
    return fleet.asOf().atTime(desk.now().toLocalTime());
  }

  /** What the readings kept with the coats of the visit say. */
  List<String> climate(Fleet fleet, Visit of) {
    return ClimateFields.words(fleet.almanac(), of, of(fleet.almanac()), now(fleet));
  }

  private Change written(Almanac almanac, Step now) {
    Instant at = desk.now().toInstant();
    Step before =
        of(almanac).stream().filter(s -> s.id().equals(now.id())).findFirst().orElseThrow();
    return again(almanac, Edit.put(Stopwatch.written(before, now, at)));
  }

  private Change again(Almanac almanac, Edit edit) {
    return VisitChange.of(almanac, desk.ids(), visit, edit);
  }

  private Optional<Step> find(Fleet fleet, String row) {
    return of(fleet.almanac()).stream().filter(s -> s.id().toString().equals(row)).findFirst();
  }

  /** Starts to time a step, or stops it. */
  void press(Fleet fleet, String row) {
    Instant now = desk.now().toInstant();
    find(fleet, row)
        .ifPresent(
            step -> {
              if (step.timedSince().isPresent()) {
                desk.change(
                    step.kind().words() + ", time stopped",
                    almanac -> Stopwatch.stop(almanac, step.id(), now));
              } else {
                desk.change(
                    step.kind().words() + ", time started",
                    almanac -> Stopwatch.start(almanac, step.id(), now));
              }
            });
  }

  /** What is being timed in the visit, in a sentence each. */
  List<String> running(Fleet fleet) {
    TimedWords words = new TimedWords(desk.now());
    return of(fleet.almanac()).stream()
        .flatMap(
            s ->
                words.running(s).stream()
                    .map(running -> Texts.capital(s.kind().words()) + " " + running + "."))
        .toList();
  }

  void remove(Fleet fleet, String row) {
    find(fleet, row)
        .ifPresent(
            step ->
                desk.change(
                    step.kind().words() + " taken out",
                    almanac -> again(almanac, Edit.remove(List.of(step)))));
  }

  void add(Fleet fleet, Visit of) {
    List<Step> before = of(fleet.almanac());
    Optional<Step> last = before.stream().reduce((a, b) -> b);
    Id<Step> id = desk.ids().next();
    Step step =
        new Step(
            id,
            Long.toString(id.value(), Character.MAX_RADIX),
            visit,
            last.map(s -> s.order() + 1).orElse(1),
            last.isEmpty() ? StepKind.WASH : StepKind.OTHER,
            last.map(Step::day).orElse(of.day()),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "");
    desk.change("a step added", almanac -> again(almanac, Edit.put(step)));
  }
}
