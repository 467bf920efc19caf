package hullalmanac.core.reckon;

import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;
import java.util.List;

/**
 * A quantity in every unit of its measure, by the exact factors of {@link Unit}.
 *
 * <p>References: see {@link Unit}.
 */
public final class UnitConversion {
  /** How it is reckoned. */
  public static final Formula FORMULA =
      new Formula(
          "1 in = 25.4 mm, 1 ft = 12 in, 1 us gal = 231 in³ = 3.785411784 l, 1 imp gal = 4.54609 l,"
              + " 1 lbf = 4.4482216152605 N, all exact; °C = (°F − 32) / 1.8. A difference of"
              + " temperatures goes by 1.8 alone: 3 °C are 5.4 °F.",
          "NIST SP 811, appendix B, and NIST Handbook 44, appendix C.");

  private UnitConversion() {}

  /** The quantity in all other units of its measure. */
  public static List<Quantity> others(Quantity quantity) {
    return Unit.of(quantity.unit().measure()).stream()
        .filter(u -> u != quantity.unit())
        .map(quantity::to)
        .toList();
  }
}
