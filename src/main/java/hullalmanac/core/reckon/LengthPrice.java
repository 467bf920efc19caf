package hullalmanac.core.reckon;

import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * A price by length and for the whole boat, in whole minor units; a half is rounded up.
 *
 * <p>References: 1 ft = 304.8 mm (international yard and pound agreement, 1959). Rounding a half up
 * is the usual legal convention, as in Council Regulation (EC) 1103/97, article 5 (from memory).
 *
 * @param total for the whole boat
 */
public record LengthPrice(Money total, Length length) {
  /** How it is reckoned. */
  public static final Formula FORMULA =
      new Formula(
          "Price a foot = total / feet, price a metre = total / metres, with 1 ft = 0.3048 m; rounded to"
              + " the smallest coin, a half up.",
          "Arithmetic. Around 20 US dollars a foot for cleaning, polishing and sealing the outside of a 30 ft"
              + " hull in fair condition is common practice, no source.");

  private static final BigDecimal MM_PER_FOOT = new BigDecimal("304.8");
  private static final BigDecimal MM_PER_METRE = BigDecimal.valueOf(1000);

  /** The price from one a foot. */
  public static LengthPrice ofFoot(Money foot, Length length) {
    return of(foot, length, MM_PER_FOOT);
  }

  /** The price from one a metre. */
  public static LengthPrice ofMetre(Money metre, Length length) {
    return of(metre, length, MM_PER_METRE);
  }

  private static LengthPrice of(Money each, Length length, BigDecimal millimetres) {
    BigDecimal total =
        each.amount()
            .multiply(BigDecimal.valueOf(length.millimetres()))
            .divide(millimetres, MathContext.DECIMAL128);
    return new LengthPrice(rounded(total, each.currency()), length);
  }

  /** Price a foot. */
  public Money foot() {
    return each(MM_PER_FOOT);
  }

  /** Price a metre. */
  public Money metre() {
    return each(MM_PER_METRE);
  }

  private Money each(BigDecimal millimetres) {
    return rounded(
        total
            .amount()
            .multiply(millimetres)
            .divide(BigDecimal.valueOf(length.millimetres()), MathContext.DECIMAL128),
        total.currency());
  }

  private static Money rounded(BigDecimal amount, Currency currency) {
    return Money.of(
        amount.setScale(currency.getDefaultFractionDigits(), RoundingMode.HALF_UP), currency);
  }
}
