package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.TaxTerms;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The business and what it sets. */
final class BusinessFiles {
  private BusinessFiles() {}

  static final CsvKind<Business> BUSINESS =
      new CsvKind<>(
          "business.csv",
          Kind.BUSINESS,
          List.of(
              needText("name"),
              value("currency"),
              value("units"),
              value("day_order"),
              value("risk"),
              value("as_of"),
              text("address"),
              text("tax_number"),
              value("mark"),
              value("paper"),
              value("first_day"),
              value("lead_weeks"),
              value("practice"),
              value("tax_inclusive"),
              value("tax_at"),
              value("rounding"),
              text("taxes"),
              text("invoice_prefix"),
              text("credit_prefix"),
              value("number_year"),
              value("number_digits"),
              value("days_to_pay"),
              value("hour_price"),
              value("least_price"),
              value("distance_price"))) {
        @Override
        List<Business> rows(Almanac almanac, Keys keys) {
          return List.of(almanac.business());
        }

        @Override
        void write(Business b, Out out) {
          out.put("name", b.name())
              .put("currency", b.currency().getCurrencyCode())
              .put("units", b.units())
              .put("day_order", b.dayOrder())
              .put("risk", b.risk())
              .put("as_of", b.asOf())
              .put("address", b.letterhead().address())
              .put("tax_number", b.letterhead().taxNumber())
              .put("mark", b.letterhead().mark())
              .put("paper", b.habits().paper())
              .put("first_day", b.habits().firstDay().name().toLowerCase(Locale.ROOT))
              .put("lead_weeks", b.habits().leadWeeks())
              .put("practice", b.practice().text());
          put(out, b.billing());
        }

        @Override
        Optional<Business> read(In in) {
          Business usual = Business.unnamed();
          Currency currency =
              in.maybe(
                      "currency",
                      BusinessFiles::currency,
                      "Write its three letters, such as USD or EUR")
                  .orElse(usual.currency());
          Business.Units units = in.coded(Business.Units.class, "units", usual.units());
          Business.DayOrder order =
              in.coded(Business.DayOrder.class, "day_order", usual.dayOrder());
          Optional<Double> risk = in.maybeReal("risk");
          Optional<LocalDate> asOf = in.maybeDay("as_of");
          Optional<Business.Habits> habits = habits(in, usual.habits());
          Practice practice =
              in.maybe("practice", Practice::parse, "Write it as risk-dark=0.25 shed=0.1")
                  .orElse(Practice.STANDARD);
          Optional<Billing> billing = billing(in, currency);
          return in.made(
              () ->
                  new Business(
                      in.text("name"),
                      currency,
                      units,
                      order,
                      risk,
                      asOf,
                      new Business.Letterhead(
                          in.text("address"), in.text("tax_number"), in.text("mark")),
                      habits.orElseThrow(),
                      practice,
                      billing.orElseThrow()));
        }
      };

  private static Optional<Business.Habits> habits(In in, Business.Habits usual) {
    Business.Paper paper = in.coded(Business.Paper.class, "paper", usual.paper());
    DayOfWeek first =
        in.maybe("first_day", BusinessFiles::day, "Write monday, saturday or sunday")
            .orElse(usual.firstDay());
    int weeks = in.maybeWhole("lead_weeks").orElse(usual.leadWeeks());
    return in.made(() -> new Business.Habits(paper, first, weeks));
  }

  private static void put(Out out, Billing b) {
    MoneyFiles.put(out, b.terms());
    out.put("taxes", Tax.text(b.taxes()))
        .put("invoice_prefix", b.numbering().invoices())
        .put("credit_prefix", b.numbering().credits())
        .put("number_year", b.numbering().year())
        .put("number_digits", b.numbering().digits())
        .put("days_to_pay", b.daysToPay())
        .put("hour_price", b.charges().hour())
        .put("least_price", b.charges().least())
        .put("distance_price", b.charges().distance());
  }

  private static Optional<Billing> billing(In in, Currency currency) {
    Billing usual = Billing.USUAL;
    TaxTerms terms = MoneyFiles.terms(in, usual.terms());
    List<Tax> taxes = BooksFiles.taxes(in);
    Billing.YearForm year =
        in.coded(Billing.YearForm.class, "number_year", usual.numbering().year());
    int digits = in.maybeWhole("number_digits").orElse(usual.numbering().digits());
    int days = in.maybeWhole("days_to_pay").orElse(usual.daysToPay());
    Optional<Money> hour = MoneyFiles.money(in, "hour_price", currency);
    Optional<Money> least = MoneyFiles.money(in, "least_price", currency);
    Optional<Money> distance = MoneyFiles.money(in, "distance_price", currency);
    return in.made(
        () ->
            new Billing(
                terms,
                taxes,
                new Billing.Numbering(
                    in.text("invoice_prefix"), in.text("credit_prefix"), year, digits),
                days,
                new Billing.Charges(hour, least, distance)));
  }

  private static DayOfWeek day(String text) {
    try {
      return DayOfWeek.valueOf(text.toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("\"" + text + "\" is not a day of the week", e);
    }
  }

  private static Currency currency(String code) {
    try {
      Currency currency = Currency.getInstance(code.toUpperCase(Locale.ROOT));
      if (currency.getDefaultFractionDigits() >= 0) {
        return currency;
      }
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("there is no currency \"" + code + "\"", e);
    }
    throw new IllegalArgumentException("nobody is paid in \"" + code + "\"");
  }
}
