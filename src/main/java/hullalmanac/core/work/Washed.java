package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.InService;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * "Washed, all fine" in two touches: a boat was washed on a day as it was washed the last time.
 * That alone is no look at its coats; what water did is one when somebody says it.
 */
public final class Washed {
  /** A planned visit of a care plan so many days before or after is the one that was meant. */
  private static final int NEAR_DAYS = 10;

  private final Almanac almanac;
  private final IdSource ids;
  private final NewKeys keys;
  private final Boat boat;
  private final LocalDate day;

  private Washed(Almanac almanac, IdSource ids, Boat boat, LocalDate day) {
    this.almanac = almanac;
    this.ids = ids;
    keys = new NewKeys(almanac);
    this.boat = boat;
    this.day = day;
  }

  /**
   * Writes a wash down. The planned visit of a care plan nearest the day, within ten days, is it,
   * unless more than a wash was planned in it; else it is a new visit. Where a wash of that day is
   * written down already, it is that one.
   *
   * @param look what water did all over the boat, if anybody looked
   */
  public static Edit edit(
      Almanac almanac, IdSource ids, Id<Boat> boat, LocalDate day, Optional<WaterBehaviour> look) {
    Boat washed = InRecord.row(almanac.boats(), boat);
    return new Washed(almanac, ids, washed, day).edit(look);
  }

  private Edit edit(Optional<WaterBehaviour> look) {
    List<Row> put = new ArrayList<>();
    Optional<Visit> written = written();
    Visit visit = written.or(() -> planned().map(this::done)).orElseGet(this::newVisit);
    if (written.isEmpty()) {
      put.add(visit);
    }
    List<Step> steps = InRecord.steps(almanac, visit);
    if (steps.isEmpty()) {
      steps = List.of(wash(visit));
      put.addAll(steps);
    } else if (written.isEmpty()) {
      steps.stream()
          .filter(s -> !s.day().equals(day))
          .forEach(s -> put.add(Altered.step(s, day, s.surfaces())));
    }
    SurfaceState state = state(steps);
    look.ifPresent(seen -> put.addAll(findings(visit, seen, state)));
    return Edit.put(put);
  }

  /** A wash of the day, and nothing but a wash, that is in the record already. */
  private Optional<Visit> written() {
    return InRecord.visits(almanac, boat.id()).stream()
        .filter(v -> v.status() == VisitStatus.DONE && v.day().equals(day))
        .filter(v -> !InRecord.steps(almanac, v).isEmpty() && onlyWash(v))
        .min(Comparator.comparing(Visit::id));
  }

  private Optional<Visit> planned() {
    return InRecord.visits(almanac, boat.id()).stream()
        .filter(v -> v.status() == VisitStatus.PLANNED && v.plan().isPresent())
        .filter(v -> off(v) <= NEAR_DAYS && onlyWash(v))
        .min(Comparator.comparing(this::off).thenComparing(Visit::day).thenComparing(Visit::id));
  }

  private long off(Visit visit) {
    return Math.abs(ChronoUnit.DAYS.between(visit.day(), day));
  }

  private boolean onlyWash(Visit visit) {
    return InRecord.steps(almanac, visit).stream().allMatch(s -> s.kind() == StepKind.WASH);
  }

  private Visit done(Visit planned) {
    List<Visit.Part> parts =
        planned.surfaces().stream()
            .map(
                p ->
                    p.state() == WorkState.PLANNED
                        ? new Visit.Part(p.surface(), WorkState.DONE, Optional.of(day), p.note())
                        : p)
            .toList();
    Visit moved =
        planned.day().equals(day) ? planned : Altered.moved(planned, day, MoveReason.SELF);
    return Altered.done(moved, day, parts);
  }

  private Visit newVisit() {
    return new Visit(
        ids.next(),
        keys.next(Kind.VISIT, boat.key(), day),
        boat.id(),
        day,
        VisitStatus.DONE,
        VisitWhy.OTHER,
        Optional.empty(),
        Optional.empty(),
        Handover.NOT_YET,
        List.of(),
        List.of(),
        "");
  }

  private Step wash(Visit visit) {
    Optional<Step> last = lastWash();
    return new Step(
        ids.next(),
        keys.next(Kind.STEP, visit.key(), 1),
        visit.id(),
        1,
        StepKind.WASH,
        day,
        List.of(),
        last.flatMap(Step::product),
        Optional.empty(),
        last.flatMap(Step::partsWater),
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  /** The last wash of the boat up to the day that says with what. */
  private Optional<Step> lastWash() {
    return InRecord.visits(almanac, boat.id()).stream()
        .filter(v -> v.status() == VisitStatus.DONE)
        .flatMap(v -> InRecord.steps(almanac, v).stream())
        .filter(s -> s.kind() == StepKind.WASH && s.product().isPresent())
        .filter(s -> !s.day().isAfter(day))
        .max(InRecord.IN_ORDER);
  }

  /** A soap that leaves wax makes water bead whatever the coat. */
  private SurfaceState state(List<Step> washes) {
    boolean waxy =
        washes.stream()
            .flatMap(s -> s.product().stream())
            .map(p -> InRecord.row(almanac.products(), p))
            .anyMatch(Product::leavesWax);
    return waxy ? SurfaceState.WAXY_SOAP : SurfaceState.WASHED;
  }

  private List<Finding> findings(Visit visit, WaterBehaviour seen, SurfaceState state) {
    InService coats = new InService(almanac.coats());
    return InRecord.surfaces(almanac, boat.id()).stream()
        .filter(s -> !coats.on(s.id(), day).isEmpty())
        .filter(s -> almanac.findings().stream().noneMatch(f -> isLook(f, visit, s)))
        .map(
            s ->
                new Finding(
                    ids.next(),
                    keys.next(Kind.FINDING, s.key(), day, "water"),
                    s.id(),
                    Optional.of(visit.id()),
                    day,
                    state,
                    Entered.TWO_TOUCH,
                    new Observation.WaterSeen(seen),
                    ""))
        .toList();
  }

  private static boolean isLook(Finding finding, Visit visit, Surface surface) {
    return finding.visit().equals(Optional.of(visit.id()))
        && finding.surface().equals(surface.id())
        && finding.seen() instanceof Observation.WaterSeen;
  }
}
