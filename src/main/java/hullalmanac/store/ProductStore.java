package hullalmanac.store;

import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.WashStrength;
import java.sql.SQLException;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Products and bottles. */
final class ProductStore {
  private static final Columns PRODUCT =
      Columns.of(
          "product",
          """
          id
          key
          name
          kind
          label_months
          label_for_cars
          limit_months
          wash
          leaves_wax
          non_slip
          hazards
          dwell_min
          dwell_max
          cure_hours
          min_celsius
          max_celsius
          max_humidity
          parts_water
          open_months
          note
          """);

  private static final Columns BOTTLE =
      Columns.of(
          "bottle",
          """
          id
          key
          product_id
          batch
          opened_on
          use_by
          size_ml
          left_ml
          left_on
          """);

  private final Tx tx;

  ProductStore(Tx tx) {
    this.tx = tx;
  }

  List<Product> products() throws SQLException {
    return tx.list(
        PRODUCT.select("id"),
        row ->
            new Product(
                row.id("id"),
                row.text("key"),
                row.text("name"),
                row.coded(ProductKind.class, "kind"),
                row.maybeReal("label_months"),
                row.flag("label_for_cars"),
                row.maybeReal("limit_months"),
                row.maybeCoded(WashStrength.class, "wash"),
                row.flag("leaves_wax"),
                row.flag("non_slip"),
                new TreeSet<>(row.list("hazards", h -> Coded.parse(Hazard.class, h).orElseThrow())),
                handling(row),
                row.text("note")));
  }

  private static Product.Handling handling(Cells row) throws SQLException {
    return new Product.Handling(
        row.maybeWhole("dwell_min"),
        row.maybeWhole("dwell_max"),
        row.maybeWhole("cure_hours"),
        row.maybeWhole("min_celsius"),
        row.maybeWhole("max_celsius"),
        row.maybeWhole("max_humidity"),
        row.maybeWhole("parts_water"),
        row.maybeWhole("open_months"));
  }

  void putProducts(List<Product> products) throws SQLException {
    tx.each(
        PRODUCT.put(),
        products,
        (to, p) ->
            to.set("id", p.id())
                .set("key", p.key())
                .set("name", p.name())
                .set("kind", p.kind())
                .set("label_months", p.labelMonths())
                .set("label_for_cars", p.labelForCars())
                .set("limit_months", p.limitMonths())
                .set("wash", p.wash())
                .set("leaves_wax", p.leavesWax())
                .set("non_slip", p.nonSlip())
                .set(
                    "hazards",
                    p.hazards().stream().map(Hazard::code).collect(Collectors.joining(" ")))
                .set("dwell_min", p.handling().dwellMin())
                .set("dwell_max", p.handling().dwellMax())
                .set("cure_hours", p.handling().cureHours())
                .set("min_celsius", p.handling().minCelsius())
                .set("max_celsius", p.handling().maxCelsius())
                .set("max_humidity", p.handling().maxHumidity())
                .set("parts_water", p.handling().partsWater())
                .set("open_months", p.handling().openMonths())
                .set("note", p.note()));
  }

  List<Bottle> bottles() throws SQLException {
    return tx.list(
        BOTTLE.select("id"),
        row ->
            new Bottle(
                row.id("id"),
                row.text("key"),
                row.id("product_id"),
                row.text("batch"),
                row.maybeDay("opened_on"),
                row.maybeDay("use_by"),
                row.maybeWhole("size_ml"),
                row.maybeWhole("left_ml"),
                row.maybeDay("left_on")));
  }

  void putBottles(List<Bottle> bottles) throws SQLException {
    tx.each(
        BOTTLE.put(),
        bottles,
        (to, b) ->
            to.set("id", b.id())
                .set("key", b.key())
                .set("product_id", b.product())
                .set("batch", b.batch())
                .set("opened_on", b.openedOn())
                .set("use_by", b.useBy())
                .set("size_ml", b.sizeMl())
                .set("left_ml", b.leftMl())
                .set("left_on", b.leftOn()));
  }
}
