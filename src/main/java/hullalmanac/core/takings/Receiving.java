package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Problem;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewKeys;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Money received, and what becomes of it: it pays an invoice, in part or in whole; is held, as a
 * deposit or because it was too much; is given back; or is kept, as agreed.
 */
public final class Receiving {
  private Receiving() {}

  /**
   * Money as it came.
   *
   * @param amount more than nothing
   * @param estimate for a deposit, the estimate it was asked for
   */
  public record Received(
      Id<Party> party,
      LocalDate day,
      Money amount,
      Payment.How how,
      Optional<Id<Estimate>> estimate,
      String note) {}

  /** Writes down money that pays no invoice yet. */
  public static Change held(Almanac almanac, IdSource ids, Received received) {
    return written(almanac, ids, received, List.of());
  }

  /** Writes down money that pays an invoice as far as something is open; the rest is held. */
  public static Change paying(Almanac almanac, IdSource ids, Received received, Id<Invoice> id) {
    Invoice invoice = Accounts.row(almanac.books().invoices(), id);
    Money open = Accounts.of(almanac).open(invoice);
    Optional<Problem> trouble = trouble(invoice, open);
    return trouble.isPresent()
        ? Change.refused(trouble.get())
        : written(
            almanac,
            ids,
            received,
            List.of(
                new Payment.Use(
                    Payment.Became.PAID,
                    Optional.of(id),
                    received.amount().atMost(open),
                    received.day())));
  }

  private static Optional<Problem> trouble(Invoice invoice, Money open) {
    if (!invoice.issued()) {
      return problem(invoice, "the " + invoice.words() + " is not issued", "Issue it first");
    }
    if (invoice.credits().isPresent()) {
      return problem(
          invoice, "a credit is not paid", "Give the money back from the payment that holds it");
    }
    return open.isPositive()
        ? Optional.empty()
        : problem(
            invoice,
            "nothing is open of the " + invoice.words(),
            "Write the money down without an invoice; it is held then");
  }

  private static Optional<Problem> problem(Invoice invoice, String message, String advice) {
    return Optional.of(new Problem(Kind.INVOICE, invoice.key(), "id", message, advice));
  }

  private static Change written(
      Almanac almanac, IdSource ids, Received received, List<Payment.Use> uses) {
    Party party = Accounts.row(almanac.parties(), received.party());
    String key = new NewKeys(almanac).next(Kind.PAYMENT, party.key(), received.day());
    if (!received.amount().isPositive()) {
      return Change.refused(
          new Problem(
              Kind.PAYMENT,
              key,
              "amount",
              "a payment is more than nothing",
              "Write how much came; money that goes out is given back from a payment"));
    }
    return Change.checked(
        almanac,
        Edit.put(
            new Payment(
                ids.next(),
                key,
                received.party(),
                received.day(),
                received.amount(),
                received.how(),
                received.estimate(),
                uses,
                received.note())));
  }

  /** Lets held money pay an invoice, as far as there is money and something is open. */
  public static Change apply(
      Almanac almanac, Id<Payment> id, Id<Invoice> invoiceId, LocalDate day) {
    Payment payment = Accounts.row(almanac.books().payments(), id);
    Invoice invoice = Accounts.row(almanac.books().invoices(), invoiceId);
    Money open = Accounts.of(almanac).open(invoice);
    Optional<Problem> trouble = trouble(invoice, open);
    return trouble.isPresent()
        ? Change.refused(trouble.get())
        : use(
            almanac,
            payment,
            new Part(
                Payment.Became.PAID, Optional.of(invoiceId), payment.held().atMost(open), day));
  }

  /** Gives held money back. */
  public static Change giveBack(Almanac almanac, Id<Payment> id, Money amount, LocalDate day) {
    return use(
        almanac,
        Accounts.row(almanac.books().payments(), id),
        new Part(Payment.Became.GIVEN_BACK, Optional.empty(), amount, day));
  }

  /** Keeps held money without an invoice, as agreed. */
  public static Change keep(Almanac almanac, Id<Payment> id, Money amount, LocalDate day) {
    return use(
        almanac,
        Accounts.row(almanac.books().payments(), id),
        new Part(Payment.Became.KEPT, Optional.empty(), amount, day));
  }

  /** Lets all that a payment paid of an invoice be held again. */
  public static Change free(Almanac almanac, Id<Payment> id, Id<Invoice> invoice) {
    Payment payment = Accounts.row(almanac.books().payments(), id);
    Money paid = payment.paid(invoice);
    return paid.isPositive()
        ? Change.checked(almanac, Edit.put(freed(payment, invoice, paid)))
        : new Change.Ready(Edit.put(List.of()));
  }

  /** What is to become of a part of a payment, not checked yet. */
  private record Part(
      Payment.Became became, Optional<Id<Invoice>> invoice, Money amount, LocalDate day) {}

  private static Change use(Almanac almanac, Payment payment, Part part) {
    String trouble = null;
    if (!payment.held().isPositive()) {
      trouble = "nothing of the payment is held any more";
    } else if (!part.amount().isPositive()) {
      trouble = "a part of a payment is more than nothing";
    } else if (part.amount().compareTo(payment.held()) > 0) {
      trouble = "of the payment only " + payment.held().words() + " is held";
    } else if (part.day().isBefore(payment.day())) {
      trouble = "the payment came later, on " + ChargedLines.day(payment.day());
    }
    return trouble != null
        ? Change.refused(
            new Problem(
                Kind.PAYMENT, payment.key(), "amount", trouble, "Look at what is held of it"))
        : Change.checked(
            almanac,
            Edit.put(
                using(
                    payment,
                    new Payment.Use(part.became(), part.invoice(), part.amount(), part.day()))));
  }

  /** A payment of which one part more has become something. */
  static Payment using(Payment payment, Payment.Use use) {
    List<Payment.Use> uses = new ArrayList<>(payment.uses());
    uses.add(use);
    return with(payment, uses);
  }

  /** A payment that pays so much less of an invoice; what it paid last goes first. */
  static Payment freed(Payment payment, Id<Invoice> invoice, Money amount) {
    List<Payment.Use> newest = new ArrayList<>(payment.uses());
    Collections.reverse(newest);
    List<Payment.Use> left = new ArrayList<>();
    Money over = amount;
    for (Payment.Use use : newest) {
      if (!use.invoice().equals(Optional.of(invoice)) || !over.isPositive()) {
        left.add(use);
        continue;
      }
      Money off = use.amount().atMost(over);
      over = over.minus(off);
      if (use.amount().compareTo(off) > 0) {
        left.add(new Payment.Use(use.became(), use.invoice(), use.amount().minus(off), use.day()));
      }
    }
    Collections.reverse(left);
    return with(payment, left);
  }

  private static Payment with(Payment p, List<Payment.Use> uses) {
    return new Payment(
        p.id(), p.key(), p.party(), p.day(), p.amount(), p.how(), p.estimate(), uses, p.note());
  }

  static List<Payment> oldestFirst(Almanac almanac) {
    return almanac.books().payments().stream()
        .sorted(Comparator.comparing(Payment::day).thenComparing(Payment::id))
        .toList();
  }
}
