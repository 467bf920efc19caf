package hullalmanac.core.list;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Something of a list that does not come in.
 *
 * @param place where it stands, such as {@code row 7}
 * @param text what stands there
 * @param why why it does not come in, in words
 */
public record Aside(String place, String text, String why) {
  /** A whole row. */
  static Aside row(int row, List<Cell> cells, String why) {
    return new Aside(place(row), text(cells), why);
  }

  /** How people call a row. */
  static String place(int row) {
    return "row " + (row + 1);
  }

  /** All texts of a row, each once. */
  static String text(List<Cell> cells) {
    return cells.stream()
        .filter(c -> !c.isBlank() && !c.spread())
        .map(Cell::text)
        .collect(Collectors.joining(" · "));
  }
}
