package hullalmanac.core.life;

import java.util.Arrays;
import java.util.PriorityQueue;
import java.util.Queue;

/**
 * Values of a costly function on a grid, worked out only where they are within e⁻³³ of the highest:
 * a coarse lattice first, then from its high points outward, neighbour by neighbour, as long as
 * they are high enough. With many coats nearly all of the grid carries no weight at all.
 */
final class Climb {
  private static final double DEPTH = 33;
  private static final int LATTICE = 8;

  private final int rows;
  private final int columns;
  private final Height height;
  private final double[] values;
  private final Queue<Integer> edge = new PriorityQueue<>(this::higherFirst);
  private double highest = Double.NEGATIVE_INFINITY;

  private Climb(int rows, int columns, Height height) {
    this.rows = rows;
    this.columns = columns;
    this.height = height;
    values = new double[rows * columns];
    Arrays.fill(values, Double.NaN);
  }

  /** A logarithm of weight at a point. */
  interface Height {
    double at(int row, int column);
  }

  /** Values row by row; minus infinity where they do not count. */
  static double[] over(int rows, int columns, Height height) {
    Climb climb = new Climb(rows, columns, height);
    for (int i = 0; i < rows; i += LATTICE) {
      for (int j = 0; j < columns; j += LATTICE) {
        climb.visit(i, j);
      }
    }
    climb.spread();
    for (int k = 0; k < climb.values.length; k++) {
      if (!(climb.values[k] >= climb.highest - DEPTH)) {
        climb.values[k] = Double.NEGATIVE_INFINITY;
      }
    }
    return climb.values;
  }

  private void visit(int i, int j) {
    int point = i * columns + j;
    if (i >= 0 && i < rows && j >= 0 && j < columns && Double.isNaN(values[point])) {
      values[point] = height.at(i, j);
      highest = Math.max(highest, values[point]);
      edge.add(point);
    }
  }

  private int higherFirst(int a, int b) {
    return Double.compare(values[b], values[a]);
  }

  private void spread() {
    while (!edge.isEmpty()) {
      int point = edge.remove();
      if (values[point] < highest - DEPTH) {
        return;
      }
      int i = point / columns;
      int j = point % columns;
      visit(i - 1, j);
      visit(i + 1, j);
      visit(i, j - 1);
      visit(i, j + 1);
    }
  }
}
