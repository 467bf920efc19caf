package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Money spent for the business.
 *
 * @param what was bought
 * @param from of whom
 * @param amount what was paid, taxes in it
 * @param tax what of it was tax; absent when not known or none
 * @param visit for which it was bought
 */
public record Expense(
    Id<Expense> id,
    String key,
    LocalDate day,
    Sort sort,
    String what,
    String from,
    Money amount,
    Optional<Money> tax,
    Optional<Id<Visit>> visit,
    String note)
    implements Row {
  public Expense {
    Texts.key(key);
    Texts.require(what, "what was bought");
    Money.requirePaid(amount, "an expense");
    tax.ifPresent(
        t -> {
          if (Money.requirePrice(t, "the tax in an expense").compareTo(amount) > 0) {
            throw new IllegalArgumentException(
                "the tax in it, " + t.words() + ", is more than the expense, " + amount.words());
          }
        });
  }

  /** What money is spent on. */
  public enum Sort implements Coded {
    CONSUMABLES("consumables"),
    PRODUCTS("products"),
    TOOLS("tools"),
    TRAVEL("travel"),
    FEES("fees"),
    OTHER("other");

    private final String code;

    Sort(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }
}
