package hullalmanac.core.record;

import java.util.List;

/**
 * The whole of a record as values, without its change log and its photo files. Each list is in no
 * particular order; ids are unique within a list, and so are the people's own ids ({@code key}).
 */
public record Almanac(
    Business business,
    List<Harbour> harbours,
    List<Party> parties,
    List<Boat> boats,
    List<Role> roles,
    List<Surface> surfaces,
    List<Berth> berths,
    List<CarePlan> carePlans,
    List<Product> products,
    List<Bottle> bottles,
    List<Visit> visits,
    List<Step> steps,
    List<Coat> coats,
    List<Duty> duties,
    List<Finding> findings,
    List<Photo> photos) {
  public Almanac {
    harbours = List.copyOf(harbours);
    parties = List.copyOf(parties);
    boats = List.copyOf(boats);
    roles = List.copyOf(roles);
    surfaces = List.copyOf(surfaces);
    berths = List.copyOf(berths);
    carePlans = List.copyOf(carePlans);
    products = List.copyOf(products);
    bottles = List.copyOf(bottles);
    visits = List.copyOf(visits);
    steps = List.copyOf(steps);
    coats = List.copyOf(coats);
    duties = List.copyOf(duties);
    findings = List.copyOf(findings);
    photos = List.copyOf(photos);
  }

  /** A record of a business in which nothing has been written yet. */
  public static Almanac empty(Business business) {
    return new Almanac(
        business, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
        List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
  }
}
