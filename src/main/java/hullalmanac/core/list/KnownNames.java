package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Product;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Names that are in the record, in the form in which lists are compared with them. */
final class KnownNames {
  private final Set<String> boats;
  private final Set<String> parties;
  private final Map<String, Harbour> harbours;
  private final Map<String, Product> products;

  KnownNames(Almanac almanac) {
    boats = almanac.boats().stream().map(Boat::name).map(Shape::boat).collect(Collectors.toSet());
    parties =
        almanac.parties().stream().map(Party::name).map(Shape::person).collect(Collectors.toSet());
    harbours = byName(almanac.harbours(), Harbour::name);
    products = byName(almanac.products(), Product::name);
  }

  private static <R> Map<String, R> byName(Collection<R> rows, Function<R, String> name) {
    Map<String, R> byName = new HashMap<>();
    rows.forEach(r -> byName.putIfAbsent(Folding.name(name.apply(r)), r));
    return byName;
  }

  boolean boat(String text) {
    return boats.contains(Shape.boat(text));
  }

  boolean party(String text) {
    return parties.contains(Shape.person(text));
  }

  Optional<Harbour> harbour(String text) {
    return Optional.ofNullable(harbours.get(Folding.name(text)));
  }

  /** The harbour with whose name a text begins, where more than that stands in it. */
  Optional<Harbour> harbourBefore(String text) {
    String folded = Folding.name(text);
    return harbours.entrySet().stream()
        .filter(e -> folded.startsWith(e.getKey() + " "))
        .max(Map.Entry.comparingByKey(java.util.Comparator.comparingInt(String::length)))
        .map(Map.Entry::getValue);
  }

  Set<String> harbourNames() {
    return harbours.keySet();
  }

  Optional<Product> product(String text) {
    return Optional.ofNullable(products.get(Folding.name(text)));
  }
}
