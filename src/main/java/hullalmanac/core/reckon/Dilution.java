package hullalmanac.core.reckon;

import hullalmanac.core.record.Numbers;

/**
 * A product thinned with water by volume. A bare "1:10" means ten parts of water to some and ten in
 * all to others, so it is always said in words.
 *
 * <pre>
 *   product = V/(1 + n)      water = V n/(1 + n)      n = c/w − 1
 * </pre>
 *
 * <p>References: CDC, Best Practices for Environmental Cleaning in Global Healthcare Facilities
 * with Limited Resources, appendix E (the third formula, with examples).
 *
 * @param water parts of water to one part of product, over 0 to 1000
 */
public record Dilution(double water) {
  /** How it is reckoned. */
  public static final Formula FORMULA =
      new Formula(
          "Product = V / (1 + n), water = V · n / (1 + n), for V in all and n parts of water to one of"
              + " product. From a strength of w %: n = 100 / w − 1.",
          "CDC, Best Practices for Environmental Cleaning in Healthcare Facilities, appendix E. Volumes are"
              + " taken to add up.");

  public Dilution {
    if (!(water > 0 && water <= 1000)) {
      throw new IllegalArgumentException(
          "parts of water are over 0 and at most 1000, not " + water);
    }
  }

  /**
   * The dilution that thins one strength to another, in the same unit.
   *
   * @param concentrate strength of what is thinned, over that wanted
   */
  public static Dilution of(double concentrate, double wanted) {
    if (!(wanted > 0 && wanted < concentrate)) {
      throw new IllegalArgumentException(
          "the strength wanted is over 0 and under that of the product, "
              + Numbers.plain(concentrate)
              + " %");
    }
    return new Dilution(concentrate / wanted - 1);
  }

  /** In words: "1 part and 10 parts water, 11 in all". */
  public String words() {
    return "1 part and "
        + Numbers.plain(rounded(water))
        + (rounded(water) == 1 ? " part" : " parts")
        + " water, "
        + Numbers.plain(rounded(1 + water))
        + " in all";
  }

  private static double rounded(double parts) {
    return Math.round(parts * 100) / 100.0;
  }

  /** How much product is in so much of the mixture, in the same unit. */
  public double product(double inAll) {
    return inAll / (1 + water);
  }

  /** How much water is in so much of the mixture, in the same unit. */
  public double water(double inAll) {
    return inAll * water / (1 + water);
  }

  /** How much mixture comes of so much product, in the same unit. */
  public double inAll(double product) {
    return product * (1 + water);
  }

  /** Product in the mixture, % by volume. */
  public double strength() {
    return 100 / (1 + water);
  }
}
