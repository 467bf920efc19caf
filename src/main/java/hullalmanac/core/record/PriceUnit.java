package hullalmanac.core.record;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** By what work is priced. */
public enum PriceUnit implements Coded {
  FOOT("foot", "feet"),
  METRE("metre", "metres"),
  HOUR("hour", "hours"),
  EACH("each", "");

  private static final BigDecimal MM_PER_FOOT = new BigDecimal("304.8");
  private static final BigDecimal MM_PER_METRE = new BigDecimal(1000);

  private final String code;
  private final String many;

  PriceUnit(String code, String many) {
    this.code = code;
    this.many = many;
  }

  @Override
  public String code() {
    return code;
  }

  /** A number of them in words: {@code 31.17 feet}; of what is counted each, the number alone. */
  public String words(BigDecimal quantity) {
    boolean one = quantity.compareTo(BigDecimal.ONE) == 0;
    return (quantity.toPlainString() + " " + (this == EACH ? "" : one ? code : many)).strip();
  }

  /** Whether a boat's length counts in it. */
  public boolean ofLength() {
    return this == FOOT || this == METRE;
  }

  /**
   * How many there are in a length, to two decimals.
   *
   * @throws IllegalArgumentException when no length counts in it
   */
  public BigDecimal in(Length length) {
    if (!ofLength()) {
      throw new IllegalArgumentException("no length counts in " + code);
    }
    return BigDecimal.valueOf(length.millimetres())
        .divide(this == FOOT ? MM_PER_FOOT : MM_PER_METRE, 2, RoundingMode.HALF_UP);
  }
}
