package hullalmanac.store;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Water;
import java.sql.SQLException;
import java.time.DayOfWeek;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The business, harbours and berths. */
final class PlaceStore {
  private static final Columns BUSINESS =
      Columns.of(
          "business",
          """
          id
          name
          currency
          units
          day_order
          risk
          as_of
          address
          tax_number
          mark
          paper
          first_day
          lead_weeks
          practice
          tax_inclusive
          tax_at
          rounding
          taxes
          invoice_prefix
          credit_prefix
          number_year
          number_digits
          days_to_pay
          hour_minor
          least_minor
          distance_minor
          """);

  private static final Columns HARBOUR =
      Columns.of(
          "harbour",
          """
          id
          key
          name
          latitude
          sunshine
          note
          """);

  private static final Columns BERTH =
      Columns.of(
          "berth",
          """
          id
          key
          boat_id
          harbour_id
          cover
          water
          from_day
          until_day
          yearly
          last_year
          bow
          place
          pontoon_side
          water_supply
          power
          hours
          tide
          runoff
          secret_keys
          secret_gate_code
          secret_absence
          """);

  private final Tx tx;

  PlaceStore(Tx tx) {
    this.tx = tx;
  }

  Optional<Business> business() throws SQLException {
    return tx
        .list(
            BUSINESS.select("id"),
            row ->
                new Business(
                    row.text("name"),
                    Currency.getInstance(row.text("currency")),
                    row.coded(Business.Units.class, "units"),
                    row.coded(Business.DayOrder.class, "day_order"),
                    row.maybeReal("risk"),
                    row.maybeDay("as_of"),
                    new Business.Letterhead(
                        row.text("address"), row.text("tax_number"), row.text("mark")),
                    new Business.Habits(
                        row.coded(Business.Paper.class, "paper"),
                        DayOfWeek.of(row.whole("first_day")),
                        row.whole("lead_weeks")),
                    Practice.parse(row.text("practice")),
                    billing(row)))
        .stream()
        .findFirst();
  }

  private static Billing billing(Cells row) throws SQLException {
    Currency currency = Currency.getInstance(row.text("currency"));
    return new Billing(
        row.terms(),
        Tax.parse(row.text("taxes")),
        new Billing.Numbering(
            row.text("invoice_prefix"),
            row.text("credit_prefix"),
            row.coded(Billing.YearForm.class, "number_year"),
            row.whole("number_digits")),
        row.whole("days_to_pay"),
        new Billing.Charges(
            row.maybeMoney("hour_minor", currency),
            row.maybeMoney("least_minor", currency),
            row.maybeMoney("distance_minor", currency)));
  }

  private static void set(Binder to, Billing b) throws SQLException {
    to.terms(b.terms())
        .set("taxes", Tax.text(b.taxes()))
        .set("invoice_prefix", b.numbering().invoices())
        .set("credit_prefix", b.numbering().credits())
        .set("number_year", b.numbering().year())
        .set("number_digits", b.numbering().digits())
        .set("days_to_pay", b.daysToPay())
        .set("hour_minor", b.charges().hour())
        .set("least_minor", b.charges().least())
        .set("distance_minor", b.charges().distance());
  }

  /** Writes the business, in place of what was written of it before. */
  void write(Business business) throws SQLException {
    tx.each(
        BUSINESS.put(),
        List.of(business),
        (to, b) -> {
          set(to, b.billing());
          to.set("id", 1)
              .set("name", b.name())
              .set("currency", b.currency().getCurrencyCode())
              .set("units", b.units())
              .set("day_order", b.dayOrder())
              .set("risk", b.risk())
              .set("as_of", b.asOf())
              .set("address", b.letterhead().address())
              .set("tax_number", b.letterhead().taxNumber())
              .set("mark", b.letterhead().mark())
              .set("paper", b.habits().paper())
              .set("first_day", b.habits().firstDay().getValue())
              .set("lead_weeks", b.habits().leadWeeks())
              .set("practice", b.practice().text());
        });
  }

  List<Harbour> harbours() throws SQLException {
    return tx.list(
        HARBOUR.select("id"),
        row ->
            new Harbour(
                row.id("id"),
                row.text("key"),
                row.text("name"),
                row.real("latitude"),
                row.list("sunshine", Double::valueOf),
                row.text("note")));
  }

  void putHarbours(List<Harbour> harbours) throws SQLException {
    tx.each(
        HARBOUR.put(),
        harbours,
        (to, h) ->
            to.set("id", h.id())
                .set("key", h.key())
                .set("name", h.name())
                .set("latitude", h.latitude())
                .set(
                    "sunshine",
                    h.sunshine().stream().map(String::valueOf).collect(Collectors.joining(" ")))
                .set("note", h.note()));
  }

  List<Berth> berths() throws SQLException {
    return tx.list(
        BERTH.select("id"),
        row ->
            new Berth(
                row.id("id"),
                row.text("key"),
                row.id("boat_id"),
                row.id("harbour_id"),
                row.coded(Cover.class, "cover"),
                row.coded(Water.class, "water"),
                row.day("from_day"),
                row.maybeDay("until_day"),
                row.flag("yearly"),
                row.maybeWhole("last_year"),
                row.maybeWhole("bow"),
                access(row),
                new Berth.Private(
                    row.text("secret_keys"),
                    row.text("secret_gate_code"),
                    row.text("secret_absence"))));
  }

  private static Berth.Access access(Cells row) throws SQLException {
    return new Berth.Access(
        row.text("place"),
        row.text("pontoon_side"),
        row.text("water_supply"),
        row.text("power"),
        row.text("hours"),
        row.text("tide"),
        row.text("runoff"));
  }

  void putBerths(List<Berth> berths) throws SQLException {
    tx.each(
        BERTH.put(),
        berths,
        (to, b) ->
            to.set("id", b.id())
                .set("key", b.key())
                .set("boat_id", b.boat())
                .set("harbour_id", b.harbour())
                .set("cover", b.cover())
                .set("water", b.water())
                .set("from_day", b.from())
                .set("until_day", b.until())
                .set("yearly", b.yearly())
                .set("last_year", b.lastYear())
                .set("bow", b.bow())
                .set("place", b.access().place())
                .set("pontoon_side", b.access().pontoonSide())
                .set("water_supply", b.access().water())
                .set("power", b.access().power())
                .set("hours", b.access().hours())
                .set("tide", b.access().tide())
                .set("runoff", b.access().runoff())
                .set("secret_keys", b.secrets().keys())
                .set("secret_gate_code", b.secrets().gateCode())
                .set("secret_absence", b.secrets().absence()));
  }
}
