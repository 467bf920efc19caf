package hullalmanac.core.record;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * An amount of money in whole minor units of a currency (ISO 4217), never built from floating-point
 * numbers.
 *
 * @param minor amount in minor units: cents, pence; the unit itself for currencies without
 * @param currency a currency with minor units defined
 */
public record Money(long minor, Currency currency) {
  public Money {
    if (currency.getDefaultFractionDigits() < 0) {
      throw new IllegalArgumentException(currency + " is not a currency one can be paid in");
    }
  }

  /**
   * Returns the amount written as a decimal number.
   *
   * @throws ArithmeticException when it has more decimals than the currency
   */
  public static Money of(BigDecimal amount, Currency currency) {
    int digits = Math.max(0, currency.getDefaultFractionDigits());
    return new Money(
        amount.setScale(digits, RoundingMode.UNNECESSARY).unscaledValue().longValueExact(),
        currency);
  }

  /** The amount as a decimal number with the currency's decimals. */
  public BigDecimal amount() {
    return BigDecimal.valueOf(minor, currency.getDefaultFractionDigits());
  }
}
