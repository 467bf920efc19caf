package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.WashStrength;
import hullalmanac.core.record.With;
import hullalmanac.core.work.NewKeys;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** All that is known of a product, and its bottles. */
public final class ProductSheet extends FleetSheet {
  private final Id<Product> product;
  private final Rows<Product> facts;
  private final Rows<Bottle> bottles;

  public ProductSheet(Desk desk, Id<Product> product) {
    super(desk);
    this.product = product;
    facts =
        new Rows<>(
            Rows.Block.plain(
                "product",
                "",
                f -> one(f).stream().toList(),
                Product::name,
                f -> fields(new FieldMaker(f.almanac().business(), f.asOf()))),
            desk);
    bottles =
        new Rows<>(
            Rows.Block.plain(
                "bottles",
                "Bottles",
                f ->
                    f.almanac().bottles().stream()
                        .filter(b -> b.product().equals(product))
                        .toList(),
                b -> "bottle " + b.batch(),
                f -> bottle(new FieldMaker(f.almanac().business(), f.asOf()))),
            desk);
  }

  /** A product of which nothing is known yet. */
  public static Product unknown(Id<Product> id, Almanac almanac) {
    return new Product(
        id,
        new NewKeys(almanac).next(Kind.PRODUCT, "new product"),
        "New product",
        ProductKind.OTHER,
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        false,
        false,
        new TreeSet<>(),
        Product.Handling.UNKNOWN,
        "");
  }

  private static List<FieldOf<Product>> fields(FieldMaker make) {
    return List.of(
        make.line("name", "Name", Product::name),
        make.choice("kind", "Kind", ProductKind.class, Product::kind),
        make.maybeNumber("labelMonths", "Label life, months", Product::labelMonths),
        make.yesNo("labelForCars", "That label speaks of cars", Product::labelForCars),
        make.maybeNumber("limitMonths", "Calendar limit, months", Product::limitMonths),
        make.maybeChoice("wash", "As a cleaner", WashStrength.class, Product::wash),
        make.yesNo("leavesWax", "Leaves wax", Product::leavesWax),
        make.yesNo("nonSlip", "Marked non-slip", Product::nonSlip),
        hazards(),
        make.maybeWhole("handling.dwellMin", "Dwell from, minutes", p -> p.handling().dwellMin()),
        make.maybeWhole("handling.dwellMax", "Dwell to, minutes", p -> p.handling().dwellMax()),
        make.maybeWhole("handling.cureHours", "Cures in, hours", p -> p.handling().cureHours()),
        make.maybeWhole("handling.minCelsius", "Coldest, °C", p -> p.handling().minCelsius()),
        make.maybeWhole("handling.maxCelsius", "Hottest, °C", p -> p.handling().maxCelsius()),
        make.maybeWhole(
            "handling.maxHumidity", "Humidity up to, %", p -> p.handling().maxHumidity()),
        make.maybeWhole(
            "handling.partsWater", "Parts of water to 1", p -> p.handling().partsWater()),
        make.maybeWhole(
            "handling.openMonths", "Once open it keeps, months", p -> p.handling().openMonths()),
        make.paragraph("note", "Note", Product::note));
  }

  /** Words parted by commas. */
  private static FieldOf<Product> hazards() {
    return new FieldOf<>(
        "hazards",
        "Contains",
        new Input.Line("acid, silicone"),
        p -> p.hazards().stream().map(Hazard::words).collect(Collectors.joining(", ")),
        (p, typed) -> {
          TreeSet<Hazard> all = new TreeSet<>();
          for (String word : Arrays.asList(typed.split(","))) {
            Entry<Hazard> entry = FieldMaker.oneOf(Hazard.class, word);
            if (entry instanceof Entry.Refused<Hazard> refused) {
              return new Entry.Refused<>(refused.sentence());
            }
            entry.map(all::add);
          }
          return new Entry.Read<>(With.component(p, "hazards", all), "");
        });
  }

  private static List<FieldOf<Bottle>> bottle(FieldMaker make) {
    return List.of(
        make.line("batch", "Batch", Bottle::batch),
        make.maybeDay("openedOn", "Opened on", Bottle::openedOn),
        make.maybeDay("useBy", "Use by", Bottle::useBy),
        make.maybeWhole("sizeMl", "Holds, ml", Bottle::sizeMl),
        BottleFields.left(make),
        make.maybeDay("leftOn", "Left on", Bottle::leftOn));
  }

  private Optional<Product> one(Fleet fleet) {
    return fleet.almanac().products().stream().filter(p -> p.id().equals(product)).findFirst();
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(facts, bottles);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Optional<Product> now = one(fleet);
    if (now.isEmpty()) {
      return new SheetState(
          "This product is not on the shelf", "It was removed.", List.of(), Optional.empty());
    }
    return new SheetState(
        now.get().name(),
        "What its label says; the label and the data sheet come first",
        List.of(
            facts.form(fleet),
            bottles.grid(fleet, "No bottle is written down."),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("done", "Done", true),
                    new SheetState.Button("add bottle", "Add a bottle", false),
                    new SheetState.Button("remove", "Remove this product", false)))),
        Optional.empty());
  }

  @Override
  public void remove(String block, String row) {
    fleet()
        .flatMap(
            f ->
                f.almanac().bottles().stream()
                    .filter(b -> b.id().toString().equals(row))
                    .findFirst())
        .ifPresent(this::remove);
  }

  private void remove(Row row) {
    desk.change(Kind.of(row).one() + " removed", almanac -> Removal.of(almanac, row));
  }

  @Override
  public void press(String button) {
    switch (button) {
      case "add bottle" ->
          desk.edit("a bottle added", almanac -> Edit.put(bottle(desk.ids().next(), almanac)));
      case "remove" -> fleet().flatMap(this::one).ifPresent(this::remove);
      default -> desk.leave();
    }
  }

  private Bottle bottle(Id<Bottle> id, Almanac almanac) {
    return new Bottle(
        id,
        new NewKeys(almanac).next(Kind.BOTTLE, "bottle"),
        product,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  @Override
  public Topic topic() {
    return Topic.SHELF;
  }
}
