package hullalmanac.core.list;

import java.util.ArrayList;
import java.util.List;

/**
 * A list as it was read from a file or a pasted text: rows of cells, not yet understood.
 *
 * @param name of the list, for people, such as {@code owners.csv}
 * @param rows each as wide as the widest
 * @param remarks sentences on how it was read and what else the file holds
 */
public record Grid(String name, List<List<Cell>> rows, List<String> remarks) {
  public Grid {
    rows = padded(rows);
    remarks = List.copyOf(remarks);
  }

  /** A list of plain texts. */
  public static Grid of(String name, List<List<String>> texts) {
    return trimmed(
        name, texts.stream().map(r -> r.stream().map(Cell::of).toList()).toList(), List.of());
  }

  /** The same with other cells, as many as there are. */
  Grid with(List<List<Cell>> cells) {
    return new Grid(name, cells, remarks);
  }

  /** A list without the blank rows and columns at its end. */
  public static Grid trimmed(String name, List<List<Cell>> rows, List<String> remarks) {
    int width = 0;
    int height = 0;
    for (int r = 0; r < rows.size(); r++) {
      for (int c = 0; c < rows.get(r).size(); c++) {
        if (!rows.get(r).get(c).isBlank()) {
          width = Math.max(width, c + 1);
          height = r + 1;
        }
      }
    }
    int end = width;
    return new Grid(
        name,
        rows.subList(0, height).stream().map(r -> r.subList(0, Math.min(end, r.size()))).toList(),
        remarks);
  }

  private static List<List<Cell>> padded(List<List<Cell>> rows) {
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    List<List<Cell>> padded = new ArrayList<>();
    for (List<Cell> row : rows) {
      List<Cell> cells = new ArrayList<>(row);
      while (cells.size() < width) {
        cells.add(Cell.BLANK);
      }
      padded.add(List.copyOf(cells));
    }
    return List.copyOf(padded);
  }

  /** How many columns there are. */
  public int width() {
    return rows.isEmpty() ? 0 : rows.get(0).size();
  }

  /** A row. */
  List<Cell> row(int row) {
    return rows.get(row);
  }

  /** How people call a column: A to Z, then AA. */
  static String letter(int column) {
    return column < 26
        ? String.valueOf((char) ('A' + column))
        : letter(column / 26 - 1) + letter(column % 26);
  }
}
