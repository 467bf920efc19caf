package hullalmanac.present.reckoner;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;
import hullalmanac.present.edit.FieldMaker.Named;
import hullalmanac.service.Fleet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Boats and products of the record, from which a sum takes what is not typed. */
final class FromRecord {
  private FromRecord() {}

  static List<Named<Boat>> boats(Fleet fleet) {
    return fleet.almanac().boats().stream()
        .filter(b -> b.status() == BoatStatus.ACTIVE)
        .sorted(Comparator.comparing(Boat::name))
        .map(b -> new Named<>(b.id(), b.name()))
        .toList();
  }

  static List<Named<Product>> products(Fleet fleet) {
    return fleet.almanac().products().stream()
        .sorted(Comparator.comparing(Product::name))
        .map(p -> new Named<>(p.id(), p.name()))
        .toList();
  }

  static Optional<Boat> boat(Fleet fleet, Optional<Id<Boat>> id) {
    return id.flatMap(
        i -> fleet.almanac().boats().stream().filter(b -> b.id().equals(i)).findFirst());
  }

  static Optional<Product> product(Fleet fleet, Optional<Id<Product>> id) {
    return id.flatMap(
        i -> fleet.almanac().products().stream().filter(p -> p.id().equals(i)).findFirst());
  }

  static boolean inFeet(Fleet fleet) {
    return fleet.almanac().business().units() == Business.Units.FEET;
  }

  /** A length as the business says it. */
  static String length(Fleet fleet, Length length) {
    return inFeet(fleet) ? length.feetAndInches() : length.metresText();
  }

  /** An area in the business's unit first, with both; and how it is copied. */
  static Quantity area(Fleet fleet, double squareMetres) {
    Quantity area = Quantity.of(squareMetres, Unit.SQUARE_METRE);
    return inFeet(fleet) ? area.to(Unit.SQUARE_FOOT) : area;
  }

  /** Litres, or millilitres where they are few. */
  static Quantity volume(Quantity volume) {
    boolean few = volume.in(Unit.LITRE).doubleValue() < 1;
    return volume.to(few ? Unit.MILLILITRE : Unit.LITRE);
  }
}
