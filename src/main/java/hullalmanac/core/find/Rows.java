package hullalmanac.core.find;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows of a record by their ids, and words in which they are told from each other. */
final class Rows {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  final Almanac almanac;
  final LocalDate today;
  final Map<Id<Boat>, Boat> boats;
  final Map<Id<Surface>, Surface> surfaces;
  final Map<Id<Party>, Party> parties;
  final Map<Id<Product>, Product> products;
  final Map<Id<Visit>, Visit> visits;
  final Map<Id<Boat>, Berth> homes;
  private final Map<Id<Harbour>, Harbour> harbours;
  private final Map<Id<Boat>, List<Role>> roles;

  Rows(Almanac almanac, LocalDate today) {
    this.almanac = almanac;
    this.today = today;
    boats = byId(almanac.boats(), Boat::id);
    surfaces = byId(almanac.surfaces(), Surface::id);
    parties = byId(almanac.parties(), Party::id);
    products = byId(almanac.products(), Product::id);
    visits = byId(almanac.visits(), Visit::id);
    harbours = byId(almanac.harbours(), Harbour::id);
    roles = almanac.roles().stream().collect(Collectors.groupingBy(Role::boat));
    homes =
        almanac.berths().stream().collect(Collectors.groupingBy(Berth::boat)).values().stream()
            .flatMap(ofOneBoat -> Berth.home(ofOneBoat, today).stream())
            .collect(Collectors.toMap(Berth::boat, Function.identity()));
  }

  private static <T extends Row> Map<Id<T>, T> byId(List<T> rows, Function<T, Id<T>> id) {
    return rows.stream().collect(Collectors.toMap(id, Function.identity()));
  }

  static boolean gone(Boat boat) {
    return boat.status() != BoatStatus.ACTIVE;
  }

  /** The roles on a boat that hold today. */
  List<Role> rolesToday(Boat boat) {
    return roles.getOrDefault(boat.id(), List.of()).stream().filter(r -> r.holdsOn(today)).toList();
  }

  /** Harbour and berth number of a boat's home, empty when they are not known. */
  String place(Boat boat) {
    return Optional.ofNullable(homes.get(boat.id()))
        .map(b -> (harbours.get(b.harbour()).name() + " " + b.access().place()).strip())
        .orElse("");
  }

  /** Parts of a detail, without those that are empty. */
  static String joined(String... parts) {
    return Stream.of(parts).filter(p -> !p.isBlank()).collect(Collectors.joining(" · "));
  }

  static String day(LocalDate day) {
    return DAY.format(day);
  }
}
