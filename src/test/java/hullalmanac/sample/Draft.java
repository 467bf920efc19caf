package hullalmanac.sample;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.TaxTerms;
import hullalmanac.core.record.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/** The sample while it is being made. */
final class Draft {
  static final LocalDate AS_OF = LocalDate.of(2026, 5, 1);
  private static final Currency DOLLARS = Currency.getInstance("USD");

  private static final Billing BILLING =
      new Billing(
          TaxTerms.USUAL,
          List.of(new Tax("sales tax", new BigDecimal("6"))),
          Billing.Numbering.USUAL,
          14,
          new Billing.Charges(
              Optional.of(new Money(6500, DOLLARS)),
              Optional.of(new Money(9000, DOLLARS)),
              Optional.of(new Money(70, DOLLARS))));

  final Random random = new Random(20_260_501L);
  final IdSource ids = new IdSource(random::nextLong);
  final List<Harbour> harbours = new ArrayList<>();
  final List<Party> parties = new ArrayList<>();
  final List<Boat> boats = new ArrayList<>();
  final List<Role> roles = new ArrayList<>();
  final List<Surface> surfaces = new ArrayList<>();
  final List<Berth> berths = new ArrayList<>();
  final List<CarePlan> carePlans = new ArrayList<>();
  final Map<String, Product> products = new TreeMap<>();
  final Map<String, Bottle> bottles = new TreeMap<>();
  final List<Visit> visits = new ArrayList<>();
  final List<Step> steps = new ArrayList<>();
  final List<Coat> coats = new ArrayList<>();
  final List<Duty> duties = new ArrayList<>();
  final List<Finding> findings = new ArrayList<>();
  final List<Photo> photos = new ArrayList<>();

  <T> Id<T> id() {
    return ids.next();
  }

  int between(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  boolean chance(double p) {
    return random.nextDouble() < p;
  }

  <T> T pick(List<T> items) {
    return items.get(random.nextInt(items.size()));
  }

  Product product(String key) {
    return products.get(key);
  }

  List<Surface> surfacesOf(Boat boat) {
    return surfaces.stream().filter(s -> s.boat().equals(boat.id())).toList();
  }

  /** The picture on the letterhead. */
  String mark = "";

  Almanac almanac() {
    return new Almanac(
        new Business(
            "Tern & Tide Boat Care",
            Currency.getInstance("USD"),
            Business.Units.FEET,
            Business.DayOrder.DAY_FIRST,
            Optional.empty(),
            Optional.of(AS_OF),
            new Business.Letterhead("Boatshed Lane 3, Quillhaven", "", mark),
            Business.Habits.USUAL,
            Practice.STANDARD,
            BILLING),
        harbours,
        parties,
        boats,
        roles,
        surfaces,
        berths,
        carePlans,
        List.copyOf(products.values()),
        List.copyOf(bottles.values()),
        visits,
        steps,
        coats,
        duties,
        findings,
        photos);
  }
}
