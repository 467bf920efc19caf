package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds rows of a record by their ids, as of a day. */
public final class Lookups {
  private final Map<Id<Boat>, Boat> boats;
  private final Map<Id<Surface>, Surface> surfaces;
  private final Map<Id<Coat>, Coat> coats;
  private final Map<Id<Product>, Product> products;
  private final Map<Id<Harbour>, Harbour> harbours;
  private final Map<Id<Party>, Party> parties;
  private final Map<Id<Boat>, List<Berth>> berths;
  private final Map<Id<Boat>, List<Role>> roles;
  private final LocalDate today;

  public Lookups(Almanac almanac, LocalDate today) {
    this.today = today;
    boats = byId(almanac.boats(), Boat::id);
    surfaces = byId(almanac.surfaces(), Surface::id);
    coats = byId(almanac.coats(), Coat::id);
    products = byId(almanac.products(), Product::id);
    harbours = byId(almanac.harbours(), Harbour::id);
    parties = byId(almanac.parties(), Party::id);
    berths = almanac.berths().stream().collect(Collectors.groupingBy(Berth::boat));
    roles = almanac.roles().stream().collect(Collectors.groupingBy(Role::boat));
  }

  private static <T> Map<Id<T>, T> byId(List<T> rows, Function<T, Id<T>> id) {
    return rows.stream().collect(Collectors.toMap(id, Function.identity()));
  }

  public Boat boat(Id<Boat> id) {
    return boats.get(id);
  }

  public Surface surface(Id<Surface> id) {
    return surfaces.get(id);
  }

  public Coat coat(Id<Coat> id) {
    return coats.get(id);
  }

  public Product product(Id<Product> id) {
    return products.get(id);
  }

  public Harbour harbour(Berth berth) {
    return harbours.get(berth.harbour());
  }

  /** The berth at which a boat has its home: the newest that does not recur. */
  public Optional<Berth> home(Id<Boat> boat) {
    return Berth.home(berths.getOrDefault(boat, List.of()), today);
  }

  /** Name of a boat's home harbour, empty when it is not known. */
  public String harbour(Id<Boat> boat) {
    return home(boat).map(b -> harbours.get(b.harbour()).name()).orElse("");
  }

  /** Name of a boat's owner on the day, empty when it is not known. */
  public String owner(Id<Boat> boat) {
    return roles.getOrDefault(boat, List.of()).stream()
        .filter(r -> r.kind() == RoleKind.OWNS && r.holdsOn(today))
        .findFirst()
        .map(r -> parties.get(r.party()).name())
        .orElse("");
  }
}
