package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which boats the lines of a list speak of: boats of the record, of a line above, or new ones. */
final class Boats {
  private static final int NEARLY_MM = 100;
  private static final double FAR = 0.02;

  private final ListChoices choices;
  private final People people;
  private final Business.Units units;
  private final Map<Id<Boat>, Party> owners;
  private final Map<Id<Boat>, Berth> homes;
  private final Map<Id<Harbour>, Harbour> harbours;
  private final Set<Vessel> vessels = new LinkedHashSet<>();
  private final Map<String, List<Vessel>> byTrace = new HashMap<>();
  private final List<Alike> alikes = new ArrayList<>();
  private final List<Line> leftOut = new ArrayList<>();

  /** One boat, with all lines that speak of her. */
  static final class Vessel {
    private final Optional<Boat> known;
    private final List<Line> lines = new ArrayList<>();

    Vessel(Optional<Boat> known) {
      this.known = known;
    }

    Optional<Boat> known() {
      return known;
    }

    List<Line> lines() {
      return lines;
    }

    private String name() {
      return known.map(Boat::name).orElseGet(() -> lines.get(0).boat().name());
    }

    private String hullNumber() {
      return known.map(Boat::hullNumber).orElseGet(() -> lines.get(0).boat().hullNumber());
    }

    private Optional<Length> loa() {
      return known.isPresent() ? known.get().loa() : lines.get(0).boat().loa();
    }
  }

  Boats(Almanac almanac, LocalDate today, List<Line> lines, People people, ListChoices choices) {
    this.choices = choices;
    this.people = people;
    this.units = almanac.business().units();
    Map<Id<Party>, Party> parties =
        almanac.parties().stream().collect(Collectors.toMap(Party::id, Function.identity()));
    owners =
        almanac.roles().stream()
            .filter(r -> r.kind() == RoleKind.OWNS && r.holdsOn(today))
            .collect(Collectors.toMap(Role::boat, r -> parties.get(r.party()), (a, b) -> a));
    homes = new HashMap<>();
    almanac.berths().stream()
        .collect(Collectors.groupingBy(Berth::boat))
        .forEach((boat, all) -> Berth.home(all, today).ifPresent(h -> homes.put(boat, h)));
    harbours =
        almanac.harbours().stream().collect(Collectors.toMap(Harbour::id, Function.identity()));
    almanac.boats().stream()
        .sorted(Comparator.comparing(Boat::key))
        .forEach(b -> note(new Vessel(Optional.of(b)), traces(b.name(), b.hullNumber())));
    lines.stream().filter(Line::hasBoat).forEach(this::line);
  }

  /** All that are new or of which the list says something. */
  List<Vessel> all() {
    return vessels.stream().filter(v -> !v.lines().isEmpty()).toList();
  }

  /** The party that owns a boat of the record. */
  Optional<Party> owner(Boat boat) {
    return Optional.ofNullable(owners.get(boat.id()));
  }

  /** The berth at which a boat of the record has her home. */
  Optional<Berth> home(Boat boat) {
    return Optional.ofNullable(homes.get(boat.id()));
  }

  List<Alike> alikes() {
    return List.copyOf(alikes);
  }

  /** Lines of boats who are known already and left out. */
  List<Line> leftOut() {
    return List.copyOf(leftOut);
  }

  private void note(Vessel vessel, List<String> traces) {
    vessels.add(vessel);
    for (String trace : traces) {
      List<Vessel> there = byTrace.computeIfAbsent(trace, t -> new ArrayList<>());
      if (!there.contains(vessel)) {
        there.add(vessel);
      }
    }
  }

  private static List<String> traces(String name, String hullNumber) {
    List<String> traces = new ArrayList<>();
    if (!solid(hullNumber).isEmpty()) {
      traces.add("hull " + solid(hullNumber));
    }
    traces.add("name " + Shape.boat(name));
    return traces;
  }

  /** A hull number without its country and signs. */
  private static String solid(String hullNumber) {
    return Folding.solid(hullNumber.strip().replaceFirst("^[A-Za-z]{2}-", ""));
  }

  /** How a line and a boat compare. */
  private record Likeness(
      boolean hull,
      boolean hullDiffers,
      boolean name,
      boolean owner,
      boolean ownerDiffers,
      boolean length) {
    boolean isCertain() {
      return hull || (name && !hullDiffers && (owner || (length && !ownerDiffers)));
    }

    boolean isAny() {
      return hull || (name && (!hullDiffers || owner));
    }

    String why() {
      List<String> why = new ArrayList<>();
      if (hull) {
        why.add("hull number");
      }
      if (name) {
        why.add("name");
      }
      if (owner) {
        why.add("owner");
      }
      if (length) {
        why.add("length");
      }
      return "the same " + String.join(" and ", why);
    }
  }

