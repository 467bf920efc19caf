package hullalmanac.present.reckoner;

import hullalmanac.core.reckon.Dilution;
import hullalmanac.core.reckon.Formula;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Unit;
import hullalmanac.core.report.Caution;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How much product and how much water go into a bottle. */
final class DilutionSheet extends Calculator<DilutionSheet.Given> {
  private static final List<Answer> BLANK = List.of(blank("bottle"), blank("parts"));
  private static final String INTO_WATER =
      "Acid into water, never the other way: the water first, then the product (UN GHS hazard"
          + " statements H290, H314).";

  /**
   * What is given; public so that it can be copied with one component changed.
   *
   * @param strength % of product in the mixture, in the place of parts of water
   */
  public record Given(
      Optional<Id<Product>> product,
      Optional<Double> water,
      Optional<Double> strength,
      Optional<Quantity> bottle) {}

  DilutionSheet() {
    super(new Given(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Dilution", "Product and water for a bottle");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    return List.of(
        make.maybeNumber("water", "Parts of water to 1 part", Given::water),
        make.maybeNumber("strength", "or its strength, %", Given::strength),
        make.quantity(
            "bottle",
            "Bottle to fill",
            FromRecord.inFeet(fleet) ? Unit.US_FLUID_OUNCE : Unit.MILLILITRE,
            Given::bottle),
        make.maybeOf(
            "product", "or as a product's label says", FromRecord.products(fleet), Given::product));
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    Optional<Product> product = FromRecord.product(fleet, given.product());
    try {
      return dilution(given, product)
          .map(d -> reckoned(d, given))
          .orElse(Reckoned.nothing(BLANK, needs(product)))
          .cautions(cautions(product));
    } catch (IllegalArgumentException e) {
      return Reckoned.nothing(BLANK, Texts.capital(e.getMessage()) + ".")
          .cautions(cautions(product));
    }
  }

  private static String needs(Optional<Product> product) {
    return product.isPresent()
        ? "Its label is not known to say a dilution. Write parts of water, or a strength."
        : "Write parts of water, or a strength; then the bottle.";
  }

  private static Optional<Dilution> dilution(Given given, Optional<Product> product) {
    if (given.water().isPresent() && given.strength().isPresent()) {
      throw new IllegalArgumentException("write parts of water or a strength, and empty the other");
    }
    return given
        .water()
        .map(Dilution::new)
        .or(() -> given.strength().map(s -> Dilution.of(100, s)))
        .or(
            () ->
                product.flatMap(p -> p.handling().partsWater()).map(parts -> new Dilution(parts)));
  }

  private static Reckoned reckoned(Dilution dilution, Given given) {
    Answer parts = answer("parts", "", dilution.words());
    return given
        .bottle()
        .map(
            bottle -> {
              Quantity all = bottle.to(Unit.MILLILITRE);
              double ml = all.amount().doubleValue();
              String water = volume(dilution.water(ml), bottle);
              String product = volume(dilution.product(ml), bottle);
              return Reckoned.of(
                      answer("bottle", "", water + " water, then " + product + " product"), parts)
                  .note(
                      "In other units: "
                          + other(dilution.water(ml), bottle)
                          + " water, "
                          + other(dilution.product(ml), bottle)
                          + " product. "
                          + String.format(Locale.ROOT, "%.3g", dilution.strength())
                          + " % by volume.");
            })
        .orElse(Reckoned.of(blank("bottle"), parts).note("Write the bottle to fill."));
  }

  private static String volume(double millilitres, Quantity bottle) {
    return Quantity.of(millilitres, Unit.MILLILITRE).to(bottle.unit()).text();
  }

  private static String other(double millilitres, Quantity bottle) {
    return Quantity.of(millilitres, Unit.MILLILITRE).to(bottle.unit().counterpart()).text();
  }

  private static List<String> cautions(Optional<Product> product) {
    List<String> all = new ArrayList<>();
    all.add(INTO_WATER);
    product.ifPresent(p -> Caution.of(p).forEach(c -> all.add(c.text() + " (" + c.source() + ")")));
    all.add(Caution.LABEL_FIRST);
    return all;
  }

  @Override
  List<Formula> formulas() {
    return List.of(Dilution.FORMULA);
  }
}
