package hullalmanac.core.record;

import java.math.BigDecimal;

/** Exact decimal numbers, and the form in which they are kept. */
public final class Decimals {
  public static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private Decimals() {}

  /** The same number without zeros at its end: one number has one form. */
  static BigDecimal plain(BigDecimal number) {
    BigDecimal bare = number.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }

  /**
   * Reads a number as files write it.
   *
   * @throws IllegalArgumentException with a sentence for people
   */
  public static BigDecimal parse(String text) {
    if (!text.matches("-?[0-9]{1,12}(\\.[0-9]{1,12})?")) {
      throw new IllegalArgumentException("\"" + text + "\" is not a number; write it as 12.5");
    }
    return new BigDecimal(text);
  }

  /** Refuses what is below one number, above another, or has too many decimals. */
  static BigDecimal within(BigDecimal number, long low, long high, int decimals, String what) {
    BigDecimal plain = plain(number);
    if (plain.compareTo(BigDecimal.valueOf(low)) < 0
        || plain.compareTo(BigDecimal.valueOf(high)) > 0) {
      throw new IllegalArgumentException(
          what + " runs from " + low + " to " + high + ", not " + plain.toPlainString());
    }
    if (plain.scale() > decimals) {
      throw new IllegalArgumentException(
          what + " has at most " + decimals + " decimals, not as many as " + plain.toPlainString());
    }
    return plain;
  }

  /** The same, of what may not be nothing. */
  static BigDecimal positive(BigDecimal number, long high, int decimals, String what) {
    if (number.signum() <= 0) {
      throw new IllegalArgumentException(
          what + " is more than 0, so not " + plain(number).toPlainString());
    }
    return within(number, 0, high, decimals, what);
  }
}
