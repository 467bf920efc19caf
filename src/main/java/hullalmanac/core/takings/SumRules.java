package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Rules between rows about money that need sums: no invoice is credited or paid beyond what it is.
 */
public final class SumRules {
  private SumRules() {}

  /**
   * What is wrong with additions that keep all other rules.
   *
   * @return in the order of the rows; empty when all is well
   */
  public static List<Problem> problems(Almanac existing, Almanac additions) {
    Accounts after = Accounts.of(existing.with(Edit.all(additions)));
    List<Problem> problems = new ArrayList<>();
    for (Invoice invoice : additions.books().invoices()) {
      if (invoice.credits().isPresent() && invoice.issued()) {
        Invoice whole = invoice(existing, additions, invoice.credits().get());
        if (after.credited(whole).compareTo(after.bill(whole).total()) > 0) {
          problems.add(
              new Problem(
                  Kind.INVOICE,
                  invoice.key(),
                  "credits",
                  "credits take back "
                      + after.credited(whole).words()
                      + " of the "
                      + whole.words()
                      + ", which comes to "
                      + after.bill(whole).total().words(),
                  "Make the credits smaller"));
        }
      }
    }
    for (Payment payment : additions.books().payments()) {
      Set<Id<Invoice>> pays =
          payment.uses().stream().flatMap(u -> u.invoice().stream()).collect(Collectors.toSet());
      pays.stream()
          .map(i -> invoice(existing, additions, i))
          .filter(i -> after.open(i).compareTo(nothing(additions)) < 0)
          .findFirst()
          .ifPresent(
              i ->
                  problems.add(
                      new Problem(
                          Kind.PAYMENT,
                          payment.key(),
                          "amount",
                          "more is paid of the " + i.words() + " than it comes to",
                          "Leave what is too much without an invoice; it is held then")));
    }
    return problems;
  }

  private static Money nothing(Almanac additions) {
    return Money.zero(additions.business().currency());
  }

  private static Invoice invoice(Almanac existing, Almanac additions, Id<Invoice> id) {
    Optional<Invoice> added =
        additions.books().invoices().stream().filter(i -> i.id().equals(id)).findFirst();
    return added.orElseGet(() -> Accounts.row(existing.books().invoices(), id));
  }
}
