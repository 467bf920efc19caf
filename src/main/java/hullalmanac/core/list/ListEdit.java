package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.ListReading;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.With;
import hullalmanac.core.work.NewBoat;
import hullalmanac.core.work.NewKeys;
import hullalmanac.core.work.SurfaceTemplate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes the rows of the record that a list becomes. What is in the record already is never written
 * over: what a list says besides goes into a note.
 */
final class ListEdit {
  private final ListPlan plan;
  private final Almanac almanac;
  private final IdSource ids;
  private final NewKeys keys;
  private final List<Row> put = new ArrayList<>();
  private final ListVisits visits;
  private final Map<String, Harbour> harbours = new HashMap<>();
  private final Map<People.Person, Party> parties = new HashMap<>();

  ListEdit(ListPlan plan, Almanac almanac, IdSource ids) {
    this.plan = plan;
    this.almanac = almanac;
    this.ids = ids;
    this.keys = new NewKeys(almanac);
    this.visits = new ListVisits(plan, almanac, new ListVisits.Making(ids, keys, put));
    almanac.harbours().forEach(h -> harbours.putIfAbsent(Folding.name(h.name()), h));
  }

  /** All that comes in. */
  Edit edit() {
    plan.newHarbours().forEach(this::harbour);
    plan.people().all().forEach(this::party);
    plan.boats().all().forEach(this::boat);
    reading();
    return Edit.put(put);
  }

  private void harbour(NewHarbour asked) {
    Harbour harbour =
        new Harbour(
            ids.next(),
            keys.next(Kind.HARBOUR, asked.name()),
            asked.name(),
            asked.latitude().orElseThrow(),
            List.of(),
            "");
    harbours.put(Folding.name(asked.name()), harbour);
    put.add(harbour);
  }

  private String from(Line line) {
    return "From the list " + plan.name() + ", " + Aside.place(line.row()) + ":";
  }

  /** A note with lines from a list below it, without those that stand there already. */
  private String noted(String note, Line line, List<String> lines) {
    List<String> fresh = lines.stream().filter(l -> !note.contains(l)).distinct().toList();
    if (fresh.isEmpty()) {
      return note;
    }
    return (note.isBlank() ? "" : note + "\n") + from(line) + "\n" + String.join("\n", fresh);
  }

  private void party(People.Person person) {
    Line.Owner first = person.lines().get(0).owner();
    Party party =
        person
            .known()
            .orElseGet(
                () ->
                    new Party(
                        ids.next(),
                        keys.next(Kind.PARTY, first.name()),
                        first.kind(),
                        first.name(),
                        "",
                        "",
                        "",
                        "",
                        Optional.empty(),
                        ""));
    for (Line line : person.lines()) {
      party = filled(party, line);
    }
    parties.put(person, party);
    if (!person.known().equals(Optional.of(party))) {
      put.add(party);
    }
  }

  private Party filled(Party party, Line line) {
    Line.Owner said = line.owner();
    List<String> besides = new ArrayList<>();
    Party p = party;
    if (!Shape.sameWords(said.name(), p.name())) {
      besides.add("Name: " + said.name());
    }
    if (!People.samePhone(p.phone(), said.phone())) {
      p = filled(p, "phone", p.phone(), said.phone(), besides);
    }
    p = filled(p, "email", p.email(), said.mail(), besides);
    p = filled(p, "address", p.address(), said.address(), besides);
    besides.addAll(said.notes());
    return With.component(p, "note", noted(p.note(), line, besides));
  }

  /** Fills a text in where there is none; one that says something else is told besides. */
  private static <T extends Record> T filled(
      T row, String field, String there, String said, List<String> besides) {
    if (said.isEmpty() || there.equals(said)) {
      return row;
    }
    if (there.isBlank()) {
      return With.component(row, field, said);
    }
    besides.add(ListPlan.fieldWords(field) + ": " + said);
    return row;
  }

