package hullalmanac.core.life.fit;

import java.util.Optional;

/** Inverse of a small square matrix by elimination with pivots. */
final class Inverse {
  private static final double SINGULAR = 1e-12;

  private Inverse() {}

  /** The inverse of an n × n matrix, or nothing when it is singular. */
  static Optional<double[][]> of(double[][] matrix) {
    int n = matrix.length;
    double[][] rows = new double[n][2 * n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(matrix[i], 0, rows[i], 0, n);
      rows[i][n + i] = 1;
    }
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int i = column + 1; i < n; i++) {
        if (Math.abs(rows[i][column]) > Math.abs(rows[pivot][column])) {
          pivot = i;
        }
      }
      double[] found = rows[pivot];
      rows[pivot] = rows[column];
      rows[column] = found;
      if (Math.abs(found[column]) < SINGULAR) {
        return Optional.empty();
      }
      eliminate(rows, column);
    }
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(rows[i], n, inverse[i], 0, n);
    }
    return Optional.of(inverse);
  }

  private static void eliminate(double[][] rows, int column) {
    double[] pivot = rows[column];
    double scale = pivot[column];
    for (int k = 0; k < pivot.length; k++) {
      pivot[k] /= scale;
    }
    for (double[] row : rows) {
      double factor = row[column];
      if (row != pivot && factor != 0) {
        for (int k = 0; k < row.length; k++) {
          row[k] -= factor * pivot[k];
        }
      }
    }
  }
}
