package hullalmanac.study.generator;

import hullalmanac.core.record.CoatClass;
import hullalmanac.core.record.Product;

/**
 * A product and what is true of it.
 *
 * @param medianDays median life of its coats in reference days
 * @param shape how alike its coats are (Weibull)
 */
record Make(Product product, double medianDays, double shape) {
  static final double DAYS_A_MONTH = 30.44;

  /**
   * Life of a coat in reference days.
   *
   * @param share share of such coats that outlive it, over 0 and at most 1
   * @param boatEffect what multiplies all lives on the boat
   */
  double life(double share, double boatEffect) {
    return boatEffect * medianDays * Math.pow(-Math.log(share) / Math.log(2), 1 / shape);
  }

  CoatClass coatClass() {
    return product.kind().coatClass().orElseThrow();
  }
}
