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
public record Money(long minor, Currency currency) implements Comparable<Money> {
  /** The most that one price or payment can be, in minor units. */
  public static final long MOST = 100_000_000_000L;

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
    return rounded(amount, currency, RoundingMode.UNNECESSARY);
  }

  /** The amount nearest to a decimal number, with the decimals of the currency. */
  public static Money rounded(BigDecimal amount, Currency currency, RoundingMode rounding) {
    int digits = Math.max(0, currency.getDefaultFractionDigits());
    return new Money(amount.setScale(digits, rounding).unscaledValue().longValueExact(), currency);
  }

  /** Nothing of a currency. */
  public static Money zero(Currency currency) {
    return new Money(0, currency);
  }

  /** The amount as a decimal number with the currency's decimals. */
  public BigDecimal amount() {
    return BigDecimal.valueOf(minor, currency.getDefaultFractionDigits());
  }

  /** The amount as people read it: thousands parted by commas, the letters of the currency. */
  public String words() {
    return String.format(java.util.Locale.ROOT, "%,." + amount().scale() + "f ", amount())
        + currency.getCurrencyCode();
  }

  /** This and another amount of the same currency. */
  public Money plus(Money other) {
    return new Money(Math.addExact(minor, same(other).minor), currency);
  }

  /** This less another amount of the same currency. */
  public Money minus(Money other) {
    return new Money(Math.subtractExact(minor, same(other).minor), currency);
  }

  /** As much below nothing as this is above. */
  public Money negated() {
    return new Money(Math.negateExact(minor), currency);
  }

  /** The smaller of two amounts. */
  public Money atMost(Money other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /** Whether it is more than nothing. */
  public boolean isPositive() {
    return minor > 0;
  }

  @Override
  public int compareTo(Money other) {
    return Long.compare(minor, same(other).minor);
  }

  private Money same(Money other) {
    if (!currency.equals(other.currency)) {
      throw new IllegalArgumentException(
          "amounts in " + currency + " and in " + other.currency + " cannot be reckoned together");
    }
    return other;
  }

  /** Refuses a price below nothing, or one that cannot be meant. */
  static Money requirePrice(Money price, String what) {
    if (price.minor < 0) {
      throw new IllegalArgumentException(what + " is not below nothing, so not " + price.words());
    }
    if (price.minor > MOST) {
      throw new IllegalArgumentException(what + " cannot be as much as " + price.words());
    }
    return price;
  }

  /** Refuses an amount that is nothing, or less. */
  static Money requirePaid(Money amount, String what) {
    if (amount.minor == 0) {
      throw new IllegalArgumentException(what + " is more than nothing");
    }
    return requirePrice(amount, what);
  }
}
