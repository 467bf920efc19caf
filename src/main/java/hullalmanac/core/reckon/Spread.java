package hullalmanac.core.reckon;

import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How much of a product some coats on an area take.
 *
 * <pre>
 *   V = A · coats / rate · (1 + waste/100)      bottles = ⌈V / size⌉
 * </pre>
 *
 * <p>References: arithmetic of the spread rate that a label states, as in ISO 23811, where a rate
 * is an area for each volume.
 *
 * @param area to be covered
 * @param coats from 1
 * @param rate how far the product goes
 * @param waste what is lost on the way, % of what is on the surface, 0 to 200
 */
public record Spread(Quantity area, int coats, Quantity rate, double waste) {
  /** How it is reckoned. */
  public static final Formula FORMULA =
      new Formula(
          "V = A · coats / rate · (1 + waste / 100); bottles = V / size, rounded up.",
          "Arithmetic of the label's own spread rate (area for each volume). A tenth for waste is common"
              + " practice, no source.");

  /** What usually is lost, % (common practice, no source). */
  public static final int USUAL_WASTE = 10;

  private static final MathContext EXACT = MathContext.DECIMAL128;

  /** Digits that count: the last of 34 come from dividing and must not fill a bottle. */
  private static final MathContext COUNTS = new MathContext(20, RoundingMode.HALF_UP);

  public Spread {
    if (coats < 1 || coats > 99) {
      throw new IllegalArgumentException("coats run from 1 to 99, not " + coats);
    }
    if (!(waste >= 0 && waste <= 200)) {
      throw new IllegalArgumentException("waste runs from 0 to 200 %, not " + waste);
    }
    if (area.amount().signum() <= 0 || rate.amount().signum() <= 0) {
      throw new IllegalArgumentException("an area and a spread rate are over 0");
    }
  }

  /** What is needed in all. */
  public Quantity volume() {
    BigDecimal litres =
        area.in(Unit.SQUARE_METRE)
            .multiply(BigDecimal.valueOf(coats))
            .multiply(BigDecimal.ONE.add(BigDecimal.valueOf(waste).movePointLeft(2)))
            .divide(rate.in(Unit.SQUARE_METRE_A_LITRE), EXACT);
    return new Quantity(litres.round(COUNTS), Unit.LITRE);
  }

  /** How many bottles of a size hold it. */
  public int bottles(Quantity size) {
    return volume()
        .amount()
        .divide(size.in(Unit.LITRE), EXACT)
        .setScale(0, RoundingMode.CEILING)
        .intValueExact();
  }

  /** What is left over of so many bottles of a size. */
  public Quantity over(Quantity size) {
    BigDecimal held = size.in(Unit.LITRE).multiply(BigDecimal.valueOf(bottles(size)));
    return new Quantity(held.subtract(volume().amount()).round(COUNTS), Unit.LITRE);
  }
}