  private static <T extends Record, V> T filledMaybe(
      T row, String field, Optional<V> there, Optional<V> said, List<String> besides) {
    if (said.isEmpty() || there.equals(said)) {
      return row;
    }
    if (there.isEmpty()) {
      return With.component(row, field, said);
    }
    besides.add(ListPlan.fieldWords(field) + ": " + ListPlan.plain(said.get()));
    return row;
  }

  /** The first day of which the list knows something of a boat. */
  private LocalDate since(Boats.Vessel vessel) {
    return vessel.lines().stream()
        .flatMap(l -> l.visits().stream())
        .map(Line.Work::day)
        .min(LocalDate::compareTo)
        .orElse(plan.today());
  }

  private void boat(Boats.Vessel vessel) {
    Line first = vessel.lines().get(0);
    LocalDate since = since(vessel);
    Boat boat = vessel.known().orElseGet(() -> newBoat(first, since));
    List<Surface> surfaces = new ArrayList<>();
    if (vessel.known().isEmpty()) {
      for (SurfaceTemplate template : SurfaceTemplate.of(boat.type())) {
        surfaces.add(ofHull(template, vessel).on(boat, ids, keys));
      }
    }
    for (Line line : vessel.lines()) {
      List<String> besides = new ArrayList<>(owner(boat, vessel, line, since));
      besides.addAll(berth(boat, vessel, line, since));
      besides.addAll(visits.of(boat, line, from(line)));
      boat = filled(boat, line, besides);
    }
    if (!vessel.known().equals(Optional.of(boat))) {
      put.add(boat);
    }
    put.addAll(surfaces);
    visits.coat(boat, vessel, surfaces);
  }

