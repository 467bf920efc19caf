package hullalmanac.core.finish;

import java.util.Optional;

/**
 * The most that may come off a surface as it was agreed, µm; absent: all that can be spared.
 *
 * @param flats on flats
 * @param edges on edges and corners
 */
public record Allowance(Optional<Double> flats, Optional<Double> edges) {
  /** All that can be spared. */
  public static final Allowance ALL = new Allowance(Optional.empty(), Optional.empty());

  private static final double MOST = 1000;

  public Allowance {
    flats.ifPresent(Allowance::require);
    edges.ifPresent(Allowance::require);
  }

  private static void require(double microns) {
    if (!(microns >= 0 && microns <= MOST)) {
      throw new IllegalArgumentException("0 to 1000 µm may come off, not " + microns);
    }
  }
}
