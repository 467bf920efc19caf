package hullalmanac.core.card;

import hullalmanac.core.reckon.Dilution;

/**
 * A dilution worked out for the bottle in hand, in whole millilitres that add up to it.
 *
 * @param bottleMl what is to be filled, 1 to 100000 millilitres
 */
public record Mix(Dilution dilution, int bottleMl) {
  private static final int LARGEST = 100_000;

  public Mix {
    if (bottleMl < 1 || bottleMl > LARGEST) {
      throw new IllegalArgumentException("a bottle in hand holds 1 to 100000 ml, not " + bottleMl);
    }
  }

  /** Millilitres of product. */
  public int product() {
    return (int) Math.round(dilution.product(bottleMl));
  }

  /** Millilitres of water. */
  public int water() {
    return bottleMl - product();
  }
}
