package hullalmanac.present.ahead;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.present.Invitation;
import hullalmanac.present.ahead.AheadState.Aside;
import hullalmanac.present.ahead.AheadState.Line;
import hullalmanac.present.ahead.AheadState.Row;
import hullalmanac.present.words.NumberWords;
import hullalmanac.service.Fleet;
import hullalmanac.service.ToTell;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What needs doing now, read from the top. */
public final class AheadPresenter {
  private static final int LOOKED_WITHIN_DAYS = 120;

  /** As many rows as one reads at a time; more of them would only keep the window busy. */
  private static final int ROWS_AT_A_TIME = 80;

  private static final DateTimeFormatter WEEKDAY =
      DateTimeFormatter.ofPattern("EEEE, d MMM", Locale.ENGLISH);

  private final Ways ways;
  private Consumer<AheadState> view = s -> {};
  private AheadState state = AheadState.waiting();
  private Optional<Fleet> fleet = Optional.empty();
  private String harbour = AheadState.ALL;
  private int wanted = ROWS_AT_A_TIME;
  private boolean asTable;

  /**
   * Where one goes from here.
   *
   * @param openBoat shows a boat's page
   * @param remind opens what her owner is to be told
   * @param tellAll opens the sheet for one letter to all who are to be told
   * @param onPaper opens what is due as it would be printed
   * @param newBoat opens the sheet for a boat from a phone call
   * @param openList opens the sheet that brings a list in
   * @param catchUp opens the evening catch-up
   */
  public record Ways(
      Consumer<Id<Boat>> openBoat,
      Consumer<Id<Boat>> remind,
      Runnable tellAll,
      Runnable onPaper,
      Runnable newBoat,
      Runnable openList,
      Runnable catchUp) {}

  public AheadPresenter(Ways ways) {
    this.ways = ways;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<AheadState> view) {
    this.view = view;
    view.accept(state);
  }

