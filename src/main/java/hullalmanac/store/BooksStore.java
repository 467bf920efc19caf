package hullalmanac.store;

import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Trip;
import java.sql.SQLException;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Rates, payments, trips and expenses. */
final class BooksStore {
  private static final Columns RATE =
      Columns.of(
          "rate",
          """
          id
          key
          service
          steps
          extent
          unit
          condition
          type
          from_mm
          below_mm
          low_minor
          high_minor
          note
          """);

  private static final Columns PAYMENT =
      Columns.of(
          "payment",
          """
          id
          key
          party_id
          day
          amount_minor
          how
          estimate_id
          note
          """);

  private static final Columns PAYMENT_USE =
      Columns.of(
          "payment_use",
          """
          payment_id
          place
          became
          invoice_id
          amount_minor
          day
          """);

  private static final Columns TRIP =
      Columns.of(
          "trip",
          """
          id
          key
          day
          metres
          minutes
          visit_id
          note
          """);

  private static final Columns EXPENSE =
      Columns.of(
          "expense",
          """
          id
          key
          day
          sort
          what
          bought_from
          amount_minor
          tax_minor
          visit_id
          note
          """);

  private final Tx tx;

  BooksStore(Tx tx) {
    this.tx = tx;
  }

  /** Kinds of step as one text, parted by blanks. */
  static String text(Collection<StepKind> steps) {
    return steps.stream().map(StepKind::code).collect(Collectors.joining(" "));
  }

  static StepKind step(String code) {
    return Coded.parse(StepKind.class, code)
        .orElseThrow(() -> new IllegalStateException("no StepKind is called " + code));
  }

  List<Rate> rates(Currency currency) throws SQLException {
    return tx.list(
        RATE.select("id"),
        row ->
            new Rate(
                row.id("id"),
                row.text("key"),
                row.text("service"),
                new TreeSet<>(row.list("steps", BooksStore::step)),
                row.coded(Extent.class, "extent"),
                row.coded(PriceUnit.class, "unit"),
                row.maybeCoded(Condition.class, "condition"),
                row.maybeCoded(BoatType.class, "type"),
                row.maybeLength("from_mm"),
                row.maybeLength("below_mm"),
                row.money("low_minor", currency),
                row.money("high_minor", currency),
                row.text("note")));
  }

  void putRates(List<Rate> rates) throws SQLException {
    tx.each(
        RATE.put(),
        rates,
        (to, r) ->
            to.set("id", r.id())
                .set("key", r.key())
                .set("service", r.service())
                .set("steps", text(r.steps()))
                .set("extent", r.extent())
                .set("unit", r.unit())
                .set("condition", r.condition())
                .set("type", r.type())
                .set("from_mm", r.from())
                .set("below_mm", r.below())
                .set("low_minor", r.low())
                .set("high_minor", r.high())
                .set("note", r.note()));
  }

  List<Payment> payments(Currency currency) throws SQLException {
    Map<Long, List<Payment.Use>> uses =
        Placed.gather(
            tx.list(
                PAYMENT_USE.select("payment_id, place"),
                row ->
                    new Placed<Payment, Payment.Use>(
                        row.id("payment_id"),
                        row.whole("place"),
                        new Payment.Use(
                            row.coded(Payment.Became.class, "became"),
                            row.maybeId("invoice_id"),
                            row.money("amount_minor", currency),
                            row.day("day")))));
    return tx.list(
        PAYMENT.select("id"),
        row ->
            new Payment(
                row.id("id"),
                row.text("key"),
                row.id("party_id"),
                row.day("day"),
                row.money("amount_minor", currency),
                row.coded(Payment.How.class, "how"),
                row.maybeId("estimate_id"),
                uses.getOrDefault(row.number("id"), List.of()),
                row.text("note")));
  }

  void putPayments(List<Payment> payments) throws SQLException {
    tx.each(
        PAYMENT.put(),
        payments,
        (to, p) ->
            to.set("id", p.id())
                .set("key", p.key())
                .set("party_id", p.party())
                .set("day", p.day())
                .set("amount_minor", p.amount())
                .set("how", p.how())
                .set("estimate_id", p.estimate())
                .set("note", p.note()));
    tx.each(
        PAYMENT_USE.cut(),
        payments,
        (to, p) -> to.set("payment_id", p.id()).set("place", p.uses().size()));
    tx.each(
        PAYMENT_USE.put(),
        payments.stream().flatMap(p -> Placed.place(p.id(), p.uses()).stream()).toList(),
        (to, u) ->
            to.set("payment_id", u.owner())
                .set("place", u.place())
                .set("became", u.item().became())
                .set("invoice_id", u.item().invoice())
                .set("amount_minor", u.item().amount())
                .set("day", u.item().day()));
  }

  List<Trip> trips() throws SQLException {
    return tx.list(
        TRIP.select("id"),
        row ->
            new Trip(
                row.id("id"),
                row.text("key"),
                row.day("day"),
                row.whole("metres"),
                row.maybeWhole("minutes"),
                row.maybeId("visit_id"),
                row.text("note")));
  }

  void putTrips(List<Trip> trips) throws SQLException {
    tx.each(
        TRIP.put(),
        trips,
        (to, t) ->
            to.set("id", t.id())
                .set("key", t.key())
                .set("day", t.day())
                .set("metres", t.metres())
                .set("minutes", t.minutes())
                .set("visit_id", t.visit())
                .set("note", t.note()));
  }

  List<Expense> expenses(Currency currency) throws SQLException {
    return tx.list(
        EXPENSE.select("id"),
        row ->
            new Expense(
                row.id("id"),
                row.text("key"),
                row.day("day"),
                row.coded(Expense.Sort.class, "sort"),
                row.text("what"),
                row.text("bought_from"),
                row.money("amount_minor", currency),
                row.maybeMoney("tax_minor", currency),
                row.maybeId("visit_id"),
                row.text("note")));
  }

  void putExpenses(List<Expense> expenses) throws SQLException {
    tx.each(
        EXPENSE.put(),
        expenses,
        (to, e) ->
            to.set("id", e.id())
                .set("key", e.key())
                .set("day", e.day())
                .set("sort", e.sort())
                .set("what", e.what())
                .set("bought_from", e.from())
                .set("amount_minor", e.amount())
                .set("tax_minor", e.tax())
                .set("visit_id", e.visit())
                .set("note", e.note()));
  }
}
