package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Problem;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewKeys;
import java.util.Optional;

/** Credits: the only way to correct what was issued. */
public final class Crediting {
  private Crediting() {}

  /**
   * A draft of a credit for an issued invoice, with all its lines; where only a part is to be taken
   * back, the lines are made less before it is issued.
   */
  public static Change draft(Almanac almanac, IdSource ids, Id<Invoice> id) {
    Accounts accounts = Accounts.of(almanac);
    Invoice invoice = Accounts.row(almanac.books().invoices(), id);
    if (!invoice.issued()) {
      return no(invoice, "a draft needs no credit", "Change it, or take it out");
    }
    if (invoice.credits().isPresent()) {
      return no(invoice, "a credit is not credited in turn", "Write a new invoice");
    }
    if (accounts.takenBack(invoice)) {
      return no(
          invoice, "the " + invoice.words() + " was taken back as a whole", "Write a new invoice");
    }
    Optional<Invoice> other =
        almanac.books().invoices().stream()
            .filter(i -> i.credits().equals(Optional.of(id)) && !i.issued())
            .findFirst();
    if (other.isPresent()) {
      return no(
          invoice,
          "a credit for the " + invoice.words() + " is being written already",
          "Issue that one, or take it out");
    }
    return Change.checked(
        almanac,
        Edit.put(
            new Invoice(
                ids.next(),
                new NewKeys(almanac).next(Kind.INVOICE, "credit", invoice.key()),
                invoice.party(),
                invoice.boat(),
                Optional.of(id),
                invoice.lines(),
                invoice.discount(),
                invoice.terms(),
                Optional.empty(),
                "")));
  }

  private static Change no(Invoice invoice, String message, String advice) {
    return Change.refused(new Problem(Kind.INVOICE, invoice.key(), "credits", message, advice));
  }
}
