package hullalmanac.exchange.csv;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.TaxTerms;
import hullalmanac.core.record.Trip;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * The files with amounts in them. These are in the currency of the business, so they are read once
 * that is known.
 */
final class MoneyFiles {
  final CsvKind<CarePlan> carePlans;
  final CsvKind<Rate> rates;
  final EstimateFiles estimates;
  final InvoiceFiles invoices;
  final CsvKind<Payment> payments;
  final CsvKind<PaymentFiles.UseRow> uses;
  final CsvKind<Trip> trips = BooksFiles.TRIPS;
  final CsvKind<Expense> expenses;

  MoneyFiles(Business business) {
    Currency currency = business.currency();
    TaxTerms terms = business.billing().terms();
    carePlans = PlanFiles.carePlans(currency);
    rates = BooksFiles.rates(currency);
    estimates = new EstimateFiles(currency, terms);
    invoices = new InvoiceFiles(currency, terms);
    payments = PaymentFiles.payments(currency);
    uses = PaymentFiles.uses(currency);
    expenses = BooksFiles.expenses(currency);
  }

  /** The files of the set that come after all others, in the order in which they are written. */
  List<CsvKind<?>> books() {
    return List.of(
        rates,
        estimates.estimates,
        estimates.expectations,
        estimates.options,
        estimates.lines,
        invoices.invoices,
        invoices.lines,
        payments,
        uses,
        trips,
        expenses);
  }

  static Optional<Money> money(In in, String column, Currency currency) {
    return in.maybe(column, t -> amount(in, t, currency), "Write it as 45.00");
  }

  /** An amount that is needed; nothing is noted a second time when it is empty. */
  static Money needed(In in, String column, Currency currency) {
    return money(in, column, currency).orElse(Money.zero(currency));
  }

  private static Money amount(In in, String text, Currency currency) {
    try {
      return Money.of(in.decimalOf(text), currency);
    } catch (ArithmeticException e) {
      throw new IllegalArgumentException(
          text + " has more decimals than " + currency.getCurrencyCode() + " has", e);
    }
  }

  /** A part of a sum, from a column in percent and one with an amount. */
  static Optional<Share> share(In in, String name, Currency currency) {
    Optional<java.math.BigDecimal> percent =
        in.maybe(name + "_percent", in::decimalOf, "Write it as 7.5");
    Optional<Money> amount = money(in, name, currency);
    return in.made(() -> new Share(percent, amount));
  }

  static void put(Out out, String name, Share share) {
    out.put(name + "_percent", share.percent()).put(name, share.amount());
  }

  static TaxTerms terms(In in, TaxTerms usual) {
    return new TaxTerms(
        in.maybeText("tax_inclusive").isPresent() ? in.flag("tax_inclusive") : usual.inclusive(),
        in.coded(TaxTerms.At.class, "tax_at", usual.at()),
        in.coded(TaxTerms.Rounding.class, "rounding", usual.rounding()));
  }

  static void put(Out out, TaxTerms terms) {
    out.put("tax_inclusive", terms.inclusive())
        .put("tax_at", terms.at())
        .put("rounding", terms.rounding());
  }
}
