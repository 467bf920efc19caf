package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.With;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Other facts of the business. */
public final class NewBusiness {
  private NewBusiness() {}

  /**
   * The record with other facts of its business. Where the currency changes, prices keep their
   * numbers and are in the new one from then on.
   */
  public static Change of(Almanac almanac, Business business) {
    Edit edit = new Edit(Optional.of(business), List.of(), List.of());
    Currency currency = business.currency();
    if (currency.equals(almanac.business().currency())) {
      return new Change.Ready(edit);
    }
    for (CarePlan plan : almanac.carePlans()) {
      if (plan.price().isPresent()) {
        Optional<Money> same = same(plan.price().get(), currency);
        if (same.isEmpty()) {
          return Change.refused(
              new Problem(
                  Kind.CARE_PLAN,
                  plan.key(),
                  "price",
                  "the price of the care plan "
                      + plan.key()
                      + " cannot be written in "
                      + currency.getCurrencyCode(),
                  "Change that price first"));
        }
        edit = edit.and(Edit.put(With.component(plan, "price", same)));
      }
    }
    return Change.checked(almanac, edit);
  }

  private static Optional<Money> same(Money before, Currency currency) {
    try {
      return Optional.of(Money.of(before.amount(), currency));
    } catch (ArithmeticException e) {
      return Optional.empty();
    }
  }
}
