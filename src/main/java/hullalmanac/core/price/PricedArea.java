package hullalmanac.core.price;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * The area that a price is for, by rules of thumb (common practice, no source): topsides with
 * transom 2 × freeboard × (length + beam), deck 0.75 × length × beam.
 */
public final class PricedArea {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final BigDecimal DECK = new BigDecimal("0.75");

  private PricedArea() {}

  /**
   * Square metres of a part of a boat.
   *
   * @return to one decimal; nothing where a measure of the boat is missing
   */
  public static Optional<BigDecimal> of(Boat boat, Extent extent) {
    Optional<BigDecimal> hull =
        metres(boat.freeboard())
            .flatMap(
                f ->
                    metres(boat.loa())
                        .flatMap(
                            l -> metres(boat.beam()).map(b -> TWO.multiply(f).multiply(l.add(b)))));
    Optional<BigDecimal> deck =
        metres(boat.loa()).flatMap(l -> metres(boat.beam()).map(b -> DECK.multiply(l).multiply(b)));
    Optional<BigDecimal> all =
        switch (extent) {
          case HULL -> hull;
          case DECK -> deck;
          case WHOLE_BOAT -> hull.flatMap(h -> deck.map(h::add));
        };
    return all.map(a -> a.setScale(1, RoundingMode.HALF_UP));
  }

  private static Optional<BigDecimal> metres(Optional<Length> length) {
    return length.map(l -> BigDecimal.valueOf(l.millimetres(), 3));
  }
}