  private Boat newBoat(Line line, LocalDate since) {
    return new Boat(
        ids.next(),
        keys.next(Kind.BOAT, line.boat().name()),
        line.boat().name(),
        line.boat().type().orElse(plan.usualType()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        Optional.empty(),
        Use.WEEKENDS,
        BoatStatus.ACTIVE,
        Optional.of(since),
        "");
  }

  /** The hull with the finish and tone that the list says. */
  private static SurfaceTemplate ofHull(SurfaceTemplate t, Boats.Vessel vessel) {
    boolean hull = t.kind() == SurfaceKind.TOPSIDES || t.kind() == SurfaceKind.TRANSOM;
    if (!hull || t.finish() == Finish.INFLATABLE_TUBE) {
      return t;
    }
    List<Line.Craft> said = vessel.lines().stream().map(Line::boat).toList();
    return new SurfaceTemplate(
        t.kind(),
        t.side(),
        t.name(),
        said.stream().flatMap(b -> b.finish().stream()).findFirst().orElse(t.finish()),
        said.stream().flatMap(b -> b.tone().stream()).findFirst().orElse(t.tone()),
        t.soot());
  }

  private Boat filled(Boat boat, Line line, List<String> more) {
    Line.Craft said = line.boat();
    List<String> besides = new ArrayList<>();
    Boat b = boat;
    if (!Folding.name(said.name()).equals(Folding.name(b.name()))) {
      besides.add("Name: " + said.name());
    }
    BoatType type = b.type();
    said.type().filter(t -> t != type).ifPresent(t -> besides.add("Type: " + t.words()));
    b = filledMaybe(b, "loa", b.loa(), said.loa(), besides);
    b = filledMaybe(b, "beam", b.beam(), said.beam(), besides);
    b = filled(b, "hullNumber", b.hullNumber(), said.hullNumber(), besides);
    b = filledMaybe(b, "built", b.built(), said.built(), besides);
    besides.addAll(said.notes());
    besides.addAll(more);
    return With.component(b, "note", noted(b.note(), line, besides));
  }

  /** Makes the owner of a line own the boat; says who the list names where somebody else does. */
  private List<String> owner(Boat boat, Boats.Vessel vessel, Line line, LocalDate since) {
    Optional<Party> named = plan.people().of(line).map(parties::get);
    if (named.isEmpty()) {
      return List.of();
    }
    Optional<Party> owns =
        vessel.known().isPresent() ? plan.boats().owner(vessel.known().get()) : Optional.empty();
    Optional<Party> before = owns.or(() -> ownerByNow(boat));
    if (before.isEmpty()) {
      put.add(NewBoat.owns(boat, named.get(), since, ids, keys));
      return List.of();
    }
    return before.get().id().equals(named.get().id())
        ? List.of()
        : List.of("Owner: " + named.get().name());
  }

  /** The owner whom a line above has given a boat. */
  private Optional<Party> ownerByNow(Boat boat) {
    return put.stream()
        .filter(Role.class::isInstance)
        .map(Role.class::cast)
        .filter(r -> r.boat().equals(boat.id()))
        .findFirst()
        .flatMap(r -> parties.values().stream().filter(p -> p.id().equals(r.party())).findFirst());
  }

  private List<String> berth(Boat boat, Boats.Vessel vessel, Line line, LocalDate since) {
    Line.Place place = line.place();
    String name = place.harbour().isEmpty() ? plan.usualHarbour() : place.harbour();
    Optional<Harbour> harbour = Optional.ofNullable(harbours.get(Folding.name(name)));
    Optional<Berth> before = vessel.known().flatMap(plan.boats()::home).or(() -> berthByNow(boat));
    List<String> besides = new ArrayList<>();
    if (before.isEmpty() && harbour.isEmpty()) {
      if (!place.berth().isEmpty()) {
        besides.add("Berth: " + place.berth());
      }
      return besides;
    }
    boolean said = !place.isEmpty();
    if (before.isPresent() && !said) {
      return besides;
    }
    Berth berth =
        before.orElseGet(() -> NewBoat.berth(boat, harbour.orElseThrow(), since, ids, keys));
    boolean elsewhere =
        !place.harbour().isEmpty()
            && harbour.isPresent()
            && !berth.harbour().equals(harbour.get().id());
    if (elsewhere) {
      besides.add("Lies at: " + (place.harbour() + " " + place.berth()).strip());
      return besides;
    }
    Berth now = filled(berth, place, besides);
    if (!before.equals(Optional.of(now))) {
      put.removeIf(r -> r instanceof Berth b && b.id().equals(now.id()));
      put.add(now);
    }
    return besides;
  }

  private static Berth filled(Berth berth, Line.Place place, List<String> besides) {
    Berth b = filled(berth, "access.place", berth.access().place(), place.berth(), besides);
    List<String> secret = new ArrayList<>();
    b = filled(b, "secrets.keys", b.secrets().keys(), place.keys(), secret);
    b = filled(b, "secrets.gateCode", b.secrets().gateCode(), place.gateCode(), secret);
    for (String one : secret) {
      String text = one.substring(one.indexOf(": ") + 2);
      b =
          With.component(
              b, "secrets.keys", (b.secrets().keys() + "; " + text).replaceAll("^; ", ""));
    }
    return b;
  }

  private Optional<Berth> berthByNow(Boat boat) {
    return put.stream()
        .filter(Berth.class::isInstance)
        .map(Berth.class::cast)
        .filter(b -> b.boat().equals(boat.id()))
        .findFirst();
  }

  /** Remembers how the columns were understood, unless they have no headings. */
  private void reading() {
    List<ListReading.Column> columns = plan.remembering();
    if (columns.isEmpty()) {
      return;
    }
    Optional<ListReading> before = ListPlan.remembered(almanac, plan.headings());
    ListReading now =
        before
            .map(r -> new ListReading(r.id(), r.key(), plan.name(), columns))
            .orElseGet(
                () ->
                    new ListReading(
                        ids.next(),
                        keys.next(Kind.LIST_READING, plan.name()),
                        plan.name(),
                        columns));
    if (!before.equals(Optional.of(now))) {
      put.add(now);
    }
  }
}
