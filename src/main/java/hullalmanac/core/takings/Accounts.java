package hullalmanac.core.takings;

import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Books;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Visit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the invoices of a record come to, and what of them was credited and paid.
 *
 * <p>Of each issued invoice, total = credited + paid + open. Open is below nothing only where more
 * was paid than was asked, as when a payment was put back after another had paid.
 */
public final class Accounts {
  private final Books books;
  private final Currency currency;
  private final Map<Id<Invoice>, Bill> bills = new HashMap<>();
  private final Map<Id<Invoice>, Money> credited = new HashMap<>();
  private final Map<Id<Invoice>, Money> paid = new HashMap<>();
  private final Map<Id<Visit>, List<Invoice>> onLines = new HashMap<>();

  private Accounts(Books books, Currency currency) {
    this.books = books;
    this.currency = currency;
    for (Invoice invoice : books.invoices()) {
      Bill bill = Bill.of(invoice, currency);
      bills.put(invoice.id(), bill);
      invoice
          .credits()
          .filter(i -> invoice.issued())
          .ifPresent(i -> credited.merge(i, bill.total(), Money::plus));
      if (invoice.credits().isEmpty()) {
        invoice.lines().stream()
            .flatMap(l -> l.visit().stream())
            .distinct()
            .forEach(v -> onLines.computeIfAbsent(v, x -> new ArrayList<>()).add(invoice));
      }
    }
    for (Payment payment : books.payments()) {
      payment
          .uses()
          .forEach(u -> u.invoice().ifPresent(i -> paid.merge(i, u.amount(), Money::plus)));
    }
  }

  /** Reads a record. */
  public static Accounts of(Almanac almanac) {
    return new Accounts(almanac.books(), almanac.business().currency());
  }

  /** The same of a record after a change; reckons again only where money was touched. */
  public Accounts next(Almanac changed) {
    boolean same =
        changed.books().invoices().equals(books.invoices())
            && changed.books().payments().equals(books.payments())
            && changed.business().currency().equals(currency);
    return same ? this : of(changed);
  }

  private Money nothing() {
    return Money.zero(currency);
  }

  /** What an invoice or a credit comes to, a draft too. */
  public Bill bill(Invoice invoice) {
    return bills.get(invoice.id());
  }

  /** What of an invoice was taken back by issued credits. */
  public Money credited(Invoice invoice) {
    return credited.getOrDefault(invoice.id(), nothing());
  }

  /** What of an invoice was paid. */
  public Money paid(Invoice invoice) {
    return paid.getOrDefault(invoice.id(), nothing());
  }

  /** What of an issued invoice is still to be paid; nothing of a draft or a credit. */
  public Money open(Invoice invoice) {
    return invoice.issued() && invoice.credits().isEmpty()
        ? bill(invoice).total().minus(credited(invoice)).minus(paid(invoice))
        : nothing();
  }

  /** Whether an issued invoice was taken back as a whole. */
  public boolean takenBack(Invoice invoice) {
    return invoice.issued()
        && credited.containsKey(invoice.id())
        && credited(invoice).compareTo(bill(invoice).total()) >= 0;
  }

  /** The invoice or draft on which a visit stands, unless that was taken back as a whole. */
  public Optional<Invoice> billed(Id<Visit> visit) {
    return on(visit).filter(i -> !takenBack(i)).findFirst();
  }

  /** Invoices and drafts on which a visit stands. */
  private Stream<Invoice> on(Id<Visit> visit) {
    return onLines.getOrDefault(visit, List.of()).stream();
  }

  /** The issued invoice on which a visit stands, unless that was taken back as a whole. */
  Optional<Invoice> issuedFor(Id<Visit> visit) {
    return on(visit).filter(i -> i.issued() && !takenBack(i)).findFirst();
  }

  /** The row with an id; whoever asks for one that is not there has made a mistake. */
  static <R extends Row> R row(List<R> rows, Id<R> id) {
    return rows.stream()
        .filter(r -> r.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no row has the id " + id.value()));
  }
}
