package hullalmanac.core.record;

import java.math.BigDecimal;

/** Numbers as files write them: a point before the decimals, no grouping, no exponent. */
public final class Numbers {
  private Numbers() {}

  /** Writes a number in the shortest plain form that reads back as the same. */
  public static String plain(double value) {
    BigDecimal shortest = BigDecimal.valueOf(value).stripTrailingZeros();
    return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
  }

  /**
   * Reads a number.
   *
   * @throws IllegalArgumentException with a sentence for people
   */
  public static double real(String text) {
    if (!text.matches("-?[0-9]{1,12}(\\.[0-9]{1,12})?")) {
      throw new IllegalArgumentException("\"" + text + "\" is not a number; write it as 85.5");
    }
    return Double.parseDouble(text);
  }

  /**
   * Reads a whole number.
   *
   * @throws IllegalArgumentException with a sentence for people
   */
  public static int whole(String text) {
    if (!text.matches("-?[0-9]{1,9}")) {
      throw new IllegalArgumentException("\"" + text + "\" is not a whole number; write it as 12");
    }
    return Integer.parseInt(text);
  }
}
