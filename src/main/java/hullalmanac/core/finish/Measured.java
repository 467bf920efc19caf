package hullalmanac.core.finish;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Thickness of gelcoat read off a gauge.
 *
 * @param flats thinnest reading on the flats, µm
 * @param edges thinnest reading at edges and corners, µm; absent: half of the flats
 */
public record Measured(double flats, Optional<Double> edges, LocalDate day) {
  private static final double THICKEST = 3000;

  public Measured {
    require(flats);
    edges.ifPresent(Measured::require);
  }

  private static void require(double microns) {
    if (!(microns >= 0 && microns <= THICKEST)) {
      throw new IllegalArgumentException(
          "gelcoat is 0 to 3000 µm thick, not " + microns + "; read the gauge again");
    }
  }
}
