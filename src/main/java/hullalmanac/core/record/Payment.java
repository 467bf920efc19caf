package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Money received. What of it pays no invoice is held for who paid it: a deposit, or what was paid
 * too much.
 *
 * @param party who paid
 * @param amount more than nothing
 * @param estimate for a deposit, the estimate it was asked for
 * @param uses what became of it, in order; together never more than it
 */
public record Payment(
    Id<Payment> id,
    String key,
    Id<Party> party,
    LocalDate day,
    Money amount,
    How how,
    Optional<Id<Estimate>> estimate,
    List<Use> uses,
    String note)
    implements Row {
  public Payment {
    Texts.key(key);
    Money.requirePaid(amount, "a payment");
    uses = List.copyOf(uses);
    Money used = uses.stream().map(Use::amount).reduce(Money.zero(amount.currency()), Money::plus);
    if (used.compareTo(amount) > 0) {
      throw new IllegalArgumentException(
          "of the payment of " + amount.words() + " cannot be used " + used.words());
    }
    for (Use use : uses) {
      if (use.day().isBefore(day)) {
        throw new IllegalArgumentException(
            "it was used on " + use.day() + ", before it was received on " + day);
      }
    }
  }

  /** How money came. */
  public enum How implements Coded {
    BANK_TRANSFER("bank-transfer"),
    CARD("card"),
    CASH("cash"),
    CHEQUE("cheque"),
    OTHER("other");

    private final String code;

    How(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /** What becomes of money that was received. */
  public enum Became implements Coded {
    /** It pays an invoice. */
    PAID("paid"),
    /** It was given back. */
    GIVEN_BACK("given-back"),
    /** It is kept without an invoice, as agreed: a deposit whose work was called off. */
    KEPT("kept");

    private final String code;

    Became(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /**
   * What became of a part of a payment.
   *
   * @param invoice the issued invoice it pays, only when it pays one
   * @param amount more than nothing
   */
  public record Use(Became became, Optional<Id<Invoice>> invoice, Money amount, LocalDate day) {
    public Use {
      Money.requirePaid(amount, "a part of a payment");
      if (invoice.isPresent() != (became == Became.PAID)) {
        throw new IllegalArgumentException(
            "a part that pays an invoice, and only that, names the invoice");
      }
    }
  }

  /** What of it has not become anything yet. */
  public Money held() {
    return uses.stream().map(Use::amount).reduce(amount, Money::minus);
  }

  /** What of it pays an invoice. */
  public Money paid(Id<Invoice> id) {
    return uses.stream()
        .filter(u -> u.invoice().equals(Optional.of(id)))
        .map(Use::amount)
        .reduce(Money.zero(amount.currency()), Money::plus);
  }
}
