package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.WashStrength;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Products and bottles. */
final class ProductFiles {
  private ProductFiles() {}

  static final CsvKind<Product> PRODUCTS =
      new CsvKind<>(
          "products.csv",
          Kind.PRODUCT,
          List.of(
              needText("id"),
              needText("name"),
              need("kind"),
              value("label_months"),
              value("label_for_cars"),
              value("limit_months"),
              value("wash"),
              value("leaves_wax"),
              value("non_slip"),
              value("hazards"),
              value("dwell_min"),
              value("dwell_max"),
              value("cure_hours"),
              value("min_celsius"),
              value("max_celsius"),
              value("max_humidity"),
              value("parts_water"),
              value("open_months"),
              text("note"))) {
        @Override
        List<Product> rows(Almanac almanac, Keys keys) {
          return almanac.products().stream().sorted(Comparator.comparing(Product::key)).toList();
        }

        @Override
        void write(Product p, Out out) {
          out.put("id", p.key())
              .put("name", p.name())
              .put("kind", p.kind())
              .put("label_months", p.labelMonths())
              .put("label_for_cars", p.labelForCars())
              .put("limit_months", p.limitMonths())
              .put("wash", p.wash())
              .put("leaves_wax", p.leavesWax())
              .put("non_slip", p.nonSlip())
              .put("hazards", List.copyOf(p.hazards()))
              .put("dwell_min", p.handling().dwellMin())
              .put("dwell_max", p.handling().dwellMax())
              .put("cure_hours", p.handling().cureHours())
              .put("min_celsius", p.handling().minCelsius())
              .put("max_celsius", p.handling().maxCelsius())
              .put("max_humidity", p.handling().maxHumidity())
              .put("parts_water", p.handling().partsWater())
              .put("open_months", p.handling().openMonths())
              .put("note", p.note());
        }

        @Override
        Optional<Product> read(In in) {
          Id<Product> id = in.ref(Kind.PRODUCT, "id");
          ProductKind kind = in.coded(ProductKind.class, "kind", ProductKind.OTHER);
          Optional<Double> label = in.maybeReal("label_months");
          boolean cars = in.flag("label_for_cars");
          Optional<Double> limit = in.maybeReal("limit_months");
          Optional<WashStrength> wash = in.maybeCoded(WashStrength.class, "wash");
          boolean leavesWax = in.flag("leaves_wax");
          boolean nonSlip = in.flag("non_slip");
          List<Hazard> hazards =
              in.list(
                  "hazards", ProductFiles::hazard, "Write some of " + Coded.allCodes(Hazard.class));
          Optional<Product.Handling> handling = handling(in);
          return in.made(
              () ->
                  new Product(
                      id,
                      in.key("id"),
                      in.text("name"),
                      kind,
                      label,
                      cars,
                      limit,
                      wash,
                      leavesWax,
                      nonSlip,
                      new TreeSet<>(hazards),
                      handling.orElseThrow(),
                      in.text("note")));
        }
      };

  private static Hazard hazard(String code) {
    return Coded.parse(Hazard.class, code)
        .orElseThrow(() -> new IllegalArgumentException("\"" + code + "\" is not a hazard"));
  }

  private static Optional<Product.Handling> handling(In in) {
    Optional<Integer> dwellMin = in.maybeWhole("dwell_min");
    Optional<Integer> dwellMax = in.maybeWhole("dwell_max");
    Optional<Integer> cure = in.maybeWhole("cure_hours");
    Optional<Integer> min = in.maybeWhole("min_celsius");
    Optional<Integer> max = in.maybeWhole("max_celsius");
    Optional<Integer> humidity = in.maybeWhole("max_humidity");
    Optional<Integer> water = in.maybeWhole("parts_water");
    Optional<Integer> open = in.maybeWhole("open_months");
    return in.made(
        () -> new Product.Handling(dwellMin, dwellMax, cure, min, max, humidity, water, open));
  }

  static final CsvKind<Bottle> BOTTLES =
      new CsvKind<>(
          "bottles.csv",
          Kind.BOTTLE,
          List.of(
              needText("id"),
              needText("product"),
              text("batch"),
              value("opened_on"),
              value("use_by"),
              value("size_ml"),
              value("left_ml"),
              value("left_on"))) {
        @Override
        List<Bottle> rows(Almanac almanac, Keys keys) {
          return almanac.bottles().stream().sorted(Comparator.comparing(Bottle::key)).toList();
        }

        @Override
        void write(Bottle b, Out out) {
          out.put("id", b.key())
              .ref("product", Kind.PRODUCT, b.product())
              .put("batch", b.batch())
              .put("opened_on", b.openedOn())
              .put("use_by", b.useBy())
              .put("size_ml", b.sizeMl())
              .put("left_ml", b.leftMl())
              .put("left_on", b.leftOn());
        }

        @Override
        Optional<Bottle> read(In in) {
          Id<Bottle> id = in.ref(Kind.BOTTLE, "id");
          Id<Product> product = in.ref(Kind.PRODUCT, "product");
          Optional<LocalDate> opened = in.maybeDay("opened_on");
          Optional<LocalDate> useBy = in.maybeDay("use_by");
          Optional<Integer> size = in.maybeWhole("size_ml");
          Optional<Integer> left = in.maybeWhole("left_ml");
          Optional<LocalDate> leftOn = in.maybeDay("left_on");
          return in.made(
              () ->
                  new Bottle(
                      id,
                      in.key("id"),
                      product,
                      in.text("batch"),
                      opened,
                      useBy,
                      size,
                      left,
                      leftOn));
        }
      };
}
