package hullalmanac.core.supply;

import hullalmanac.core.finish.Estimate;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What one step takes of its product on one surface.
 *
 * @param day on which it was or will be done there
 * @param ml out of the bottle; absent where it is not known
 */
record Draw(Step step, Product product, Surface surface, LocalDate day, Optional<Estimate> ml) {
  double middle() {
    return ml.map(Estimate::middle).orElse(0.0);
  }
}
