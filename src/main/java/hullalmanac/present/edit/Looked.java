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
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.ArrayList;
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
 * @param state the state it was in when it was looked at
 * @param seen by kind of observation, one of each
 * @param note of the surface in the visit
 */
public record Looked(
    Visit visit,
    Surface surface,
    Optional<WorkState> work,
    SurfaceState state,
    Map<String, Observation> seen,
    String note) {
  public Looked {
    seen = Map.copyOf(seen);
  }

  /** All surfaces of a visit's boat, as they stand in the visit. */
  static List<Looked> all(Almanac almanac, Visit visit) {
    Map<Id<Surface>, Visit.Part> parts =
        visit.surfaces().stream()
            .collect(Collectors.toMap(Visit.Part::surface, Function.identity(), (a, b) -> b));
    Map<Id<Surface>, List<Finding>> findings =
        almanac.findings().stream()
            .filter(f -> f.visit().equals(Optional.of(visit.id())))
            .collect(Collectors.groupingBy(Finding::surface));
    SurfaceState usual = usualState(almanac, visit);
    return almanac.surfaces().stream()
        .filter(s -> s.boat().equals(visit.boat()))
        .sorted(BoatSheet.IN_ORDER)
        .map(s -> of(visit, s, parts.get(s.id()), findings.getOrDefault(s.id(), List.of()), usual))
        .toList();
  }

  /** Washed where the visit washes, dirty else; to be corrected where it was otherwise. */
  private static SurfaceState usualState(Almanac almanac, Visit visit) {
    boolean washes =
        almanac.steps().stream()
            .filter(s -> s.visit().equals(visit.id()))
            .map(Step::kind)
            .anyMatch(k -> k == StepKind.WASH);
    return washes ? SurfaceState.WASHED : SurfaceState.DIRTY;
  }

  private static Looked of(
      Visit visit, Surface surface, Visit.Part part, List<Finding> findings, SurfaceState usual) {
    Map<String, Observation> seen = new TreeMap<>();
    findings.forEach(f -> seen.put(f.seen().what(), f.seen()));
    return new Looked(
        visit,
        surface,
        Optional.ofNullable(part).map(Visit.Part::state),
        findings.isEmpty() ? usual : findings.get(0).state(),
        seen,
        part == null ? "" : part.note());
  }

  /** The same with another observation of a kind, or none. */
  Looked with(String what, Optional<Observation> observation) {
    Map<String, Observation> now = new TreeMap<>(seen);
    observation.ifPresentOrElse(o -> now.put(what, o), () -> now.remove(what));
    return new Looked(visit, surface, work, state, now, note);
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
    List<Visit.Part> parts = new ArrayList<>();
    boolean found = false;
    for (Visit.Part part : now.surfaces()) {
      if (!part.surface().equals(surface.id())) {
        parts.add(part);
      } else if (work.isPresent()) {
        parts.add(part(part.doneOn().orElse(now.day())));
        found = true;
      }
    }
    if (!found && work.isPresent()) {
      parts.add(part(now.day()));
    }
    return hullalmanac.core.record.With.component(now, "surfaces", parts);
  }

  private Visit.Part part(LocalDate day) {
    WorkState state = work.orElseThrow();
    return new Visit.Part(
        surface.id(), state, state == WorkState.DONE ? Optional.of(day) : Optional.empty(), note);
  }
}
