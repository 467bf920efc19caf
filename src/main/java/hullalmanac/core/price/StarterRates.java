package hullalmanac.core.price;

import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.StepKind;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Rates to begin with, until a business has written down its own. */
public final class StarterRates {
  /** What the starter rate is for. */
  public static final String SERVICE = "clean, polish and seal the hull";

  private static final Currency DOLLARS = Currency.getInstance("USD");

  private StarterRates() {}

  /**
   * The rates to begin with. Common practice, no source: the outside of a 30 ft hull in fair
   * condition costs 600 to 650 US dollars, that is 20.00 to 21.67 a foot.
   *
   * @return none for a business that is paid in anything but US dollars, for which nothing is known
   */
  public static List<Rate> of(Currency currency, IdSource ids) {
    if (!currency.equals(DOLLARS)) {
      return List.of();
    }
    return List.of(
        new Rate(
            ids.next(),
            "starter-hull",
            SERVICE,
            new TreeSet<>(
                EnumSet.of(
                    StepKind.WASH, StepKind.DECONTAMINATE, StepKind.POLISH, StepKind.PROTECT)),
            Extent.HULL,
            PriceUnit.FOOT,
            Optional.of(Condition.FAIR),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Money.of(new BigDecimal("20.00"), DOLLARS),
            Money.of(new BigDecimal("21.67"), DOLLARS),
            "common practice, no source"));
  }
}