  /** Shows a fleet. */
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    publish();
  }

  /** Shows the boats of one harbour, or of all. */
  public void chooseHarbour(String harbour) {
    this.harbour = harbour;
    wanted = ROWS_AT_A_TIME;
    publish();
  }

  /** Shows more rows, where there are more. */
  public void showMore() {
    wanted += ROWS_AT_A_TIME;
    publish();
  }

  /** Shows the boats of one harbour; stays as it is where the record has no such harbour. */
  public void chooseHarbour(Id<Harbour> wanted) {
    fleet.stream()
        .flatMap(f -> f.almanac().harbours().stream())
        .filter(h -> h.id().equals(wanted))
        .findFirst()
        .ifPresent(h -> chooseHarbour(h.name()));
  }

  /** Shows the rows as a table, or as they are. */
  public void asTable(boolean now) {
    asTable = now;
    publish();
  }

  /** Opens a boat's page. */
  public void open(Id<Boat> boat) {
    ways.openBoat().accept(boat);
  }

  /** Opens what the owner of a boat is to be told. */
  public void remind(Id<Boat> boat) {
    ways.remind().accept(boat);
  }

  /** Opens the sheet for one letter to all who are to be told. */
  public void tellAll() {
    ways.tellAll().run();
  }

  /** Opens what is due, by harbour, as it would be printed. */
  public void onPaper() {
    ways.onPaper().run();
  }

  /** Opens the evening catch-up. */
  public void catchUp() {
    ways.catchUp().run();
  }

  private void publish() {
    if (fleet.isPresent()) {
      state = stateOf(fleet.get());
      view.accept(state);
    }
  }

  private AheadState stateOf(Fleet fleet) {
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    List<Row> due = new ArrayList<>();
    List<Row> later = new ArrayList<>();
    rows(fleet, lookups, due, later);
    List<String> harbours =
        Stream.concat(
                Stream.of(AheadState.ALL),
                fleet.almanac().harbours().stream().map(Harbour::name).sorted())
            .toList();
    return new AheadState(
        DateWords.full(fleet.asOf()),
        summary(due, later, weeks(fleet), withoutCoat(fleet, lookups)),
        fleet.asOf(),
        harbours,
        harbour,
        due.subList(0, Math.min(wanted, due.size())),
        later.subList(0, Math.max(0, Math.min(wanted - due.size(), later.size()))),
        ToTell.of(fleet).boats().size(),
        beside(fleet, lookups),
        table(due, later, fleet.asOf()),
        part(due.size() + later.size()),
        due.isEmpty() && later.isEmpty() ? Optional.of(invitation(fleet)) : Optional.empty());
  }

  private Invitation invitation(Fleet fleet) {
    if (fleet.almanac().boats().isEmpty()) {
      return new Invitation(
          "Begin with a boat",
          "Write the first one down as her owner calls: name, phone, boat, length, harbour. What is"
              + " laid on her later stands here before it runs out. A list that you have comes in as"
              + " it is: CSV, .xlsx or pasted.",
          "New boat",
          "Bring a list in …");
    }
    if (!harbour.equals(AheadState.ALL)) {
      return new Invitation(
          "Nothing lies ahead at " + harbour,
          "No boat that lies there has a coat in service.",
          AheadState.ALL);
    }
    return new Invitation(
        "Lay the first coat",
        "A visit in which something is protected lays a coat, and from then on its day stands here."
            + " Begin one on a boat’s page.",
        "Open " + fleet.almanac().boats().get(0).name());
  }

  /** Does what the invitation says. */
  public void accept() {
    if (fleet.isEmpty() || fleet.get().almanac().boats().isEmpty()) {
      ways.newBoat().run();
    } else if (!harbour.equals(AheadState.ALL)) {
      chooseHarbour(AheadState.ALL);
    } else {
      ways.openBoat().accept(fleet.get().almanac().boats().get(0).id());
    }
  }

  /** Does the other thing that the invitation offers. */
  public void acceptOther() {
    ways.openList().run();
  }

  private String part(int all) {
    return all <= wanted ? "" : String.format(Locale.ENGLISH, "%d of %,d are shown.", wanted, all);
  }

  private Optional<AheadTable> table(List<Row> due, List<Row> later, LocalDate today) {
    List<Row> all = Stream.concat(due.stream(), later.stream()).toList();
    return asTable && !all.isEmpty() ? Optional.of(AheadTable.of(all, today)) : Optional.empty();
  }

  private static int weeks(Fleet fleet) {
    return fleet.almanac().business().habits().leadWeeks();
  }

  /** How many boats in care lie here of which no coat in service is known. */
  private int withoutCoat(Fleet fleet, Lookups lookups) {
    Set<Id<Boat>> coated = fleet.due().stream().map(d -> d.boat().id()).collect(Collectors.toSet());
    return (int)
        fleet.almanac().boats().stream()
            .filter(b -> b.status() == BoatStatus.ACTIVE && here(lookups, b.id()))
            .filter(b -> !coated.contains(b.id()))
            .count();
  }

  private static String summary(List<Row> due, List<Row> later, int weeks, int withoutCoat) {
    String within = weeks == 1 ? "a week" : NumberWords.small(weeks) + " weeks";
    if (due.isEmpty() && later.isEmpty()) {
      return "No coat is in service yet.";
    }
    if (due.isEmpty()) {
      return "Nothing is due within " + within + ". " + rest(withoutCoat);
    }
    String boats = due.size() == 1 ? "One boat is" : due.size() + " boats are";
    return boats + " due within " + within + ". Start with " + due.get(0).name() + ".";
  }

  private static String rest(int withoutCoat) {
    return switch (withoutCoat) {
      case 0 -> "All is well.";
      case 1 -> "Of one boat no coat is known.";
      default -> "Of " + NumberWords.small(withoutCoat) + " boats no coat is known.";
    };
  }

  /** One row a boat, for what falls due first; makers' duties have rows of their own. */
  private void rows(Fleet fleet, Lookups lookups, List<Row> due, List<Row> later) {
    LocalDate soon = fleet.asOf().plusWeeks(weeks(fleet));
    Map<LocalDate, List<Row>> duties = duties(fleet, lookups, soon);
    Set<Id<Boat>> seen = new HashSet<>();
    Map<Id<Boat>, Long> groups =
        fleet.due().stream()
            .collect(Collectors.groupingBy(d -> d.boat().id(), Collectors.counting()));
    Map<Id<Boat>, String> told = AheadTold.of(fleet);
    for (BoatDue d : fleet.due()) {
      if (!seen.add(d.boat().id()) || !here(lookups, d.boat().id())) {
        continue;
      }
      boolean pressing = d.workBy().map(w -> !w.isAfter(soon)).orElse(false);
      Row row =
          row(d, lookups, new Seen(fleet.asOf(), pressing, told), groups.get(d.boat().id()) - 1);
      (pressing ? due : later).add(row);
    }
    duties.values().forEach(due::addAll);
  }

  private boolean here(Lookups lookups, Id<Boat> boat) {
    return harbour.equals(AheadState.ALL) || lookups.harbour(boat).equals(harbour);
  }

  /**
   * How a boat is seen.
   *
   * @param told where it stands with telling the owners, by boat
   */
  private record Seen(LocalDate today, boolean pressing, Map<Id<Boat>, String> told) {}

  private static Row row(BoatDue d, Lookups lookups, Seen seen, long more) {
    ForecastWords words = new ForecastWords(seen.today());
    CoatForecast first = d.coats().get(0);
    List<Surface> surfaces = d.coats().stream().map(CoatForecast::surface).toList();
    CoatForecast leading =
        d.coats().stream()
            .filter(c -> c.outcome() instanceof Outcome.AlreadyLapsed)
            .findFirst()
            .or(
                () ->
                    d.coats().stream()
                        .filter(c -> c.outcome() instanceof Outcome.Dated)
                        .findFirst())
            .orElse(first);
    String others = more == 0 ? "" : more == 1 ? " · one more later" : " · " + more + " more later";
    return new Row(
        d.boat().id(),
        d.boat().name(),
        lookups.harbour(d.boat().id()),
        ForecastWords.surfaces(surfaces) + ", " + words.due(leading),
        words.chance(leading) + others,
        leading.twentieths(),
        new Chances(leading.twentieths(), seen.today()).words(),
        seen.told().getOrDefault(d.boat().id(), ""),
        seen.pressing());
  }

  private Map<LocalDate, List<Row>> duties(Fleet fleet, Lookups lookups, LocalDate soon) {
    Map<Id<Boat>, String> told = AheadTold.of(fleet);
    Map<String, Row> rows = new LinkedHashMap<>();
    Map<String, LocalDate> days = new LinkedHashMap<>();
    Set<Id<Coat>> inService =
        fleet.coats().stream().map(f -> f.coat().id()).collect(Collectors.toSet());
    for (Duty duty :
        fleet.almanac().duties().stream().sorted(Comparator.comparing(Duty::dueOn)).toList()) {
      Coat coat = lookups.coat(duty.coat());
      Boat boat = lookups.boat(lookups.surface(coat.surface()).boat());
      boolean open =
          duty.doneOn().isEmpty() && coat.ending().isEmpty() && boat.status() == BoatStatus.ACTIVE;
      boolean serving = inService.contains(coat.id());
      if (open && serving && !duty.dueOn().isAfter(soon) && here(lookups, boat.id())) {
        String key = boat.key() + duty.kind();
        days.putIfAbsent(key, duty.dueOn());
        rows.putIfAbsent(
            key,
            new Row(
                boat.id(),
                boat.name(),
                lookups.harbour(boat.id()),
                "Maker’s "
                    + duty.kind().words()
                    + ", "
                    + new DateWords(fleet.asOf()).exact(duty.dueOn()),
                duty.note().isBlank()
                    ? "a fixed date; no forecast moves it"
                    : duty.note() + " · a fixed date",
                List.of(),
                "",
                told.getOrDefault(boat.id(), ""),
                true));
      }
    }
    return rows.entrySet().stream()
        .collect(
            Collectors.groupingBy(
                e -> days.get(e.getKey()),
                java.util.TreeMap::new,
                Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
  }

  private List<Aside> beside(Fleet fleet, Lookups lookups) {
    List<Aside> beside = new ArrayList<>();
    LocalDate next = nextWeek(fleet);
    List<Line> now = visits(fleet, lookups, fleet.asOf(), next);
    beside.add(
        new Aside(
            "This week", now.isEmpty() ? List.of(new Line("", "No visit is planned.")) : now));
    List<Line> then = visits(fleet, lookups, next, next.plusWeeks(1));
    if (!then.isEmpty()) {
      beside.add(new Aside("Next week", then));
    }
    List<Line> curing = curing(fleet, lookups);
    if (!curing.isEmpty()) {
      beside.add(new Aside("Curing", curing));
    }
    List<Line> look = lookAt(fleet, lookups);
    if (!look.isEmpty()) {
      beside.add(new Aside("Look at it", look));
    }
    beside.addAll(MoneyAsides.of(fleet, lookups));
    return beside;
  }

  /** The first day of the next week, as the business counts its weeks. */
  private static LocalDate nextWeek(Fleet fleet) {
    return fleet
        .asOf()
        .with(TemporalAdjusters.next(fleet.almanac().business().habits().firstDay()));
  }

  private static List<Line> visits(Fleet fleet, Lookups lookups, LocalDate from, LocalDate until) {
    return fleet.almanac().visits().stream()
        .filter(v -> v.status() == VisitStatus.PLANNED)
        .filter(v -> !v.day().isBefore(from) && v.day().isBefore(until))
        .sorted(Comparator.comparing(Visit::day).thenComparing(Visit::key))
        .map(
            v ->
                new Line(
                    day(fleet.asOf(), v.day()),
                    lookups.boat(v.boat()).name() + ", " + work(v, lookups)))
        .toList();
  }

  private static String work(Visit visit, Lookups lookups) {
    List<Surface> surfaces =
        visit.surfaces().stream().map(p -> lookups.surface(p.surface())).toList();
    return surfaces.isEmpty()
        ? "whole boat"
        : ForecastWords.surfaces(surfaces).toLowerCase(Locale.ENGLISH);
  }

  private static String day(LocalDate today, LocalDate day) {
    return day.equals(today) ? "Today" : WEEKDAY.format(day);
  }

  private static List<Line> curing(Fleet fleet, Lookups lookups) {
    Map<Id<Boat>, List<Surface>> boats = new LinkedHashMap<>();
    for (CoatForecast f : fleet.coats()) {
      int hours = f.product().handling().cureHours().orElse(0);
      LocalDate cured = f.coat().since().plusDays(Math.max(1, (hours + 23) / 24));
      if (cured.isAfter(fleet.asOf().minusDays(1)) && hours > 0) {
        boats.computeIfAbsent(f.surface().boat(), b -> new ArrayList<>()).add(f.surface());
      }
    }
    return boats.entrySet().stream()
        .map(
            e ->
                new Line(
                    lookups.boat(e.getKey()).name(),
                    "keep dry: "
                        + ForecastWords.surfaces(e.getValue()).toLowerCase(Locale.ENGLISH)))
        .toList();
  }

  /** Coats that lay flat on a dirty surface, which counts for little: look again after a wash. */
  private static List<Line> lookAt(Fleet fleet, Lookups lookups) {
    Almanac almanac = fleet.almanac();
    Map<Id<Surface>, Finding> last =
        almanac.findings().stream()
            .filter(
                f -> f.seen() instanceof Observation.WaterSeen && !f.day().isAfter(fleet.asOf()))
            .collect(
                Collectors.toMap(
                    Finding::surface, f -> f, (a, b) -> a.day().isAfter(b.day()) ? a : b));
    LocalDate recent = fleet.asOf().minusDays(LOOKED_WITHIN_DAYS * 3L);
    return fleet.coats().stream()
        .filter(f -> f.coat().over().isEmpty() && last.containsKey(f.surface().id()))
        .filter(f -> flatWhileDirty(last.get(f.surface().id())))
        .filter(f -> last.get(f.surface().id()).day().isAfter(f.coat().since()))
        .filter(f -> last.get(f.surface().id()).day().isAfter(recent))
        .limit(4)
        .map(
            f ->
                new Line(
                    lookups.boat(f.surface().boat()).name(),
                    f.surface().words() + " lay flat while dirty: wash and look again"))
        .toList();
  }

  private static boolean flatWhileDirty(Finding f) {
    return f.state() == SurfaceState.DIRTY
        && ((Observation.WaterSeen) f.seen()).behaviour() == WaterBehaviour.FLAT;
  }
}
