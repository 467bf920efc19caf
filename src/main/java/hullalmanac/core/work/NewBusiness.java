package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Books;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.With;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Other facts of the business. */
public final class NewBusiness {
  private NewBusiness() {}

  /**
   * The record with other facts of its business. Where the currency changes, all prices keep their
   * numbers and are in the new one from then on: those of care plans, rates, estimates, drafts and
   * the business's own. It is refused once money was asked, received or spent, because that was in
   * the old one.
   */
  public static Change of(Almanac almanac, Business business) {
    Currency before = almanac.business().currency();
    Currency currency = business.currency();
    if (currency.equals(before)) {
      return new Change.Ready(new Edit(Optional.of(business), List.of(), List.of()));
    }
    Optional<String> why = moved(almanac.books());
    if (why.isPresent()) {
      return refused(
          Kind.BUSINESS,
          "",
          why.get() + " in " + before.getCurrencyCode() + ", so the currency stays",
          "Begin another record for " + currency.getCurrencyCode());
    }
    List<Row> put = new ArrayList<>();
    for (Row row : almanac.rows()) {
      Optional<Row> now = in(currency, row);
      if (now.isEmpty()) {
        return refused(
            Kind.of(row),
            row.key(),
            "a price of the "
                + Kind.of(row).one()
                + " "
                + row.key()
                + " cannot be written in "
                + currency.getCurrencyCode(),
            "Change that price first");
      }
      now.filter(r -> !r.equals(row)).ifPresent(put::add);
    }
    return in(currency, business)
        .map(b -> Change.checked(almanac, new Edit(Optional.of(b), put, List.of())))
        .orElseGet(
            () ->
                refused(
                    Kind.BUSINESS,
                    "",
                    "a price of the business cannot be written in " + currency.getCurrencyCode(),
                    "Change what an hour, a visit or a way costs first"));
  }

  private static Change refused(Kind kind, String key, String message, String advice) {
    return Change.refused(new Problem(kind, key, "currency", message, advice));
  }

  /** What says that money has changed hands, or was asked. */
  private static Optional<String> moved(Books books) {
    if (books.invoices().stream().anyMatch(Invoice::issued)) {
      return Optional.of("invoices were issued");
    }
    if (!books.payments().isEmpty()) {
      return Optional.of("payments were received");
    }
    return books.expenses().isEmpty() ? Optional.empty() : Optional.of("money was spent");
  }

  /** The same with all its amounts in a currency; nothing where one cannot be written in it. */
  private static <T> Optional<T> in(Currency currency, T value) {
    try {
      @SuppressWarnings("unchecked")
      T same = (T) With.each(value, Money.class, m -> Money.of(m.amount(), currency));
      return Optional.of(same);
    } catch (ArithmeticException e) {
      return Optional.empty();
    }
  }
}
