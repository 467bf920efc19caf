package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.Change;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Issues invoices and credits: each gets the next number of its series, without gaps, and stays as
 * it is from then on.
 *
 * <p>With an invoice for a visit that came of an estimate, deposits held for that estimate pay it.
 * With a credit, what was paid of the invoice beyond what is left to pay is held again.
 */
public final class Issuing {
  private final Almanac almanac;
  private final Accounts accounts;
  private final Invoice draft;
  private final LocalDate day;

  private Issuing(Almanac almanac, Invoice draft, LocalDate day) {
    this.almanac = almanac;
    this.draft = draft;
    this.day = day;
    accounts = Accounts.of(almanac);
  }

  /** Issues a draft on a day. */
  public static Change issue(Almanac almanac, Id<Invoice> id, LocalDate day) {
    Issuing issuing = new Issuing(almanac, Accounts.row(almanac.books().invoices(), id), day);
    return issuing.trouble().map(Change::refused).orElseGet(issuing::issued);
  }

  /** Issues a draft on a day, unless it is not any more as it was shown. */
  public static Change issueAsShown(Almanac almanac, Invoice shown, LocalDate day) {
    Invoice now = Accounts.row(almanac.books().invoices(), shown.id());
    return now.equals(shown)
        ? issue(almanac, shown.id(), day)
        : Change.refused(
            new Problem(
                Kind.INVOICE,
                shown.key(),
                "",
                "the " + shown.words() + " was changed meanwhile",
                "Look again, then issue it"));
  }

  /** The number that a draft would get on a day. */
  public static String nextNumber(Almanac almanac, Invoice draft, LocalDate day) {
    return new Issuing(almanac, draft, day).next().number();
  }

  private static Stream<Invoice.Issue> issues(Almanac almanac) {
    return almanac.books().invoices().stream().flatMap(i -> i.issue().stream());
  }

  private Optional<Problem> trouble() {
    if (draft.issued()) {
      return no("number", "the " + draft.words() + " is issued already", "Write a credit for it");
    }
    if (draft.lines().isEmpty()) {
      return no("id", "there is no line on the draft", "Write what it is for");
    }
    Optional<Invoice.Issue> later =
        issues(almanac)
            .filter(i -> i.series().equals(series()) && i.day().isAfter(day))
            .max(Comparator.comparing(Invoice.Issue::sequence));
    if (later.isPresent()) {
      return no(
          "issued_on",
          later.get().number()
              + " was issued on "
              + ChargedLines.day(later.get().day())
              + ", and numbers follow the days",
          "Issue it on that day or later");
    }
    return draft.credits().isPresent() ? creditTrouble() : visitTrouble();
  }

  private Optional<Problem> no(String field, String message, String advice) {
    return Optional.of(new Problem(Kind.INVOICE, draft.key(), field, message, advice));
  }

  private Optional<Problem> creditTrouble() {
    Invoice invoice = credited();
    Money left = accounts.bill(invoice).total().minus(accounts.credited(invoice));
    Money asked = accounts.bill(draft).total();
    return asked.compareTo(left) <= 0
        ? Optional.empty()
        : no(
            "credits",
            "the credit comes to "
                + asked.words()
                + ", but of the "
                + invoice.words()
                + " only "
                + left.words()
                + " is left to take back",
            "Make the credit smaller");
  }

  private Invoice credited() {
    return Accounts.row(almanac.books().invoices(), draft.credits().orElseThrow());
  }

  /** A visit must not be asked for twice, however a second draft of it came about. */
  private Optional<Problem> visitTrouble() {
    for (PriceLine line : draft.lines()) {
      Optional<Invoice> other = line.visit().flatMap(accounts::issuedFor);
      if (other.isPresent()) {
        return no(
            "visit",
            "\"" + line.words() + "\" stands on the " + other.get().words() + " already",
            "Take the line out, or write a credit for that invoice first");
      }
    }
    return Optional.empty();
  }

  private String series() {
    return numbering().series(draft.credits().isPresent(), day);
  }

  private Billing.Numbering numbering() {
    return almanac.business().billing().numbering();
  }

  private Invoice.Issue next() {
    String series = series();
    int last =
        issues(almanac)
            .filter(i -> i.series().equals(series))
            .mapToInt(Invoice.Issue::sequence)
            .max()
            .orElse(0);
    boolean credit = draft.credits().isPresent();
    return new Invoice.Issue(
        series,
        last + 1,
        numbering().number(series, last + 1),
        day,
        credit ? day : day.plusDays(almanac.business().billing().daysToPay()),
        to(Accounts.row(almanac.parties(), draft.party())));
  }

  private static String to(Party party) {
    return (party.name() + "\n" + party.address()).strip();
  }

  private Change issued() {
    Invoice issued =
        new Invoice(
            draft.id(),
            draft.key(),
            draft.party(),
            draft.boat(),
            draft.credits(),
            draft.lines(),
            draft.discount(),
            draft.terms(),
            Optional.of(next()),
            draft.note());
    List<Row> put = new ArrayList<>();
    put.add(issued);
    put.addAll(draft.credits().isPresent() ? heldAgain() : deposits());
    return Change.checked(almanac, Edit.put(put));
  }

  /** Deposits for the estimates of which the visits came, as far as there is something to pay. */
  private List<Payment> deposits() {
    List<Id<Visit>> visits = draft.lines().stream().flatMap(l -> l.visit().stream()).toList();
    Money open = accounts.bill(draft).total();
    List<Payment> used = new ArrayList<>();
    for (Payment payment : Receiving.oldestFirst(almanac)) {
      boolean fits =
          payment
              .estimate()
              .map(e -> Accounts.row(almanac.books().estimates(), e))
              .flatMap(e -> e.visit())
              .filter(visits::contains)
              .isPresent();
      Money part = payment.held().atMost(open);
      if (fits && part.isPositive() && payment.party().equals(draft.party())) {
        used.add(
            Receiving.using(
                payment,
                new Payment.Use(Payment.Became.PAID, Optional.of(draft.id()), part, day(payment))));
        open = open.minus(part);
      }
    }
    return used;
  }

  private LocalDate day(Payment payment) {
    return payment.day().isAfter(day) ? payment.day() : day;
  }

  /** Payments that have less to pay than they paid, the newest first. */
  private List<Payment> heldAgain() {
    Invoice invoice = credited();
    Money over = accounts.bill(draft).total().minus(accounts.open(invoice));
    List<Payment> changed = new ArrayList<>();
    List<Payment> newest = new ArrayList<>(Receiving.oldestFirst(almanac));
    java.util.Collections.reverse(newest);
    for (Payment payment : newest) {
      Money back = payment.paid(invoice.id()).atMost(over);
      if (over.isPositive() && back.isPositive()) {
        changed.add(Receiving.freed(payment, invoice.id(), back));
        over = over.minus(back);
      }
    }
    return changed;
  }
}
