package hullalmanac.core.list;

/**
 * A sentence about a cell that was not taken as a value or needs a look.
 *
 * @param row from 0
 * @param column from 0
 * @param text what stands there
 * @param taken whether the value was taken all the same
 */
public record Mark(int row, int column, String text, String sentence, boolean taken) {
  /** How people call the row. */
  public String place() {
    return Aside.place(row);
  }
}
