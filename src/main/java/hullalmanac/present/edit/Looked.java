package hullalmanac.present.edit;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A surface in a visit: what became of it, and what was seen there.
 *
 * @param work what became of it; absent when it was no part of the visit
 * @param doneOn the day on which it was done, only when it was
 * @param usualDay on which it was done where nobody says otherwise
 * @param state the state it was in when it was looked at
 * @param seen by kind of observation, one of each
 * @param note of the surface in the visit
 */
public record Looked(
    Visit visit,
    Surface surface,
    Optional<WorkState> work,
    Optional<LocalDate> doneOn,
    LocalDate usualDay,
    SurfaceState state,
    Map<String, Observation> seen,
    String note) {
  public Looked {
    seen = Map.copyOf(seen);
  }

  /**
   * All surfaces of a visit's boat, as they stand in the visit.
   *
   * @param today on which, at the latest, a surface was done
   */
  static List<Looked> all(Almanac almanac, Visit visit, LocalDate today) {
    Map<Id<Surface>, Visit.Part> parts =
        visit.surfaces().stream()
            .collect(Collectors.toMap(Visit.Part::surface, Function.identity(), (a, b) -> b));
    Map<Id<Surface>, List<Finding>> findings =
        almanac.findings().stream()
            .filter(f -> f.visit().equals(Optional.of(visit.id())))
            .collect(Collectors.groupingBy(Finding::surface));
    Usual usual = Usual.of(almanac, visit, today);
    return almanac.surfaces().stream()
        .filter(s -> s.boat().equals(visit.boat()))
        .sorted(BoatSheet.IN_ORDER)
        .map(s -> of(s, parts.get(s.id()), findings.getOrDefault(s.id(), List.of()), usual))
        .toList();
  }

  /**
   * What is taken where nobody says otherwise.
   *
   * @param steps of the visit
   */
  private record Usual(Visit visit, List<Step> steps, LocalDate today) {
    static Usual of(Almanac almanac, Visit visit, LocalDate today) {
      return new Usual(
          visit,
          almanac.steps().stream().filter(s -> s.visit().equals(visit.id())).toList(),
          today);
    }

    /** Washed where the visit washes, dirty else; to be corrected where it was otherwise. */
    SurfaceState state() {
      boolean washes = steps.stream().map(Step::kind).anyMatch(k -> k == StepKind.WASH);
      return washes ? SurfaceState.WASHED : SurfaceState.DIRTY;
    }

    /**
     * The day of the last step on a surface, the first day of the visit where none is; but not one
     * that is still to come.
     */
    LocalDate day(Surface surface) {
      LocalDate last =
          steps.stream()
              .filter(s -> s.surfaces().isEmpty() || s.surfaces().contains(surface.id()))
              .map(Step::day)
              .max(Comparator.naturalOrder())
              .orElse(visit.day());
      return last.isAfter(today) ? today : last;
    }
  }

  private static Looked of(Surface surface, Visit.Part part, List<Finding> findings, Usual usual) {
    Map<String, Observation> seen = new TreeMap<>();
    findings.forEach(f -> seen.put(f.seen().what(), f.seen()));
    return new Looked(
        usual.visit(),
        surface,
        Optional.ofNullable(part).map(Visit.Part::state),
        Optional.ofNullable(part).flatMap(Visit.Part::doneOn),
        usual.day(surface),
        findings.isEmpty() ? usual.state() : findings.get(0).state(),
        seen,
        part == null ? "" : part.note());
  }

  /** The same with another state of the work; what was done has a day. */
  Looked worked(Optional<WorkState> now) {
    boolean done = now.equals(Optional.of(WorkState.DONE));
    return workedOn(now, done ? doneOn.or(() -> Optional.of(usualDay)) : Optional.empty());
  }

  /** The same, done on a day. */
  Looked doneOn(LocalDate day) {
    return workedOn(Optional.of(WorkState.DONE), Optional.of(day));
  }

  private Looked workedOn(Optional<WorkState> now, Optional<LocalDate> day) {
    return With.component(With.component(this, "work", now), "doneOn", day);
  }

  /** The same with another observation of a kind, or none. */
  Looked with(String what, Optional<Observation> observation) {
    Map<String, Observation> now = new TreeMap<>(seen);
    observation.ifPresentOrElse(o -> now.put(what, o), () -> now.remove(what));
    return new Looked(visit, surface, work, doneOn, usualDay, state, now, note);
  }

  /** What changes the record into one in which the surface stands so. */
  Edit edit(Almanac almanac, IdSource ids) {
    Visit now =
        almanac.visits().stream().filter(v -> v.id().equals(visit.id())).findFirst().orElseThrow();
    List<Row> put = new ArrayList<>();
    List<Row> gone = new ArrayList<>();
    Visit withPart = withPart(now);
    if (!withPart.equals(now)) {
      put.add(withPart);
    }
    Map<String, Finding> before = new TreeMap<>();
    almanac.findings().stream()
        .filter(f -> f.visit().equals(Optional.of(visit.id())))
        .filter(f -> f.surface().equals(surface.id()))
        .forEach(f -> before.put(f.seen().what(), f));
    seen.forEach(
        (what, observation) -> put.add(finding(before.get(what), observation, now.day(), ids)));
    before.forEach(
        (what, finding) -> {
          if (!seen.containsKey(what)) {
            gone.add(finding);
          }
        });
    return new Edit(Optional.empty(), put, gone);
  }

  private Finding finding(Finding before, Observation observation, LocalDate day, IdSource ids) {
    Id<Finding> id = before == null ? ids.next() : before.id();
    return new Finding(
        id,
        before == null ? Long.toString(id.value(), Character.MAX_RADIX) : before.key(),
        surface.id(),
        Optional.of(visit.id()),
        before == null ? day : before.day(),
        before == null ? Optional.empty() : before.moment(),
        state,
        before == null ? Entered.GRID : before.entered(),
        observation,
        before == null ? "" : before.note());
  }

  private Visit withPart(Visit now) {
    Optional<Visit.Part> mine =
        work.map(state -> new Visit.Part(surface.id(), state, doneOn, note));
    List<Visit.Part> parts = new ArrayList<>();
    boolean found = false;
    for (Visit.Part part : now.surfaces()) {
      if (!part.surface().equals(surface.id())) {
        parts.add(part);
      } else {
        mine.ifPresent(parts::add);
        found = true;
      }
    }
    if (!found) {
      mine.ifPresent(parts::add);
    }
    return With.component(now, "surfaces", parts);
  }
}
