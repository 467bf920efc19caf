package hullalmanac.core.takings;

import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Trip;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** All that an accountant asks for of a span of days, an entry a thing, in order of the days. */
public final class Ledger {
  private final Almanac almanac;
  private final List<Entry> entries = new ArrayList<>();

  private Ledger(Almanac almanac) {
    this.almanac = almanac;
  }

  /** What an entry is of. */
  public enum What {
    INVOICE("invoice"),
    CREDIT("credit"),
    PAYMENT("payment"),
    GIVEN_BACK("given back"),
    KEPT("kept"),
    EXPENSE("expense"),
    TRIP("trip");

    private final String words;

    What(String words) {
      this.words = words;
    }

    /** The word in files. */
    public String words() {
      return words;
    }
  }

  /**
   * One entry. A credit has amounts below nothing.
   *
   * @param number of the invoice, or the own id of a payment, expense or trip
   * @param about boats, what was bought, where a way led; how money came
   * @param net without taxes
   * @param total with taxes
   * @param in money that came in
   * @param out money that went out
   * @param taxes of an invoice, each with what it is taken of
   * @param km driven
   * @param refers numbers of the invoices that a payment pays or a credit takes back
   */
  public record Entry(
      LocalDate day,
      What what,
      String number,
      String party,
      String about,
      Optional<Money> net,
      Optional<Money> tax,
      Optional<Money> total,
      Optional<Money> in,
      Optional<Money> out,
      List<TaxOf> taxes,
      Optional<BigDecimal> km,
      List<String> refers) {
    public Entry {
      taxes = List.copyOf(taxes);
      refers = List.copyOf(refers);
    }
  }

  /** One tax of an invoice; of a credit below nothing. */
  public record TaxOf(Tax tax, Money base, Money amount) {}

  /**
   * Reads a record.
   *
   * @param from first day
   * @param until first day that does not count any more
   */
  public static List<Entry> of(Almanac almanac, LocalDate from, LocalDate until) {
    Ledger ledger = new Ledger(almanac);
    almanac.books().invoices().stream().filter(Invoice::issued).forEach(ledger::invoice);
    almanac.books().payments().forEach(ledger::payment);
    almanac.books().expenses().forEach(ledger::expense);
    almanac.books().trips().forEach(ledger::trip);
    return ledger.entries.stream()
        .filter(e -> !e.day().isBefore(from) && e.day().isBefore(until))
        .sorted(
            Comparator.comparing(Entry::day)
                .thenComparing(Entry::what)
                .thenComparing(Entry::number))
        .toList();
  }

  private String name(Id<Party> party) {
    return Accounts.row(almanac.parties(), party).name();
  }

  private void invoice(Invoice invoice) {
    Bill bill = Bill.of(invoice, almanac.business().currency());
    boolean credit = invoice.credits().isPresent();
    Invoice.Issue issue = invoice.issue().orElseThrow();
    entries.add(
        new Entry(
            issue.day(),
            credit ? What.CREDIT : What.INVOICE,
            issue.number(),
            name(invoice.party()),
            invoice.boat().map(b -> Accounts.row(almanac.boats(), b)).map(Boat::name).orElse(""),
            Optional.of(signed(bill.net(), credit)),
            Optional.of(signed(bill.tax(), credit)),
            Optional.of(signed(bill.total(), credit)),
            Optional.empty(),
            Optional.empty(),
            bill.taxes().stream()
                .map(t -> new TaxOf(t.tax(), signed(t.base(), credit), signed(t.amount(), credit)))
                .toList(),
            Optional.empty(),
            invoice.credits().map(this::number).stream().toList()));
  }

  private static Money signed(Money amount, boolean credit) {
    return credit ? amount.negated() : amount;
  }

  private String number(Id<Invoice> id) {
    return Accounts.row(almanac.books().invoices(), id)
        .issue()
        .map(Invoice.Issue::number)
        .orElse("");
  }

  private void payment(Payment payment) {
    List<String> pays =
        payment.uses().stream().flatMap(u -> u.invoice().stream()).map(this::number).toList();
    entries.add(money(payment, payment.day(), What.PAYMENT, Optional.of(payment.amount()), pays));
    for (Payment.Use use : payment.uses()) {
      if (use.became() == Payment.Became.GIVEN_BACK) {
        entries.add(
            out(payment, use.day(), What.GIVEN_BACK, Optional.of(use.amount()), use.amount()));
      } else if (use.became() == Payment.Became.KEPT) {
        entries.add(out(payment, use.day(), What.KEPT, Optional.empty(), use.amount()));
      }
    }
  }

  private Entry money(
      Payment payment, LocalDate day, What what, Optional<Money> in, List<String> refers) {
    return new Entry(
        day,
        what,
        payment.key(),
        name(payment.party()),
        payment.how().words(),
        Optional.empty(),
        Optional.empty(),
        in,
        in,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        refers);
  }

  private Entry out(Payment payment, LocalDate day, What what, Optional<Money> out, Money amount) {
    return new Entry(
        day,
        what,
        payment.key(),
        name(payment.party()),
        payment.how().words(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(amount),
        Optional.empty(),
        out,
        List.of(),
        Optional.empty(),
        List.of());
  }

  private void expense(Expense e) {
    entries.add(
        new Entry(
            e.day(),
            What.EXPENSE,
            e.key(),
            e.from(),
            e.sort().words() + ": " + e.what(),
            e.tax().map(t -> e.amount().minus(t)),
            e.tax(),
            Optional.of(e.amount()),
            Optional.empty(),
            Optional.of(e.amount()),
            List.of(),
            Optional.empty(),
            List.of()));
  }

  private void trip(Trip t) {
    entries.add(
        new Entry(
            t.day(),
            What.TRIP,
            t.key(),
            "",
            t.note(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.of(BigDecimal.valueOf(t.metres(), 3)),
            List.of()));
  }
}