  private Likeness likeness(Line line, Vessel v) {
    String a = solid(line.boat().hullNumber());
    String b = solid(v.hullNumber());
    Optional<People.Person> mine = people.of(line);
    Optional<People.Person> hers = owner(v);
    boolean bothOwned = mine.isPresent() && hers.isPresent();
    boolean owner = bothOwned && mine.get() == hers.get();
    Optional<Length> x = line.boat().loa();
    Optional<Length> y = v.loa();
    boolean length =
        x.isPresent()
            && y.isPresent()
            && Math.abs(x.get().millimetres() - y.get().millimetres())
                <= Math.max(NEARLY_MM, FAR / 2 * x.get().millimetres());
    return new Likeness(
        !a.isEmpty() && a.equals(b),
        !a.isEmpty() && !b.isEmpty() && !a.equals(b),
        Shape.boat(line.boat().name()).equals(Shape.boat(v.name())),
        owner,
        bothOwned && !owner,
        length);
  }

  private Optional<People.Person> owner(Vessel v) {
    return v.known().isPresent()
        ? owner(v.known().get()).flatMap(people::of)
        : v.lines().stream().map(people::of).flatMap(Optional::stream).findFirst();
  }

  private void line(Line line) {
    List<Vessel> candidates =
        traces(line.boat().name(), line.boat().hullNumber()).stream()
            .flatMap(t -> byTrace.getOrDefault(t, List.of()).stream())
            .distinct()
            .filter(v -> likeness(line, v).isAny())
            .toList();
    Optional<Vessel> certain =
        candidates.stream().filter(v -> likeness(line, v).isCertain()).findFirst();
    Optional<Vessel> other = certain.or(() -> candidates.stream().findFirst());
    if (other.isEmpty()) {
      add(line, new Vessel(Optional.empty()));
    } else {
      ask(line, other.get(), likeness(line, other.get()));
    }
  }

  private void ask(Line line, Vessel other, Likeness likeness) {
    String id = "boat " + line.id();
    Same choice =
        choices
            .answer(id)
            .flatMap(a -> Coded.parse(Same.class, a))
            .orElse(likeness.isCertain() ? Same.SAME : Same.ANOTHER);
    alikes.add(
        new Alike(
            id,
            new Alike.Who(line.row(), true, line.boat().name()),
            other.known().isPresent() ? "the record" : Aside.place(other.lines().get(0).row()),
            likeness.isCertain(),
            likeness.why(),
            choice,
            facts(line, other)));
    switch (choice) {
      case SAME -> add(line, other);
      case ANOTHER -> add(line, new Vessel(Optional.empty()));
      default -> leftOut.add(line);
    }
  }

  private void add(Line line, Vessel vessel) {
    vessel.lines().add(line);
    note(vessel, traces(line.boat().name(), line.boat().hullNumber()));
  }

  private List<Alike.Fact> facts(Line line, Vessel v) {
    Optional<Line> above = v.lines().stream().findFirst().filter(l -> v.known().isEmpty());
    Optional<Berth> home = v.known().flatMap(this::home);
    String harbour =
        home.map(h -> (harbours.get(h.harbour()).name() + " " + h.access().place()).strip())
            .or(() -> above.map(Boats::place))
            .orElse("");
    return Stream.of(
            new Alike.Fact("Boat", line.boat().name(), v.name()),
            new Alike.Fact("Hull number", line.boat().hullNumber(), v.hullNumber()),
            new Alike.Fact("Owner", line.owner().name(), ownerName(v)),
            new Alike.Fact("Length", words(line.boat().loa()), words(v.loa())),
            new Alike.Fact("Beam", words(line.boat().beam()), words(beam(v))),
            new Alike.Fact("Lies at", place(line), harbour))
        .filter(f -> !f.inList().isEmpty() || !f.there().isEmpty())
        .toList();
  }

  private String ownerName(Vessel v) {
    return v.known().isPresent()
        ? owner(v.known().get()).map(Party::name).orElse("")
        : v.lines().get(0).owner().name();
  }

  private static Optional<Length> beam(Vessel v) {
    return v.known().isPresent() ? v.known().get().beam() : v.lines().get(0).boat().beam();
  }

  private static String place(Line line) {
    return (line.place().harbour() + " " + line.place().berth()).strip();
  }

  private String words(Optional<Length> length) {
    return length
        .map(l -> units == Business.Units.FEET ? l.feetAndInches() : l.metresText())
        .orElse("");
  }
}
