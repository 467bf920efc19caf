package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The headings of a list: none, one row, or two rows where some reach over several columns or say
 * the unit.
 *
 * @param first row of the grid in which they begin; -1 where there are none
 * @param last row in which they end
 * @param texts one a column, empty for a column without
 */
record Headings(int first, int last, List<String> texts) {
  private static final int LOOKED_AT = 30;
  private static final double HALF = 0.5;

  Headings {
    texts = List.copyOf(texts);
  }

  /**
   * Finds the headings of a list.
   *
   * @param chosen number of the row that a person says they are in, from 1; 0 for none
   */
  static Headings in(Grid grid, Optional<Integer> chosen) {
    int row = chosen.map(r -> Math.min(r, grid.rows().size()) - 1).orElseGet(() -> find(grid));
    if (row < 0) {
      return new Headings(-1, -1, IntStream.range(0, grid.width()).mapToObj(c -> "").toList());
    }
    boolean grouped =
        row > 0
            && isGroupRow(grid, row - 1, row)
            && (chosen.isEmpty() || grid.row(row - 1).stream().anyMatch(Cell::spread));
    int top = grouped ? row - 1 : row;
    int bottom = row + 1 < grid.rows().size() && isUnitRow(grid.row(row + 1)) ? row + 1 : row;
    return new Headings(top, bottom, joined(grid, top, row, bottom));
  }

  /** The headings in small letters, without accents and signs, by which a list is known again. */
  List<String> folded() {
    return texts.stream().map(Folding::name).toList();
  }

  private static int find(Grid grid) {
    int best = -1;
    double most = 0;
    int end = Math.min(LOOKED_AT, grid.rows().size());
    for (int r = 0; r < end; r++) {
      double hits = hits(grid, r);
      if (hits > most) {
        most = hits;
        best = r;
      }
    }
    if (best < 0) {
      return unknownWords(grid, end);
    }
    boolean goesOn = best + 1 < grid.rows().size() && hits(grid, best + 1) >= 2;
    boolean groups =
        grid.row(best).stream().anyMatch(Cell::spread)
            || (goesOn && own(grid.row(best)).size() < own(grid.row(best + 1)).size());
    return goesOn && groups ? best + 1 : best;
  }

  private static List<Cell> own(List<Cell> row) {
    return row.stream().filter(c -> !c.isBlank() && !c.spread()).toList();
  }

  /** How many cells of a row are headings; 0 where it cannot be the row of headings. */
  private static double hits(Grid grid, int row) {
    List<Cell> cells = own(grid.row(row));
    if (cells.stream().anyMatch(Shape::isData) || (cells.size() < 2 && grid.width() > 1)) {
      return 0;
    }
    long hits = cells.stream().filter(c -> Sense.isHeading(c.text())).count();
    boolean enough = hits >= 2 || grid.width() == 1;
    return enough && hits >= cells.size() * HALF - 1 ? hits : 0;
  }

  /** Headings in words that are not known: texts over columns in which there is other data. */
  private static int unknownWords(Grid grid, int end) {
    for (int r = 0; r + 1 < end; r++) {
      List<Cell> cells = own(grid.row(r));
      if (cells.size() < 2 || cells.size() < grid.width() * HALF) {
        continue;
      }
      int row = r;
      boolean texts = cells.stream().noneMatch(Shape::isData);
      boolean overData =
          IntStream.range(0, grid.width())
              .anyMatch(
                  c -> !grid.row(row).get(c).isBlank() && Shape.isData(grid.row(row + 1).get(c)));
      return texts && overData ? r : -1;
    }
    return -1;
  }

  /** Whether the row above the headings says what several of them have in common. */
  private static boolean isGroupRow(Grid grid, int row, int headings) {
    List<Cell> cells = own(grid.row(row));
    boolean reaches = grid.row(row).stream().anyMatch(Cell::spread);
    boolean titleOnly = cells.size() < 2 && !(reaches && isOverSome(grid, row, headings));
    return !cells.isEmpty()
        && !titleOnly
        && cells.stream().noneMatch(Shape::isData)
        && cells.stream().anyMatch(c -> Sense.of(c.text()).isPresent());
  }

  /** Whether one text of a row reaches over some of the headings but not over all. */
  private static boolean isOverSome(Grid grid, int row, int headings) {
    List<Cell> below = grid.row(headings);
    long under =
        IntStream.range(0, below.size())
            .filter(c -> !below.get(c).isBlank() && grid.row(row).get(c).isBlank())
            .count();
    return under > 0;
  }

  private static boolean isUnitRow(List<Cell> row) {
    List<Cell> cells = own(row);
    return !cells.isEmpty()
        && cells.stream()
            .allMatch(
                c ->
                    c.text()
                        .matches(
                            "(?i)[(\\[]?(m|mtr|metres?|meters?|ft|feet|cm|mm|'|yes/no|text"
                                + "|d{1,2}[./-]m{1,2}[./-](yy){1,2}|m{1,2}[./-]d{1,2}[./-](yy){1,2}"
                                + "|yyyy-mm-dd|tt\\.mm\\.jj(jj)?|jj/mm/aaaa)[)\\]]?"));
  }

  private static List<String> joined(Grid grid, int top, int row, int bottom) {
    List<String> texts = new ArrayList<>();
    String group = "";
    for (int c = 0; c < grid.width(); c++) {
      String own = grid.row(row).get(c).text();
      String above = top < row ? grid.row(top).get(c).text() : "";
      group = above.isEmpty() && !own.isEmpty() ? group : above;
      String text =
          own.isEmpty() || group.isEmpty() || group.equalsIgnoreCase(own)
              ? (own.isEmpty() ? group : own)
              : group + " " + own;
      String unit = bottom > row ? pad(grid.row(bottom).get(c).text()) : "";
      texts.add((text + unit).replaceAll("\\s+", " ").strip());
    }
    return texts;
  }

  private static String pad(String unit) {
    return unit.isEmpty() ? "" : unit.startsWith("(") ? " " + unit : " (" + unit + ")";
  }
}
