package hullalmanac.core.remind;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.InService;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The rows of a record that reminders are read from, found by the boat. */
final class BoatRows {
  /** Who decides hears it, otherwise the owner, who pays, and whoever else there is. */
  private static final List<RoleKind> TOLD_FIRST =
      List.of(RoleKind.DECIDES, RoleKind.OWNS, RoleKind.PAYS);

  private final Map<Id<Coat>, Coat> coats;
  private final Map<Id<Duty>, Duty> duties;
  private final Map<Id<CarePlan>, CarePlan> plans;
  private final Map<Id<Party>, Party> parties;
  private final Map<Id<Coat>, CoatForecast> forecasts = new HashMap<>();
  private final InService service;
  private final Map<Id<Boat>, List<Reminder>> reminders;
  private final Map<Id<Boat>, List<Visit>> visits;
  private final Map<Id<Boat>, List<Role>> roles;
  private final Map<Id<Boat>, List<CarePlan>> plansOf;
  private final Map<Id<Boat>, List<Duty>> dutiesOf;
  private final Map<Id<Visit>, List<Step>> steps;
  private final Map<Id<Surface>, List<Finding>> findings;

  BoatRows(Almanac almanac, List<CoatForecast> inService) {
    coats = byId(almanac.coats(), Coat::id);
    duties = byId(almanac.duties(), Duty::id);
    plans = byId(almanac.carePlans(), CarePlan::id);
    parties = byId(almanac.parties(), Party::id);
    inService.forEach(f -> forecasts.put(f.coat().id(), f));
    service = new InService(almanac.coats());
    reminders = almanac.reminders().stream().collect(Collectors.groupingBy(Reminder::boat));
    visits = almanac.visits().stream().collect(Collectors.groupingBy(Visit::boat));
    roles = almanac.roles().stream().collect(Collectors.groupingBy(Role::boat));
    plansOf = almanac.carePlans().stream().collect(Collectors.groupingBy(CarePlan::boat));
    steps = almanac.steps().stream().collect(Collectors.groupingBy(Step::visit));
    findings = almanac.findings().stream().collect(Collectors.groupingBy(Finding::surface));
    Map<Id<Surface>, Surface> surfaces = byId(almanac.surfaces(), Surface::id);
    dutiesOf =
        almanac.duties().stream()
            .filter(d -> coats.containsKey(d.coat()))
            .collect(
                Collectors.groupingBy(d -> surfaces.get(coats.get(d.coat()).surface()).boat()));
  }

  private static <R extends Row> Map<Id<R>, R> byId(List<R> rows, Function<R, Id<R>> id) {
    return rows.stream().collect(Collectors.toMap(id, Function.identity()));
  }

  Coat coat(Id<Coat> id) {
    return coats.get(id);
  }

  Duty duty(Id<Duty> id) {
    return duties.get(id);
  }

  CarePlan plan(Id<CarePlan> id) {
    return plans.get(id);
  }

  Optional<CoatForecast> forecast(Id<Coat> coat) {
    return Optional.ofNullable(forecasts.get(coat));
  }

  InService service() {
    return service;
  }

  /** Reminders of a boat of which something was said up to a day, the oldest first. */
  List<Reminder> reminders(Id<Boat> boat, LocalDate day) {
    return reminders.getOrDefault(boat, List.of()).stream()
        .filter(r -> !r.since().isAfter(day))
        .sorted(Comparator.comparing(Reminder::since).thenComparing(Reminder::id))
        .toList();
  }

  List<Visit> visits(Id<Boat> boat) {
    return visits.getOrDefault(boat, List.of());
  }

  List<CarePlan> plansOf(Id<Boat> boat) {
    return plansOf.getOrDefault(boat, List.of());
  }

  List<Duty> dutiesOf(Id<Boat> boat) {
    return dutiesOf.getOrDefault(boat, List.of());
  }

  List<Step> steps(Visit visit) {
    return steps.getOrDefault(visit.id(), List.of());
  }

  /** The newest finding on a surface after one day, up to another. */
  Optional<Finding> newest(Id<Surface> surface, LocalDate after, LocalDate upTo) {
    return findings.getOrDefault(surface, List.of()).stream()
        .filter(f -> f.day().isAfter(after) && !f.day().isAfter(upTo))
        .max(Comparator.comparing(Finding::day).thenComparing(Finding::id));
  }

  /** Whether a party has to do with a boat on a day. */
  boolean hasToDo(Id<Party> party, Id<Boat> boat, LocalDate day) {
    return roles.getOrDefault(boat, List.of()).stream()
        .anyMatch(r -> r.party().equals(party) && r.holdsOn(day));
  }

  /** Who is told of a boat on a day. */
  Optional<Party> whom(Id<Boat> boat, LocalDate day) {
    return roles.getOrDefault(boat, List.of()).stream()
        .filter(r -> r.holdsOn(day))
        .min(
            Comparator.comparing((Role r) -> rank(r.kind()))
                .thenComparing(Role::from, Comparator.reverseOrder())
                .thenComparing(Role::id))
        .map(r -> parties.get(r.party()));
  }

  Optional<Party> party(Optional<Id<Party>> id) {
    return id.map(parties::get);
  }

  private static int rank(RoleKind kind) {
    int place = TOLD_FIRST.indexOf(kind);
    return place < 0 ? TOLD_FIRST.size() : place;
  }
}
