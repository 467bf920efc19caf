package hullalmanac.core.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/** So much of a unit. */
public record Quantity(BigDecimal amount, Unit unit) {
  private static final MathContext PRECISE = new MathContext(6, RoundingMode.HALF_UP);
  private static final MathContext SMALL = new MathContext(3, RoundingMode.HALF_UP);

  /** A mark with three digits after it, which some read as decimals and some as thousands. */
  private static final Pattern TWO_WAYS = Pattern.compile("-?[1-9]\\d{0,2}\\.\\d{3}");

  /** So much as a number with a floating point says. */
  public static Quantity of(double amount, Unit unit) {
    return new Quantity(BigDecimal.valueOf(amount), unit);
  }

  /**
   * How much it is in another unit of the same measure, to 34 digits.
   *
   * @throws IllegalArgumentException when the other unit measures something else
   */
  public BigDecimal in(Unit other) {
    if (other.measure() != unit.measure()) {
      throw new IllegalArgumentException(unit + " is not of the measure of " + other);
    }
    return other == unit ? amount : other.fromBase(unit.toBase(amount));
  }

  /** The same in another unit of the same measure. */
  public Quantity to(Unit other) {
    return new Quantity(in(other), other);
  }

  /** To two decimals, or three digits where it is under 1, as people read it: "27.5 m²". */
  public String text() {
    boolean small = amount.abs().compareTo(BigDecimal.ONE) < 0;
    return plain(small ? amount.round(SMALL) : amount.setScale(2, RoundingMode.HALF_UP))
        + " "
        + unit.sign();
  }

  /** To six digits. */
  public String preciseText() {
    return plain(amount.round(PRECISE)) + " " + unit.sign();
  }

  /** With all its digits. */
  public String exactText() {
    return plain(amount) + " " + unit.sign();
  }

  /** In its own unit and in that of people elsewhere: "27.5 m² · 296.01 ft²". */
  public String both() {
    return text() + " · " + to(unit.counterpart()).text();
  }

  private static String plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    String plain = (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    return TWO_WAYS.matcher(plain).matches() ? plain + "0" : plain;
  }
}
