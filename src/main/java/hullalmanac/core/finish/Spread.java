package hullalmanac.core.finish;

/**
 * A covariance, or its inverse, of a stage's ceiling C (gloss units) and ln q: a symmetric matrix
 * of two by two.
 *
 * @param ceiling of C
 * @param lnQ of ln q
 * @param both between the two
 */
record Spread(double ceiling, double lnQ, double both) {
  /** The covariance of two standard deviations. */
  static Spread independent(double ceilingSd, double lnQSd) {
    return new Spread(ceilingSd * ceilingSd, lnQSd * lnQSd, 0);
  }

  Spread plus(Spread other) {
    return new Spread(ceiling + other.ceiling, lnQ + other.lnQ, both + other.both);
  }

  /** This and the square of a slope, {@code weight} times. */
  Spread plus(double weight, double byCeiling, double byLnQ) {
    return new Spread(
        ceiling + weight * byCeiling * byCeiling,
        lnQ + weight * byLnQ * byLnQ,
        both + weight * byCeiling * byLnQ);
  }

  /** The inverse; of a matrix that is one of a covariance, the slopes being finite. */
  Spread inverse() {
    double determinant = ceiling * lnQ - both * both;
    if (!(determinant > 0)) {
      throw new IllegalStateException("no spread of a ceiling and ln q: " + this);
    }
    return new Spread(lnQ / determinant, ceiling / determinant, -both / determinant);
  }

  /** Variance along a slope. */
  double along(double byCeiling, double byLnQ) {
    return ceiling * byCeiling * byCeiling + lnQ * byLnQ * byLnQ + 2 * both * byCeiling * byLnQ;
  }
}
