package hullalmanac.core.price;

import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Rate;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A price by length.
 *
 * @param asked what was asked
 * @param rate by which it was reckoned
 * @param quantity feet or metres of the boat, to two decimals
 * @param low lowest price
 * @param high highest price
 */
public record LengthPrice(Asked asked, Rate rate, BigDecimal quantity, Money low, Money high) {
  /** How much a fitting choice says of a rate: the condition most, then the type, then the band. */
  private static final int CONDITION = 4;

  private static final int TYPE = 2;

  /** What stands in first while nobody has said in what condition a boat is. */
  private static final List<Condition> UNSAID =
      List.of(Condition.FAIR, Condition.GOOD, Condition.POOR);

  /**
   * What is asked for a boat.
   *
   * @param service as the rates name it; upper and lower case count as the same
   * @param condition absent when nobody has looked; then a rate for any condition stands in, or
   *     else the one for fair condition
   */
  public record Asked(
      String service, Length length, Optional<Condition> condition, Optional<BoatType> type) {}

  /**
   * The price of a service by the rate that fits most closely.
   *
   * @return nothing when no rate fits
   */
  public static Optional<LengthPrice> of(List<Rate> rates, Asked asked) {
    return rates.stream()
        .filter(r -> fits(r, asked))
        .min(
            Comparator.comparing((Rate r) -> asked.condition().isPresent() ? 0 : standsIn(r))
                .thenComparing(LengthPrice::closeness, Comparator.reverseOrder())
                .thenComparing(Rate::key)
                .thenComparing(Rate::id))
        .map(r -> by(r, asked));
  }

  /** The price by one rate. */
  static LengthPrice by(Rate rate, Asked asked) {
    BigDecimal quantity = rate.unit().in(asked.length());
    return new LengthPrice(
        asked, rate, quantity, times(rate.low(), quantity), times(rate.high(), quantity));
  }

  private static boolean fits(Rate rate, Asked asked) {
    return rate.service().equalsIgnoreCase(asked.service().strip())
        && rate.covers(asked.length())
        && (rate.condition().isEmpty()
            || asked.condition().isEmpty()
            || rate.condition().equals(asked.condition()))
        && (rate.type().isEmpty() || rate.type().equals(asked.type()));
  }

  /** Which rate stands in while nobody has looked: one for any condition, then that for fair. */
  private static int standsIn(Rate rate) {
    return rate.condition().map(UNSAID::indexOf).orElse(-1);
  }

  private static int closeness(Rate rate) {
    return (rate.condition().isPresent() ? CONDITION : 0)
        + (rate.type().isPresent() ? TYPE : 0)
        + (rate.from().isPresent() || rate.below().isPresent() ? 1 : 0);
  }

  private static Money times(Money price, BigDecimal quantity) {
    return Money.rounded(price.amount().multiply(quantity), price.currency(), RoundingMode.HALF_UP);
  }

  /** Halfway between the lowest and the highest price. */
  public Money middle() {
    return Money.rounded(
        low.plus(high).amount().divide(BigDecimal.valueOf(2)),
        low.currency(),
        RoundingMode.HALF_UP);
  }

  /** Halfway between the lowest and the highest price of one foot or metre. */
  public Money unitPrice() {
    return Money.rounded(
        rate.low().plus(rate.high()).amount().divide(BigDecimal.valueOf(2)),
        low.currency(),
        RoundingMode.HALF_UP);
  }
}
