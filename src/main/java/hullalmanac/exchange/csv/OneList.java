package hullalmanac.exchange.csv;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Kind;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A list of the set as cells, for those who write it in another form.
 *
 * @param name of its file, without its ending
 * @param kind of its rows, or of the rows that its rows are parts of
 * @param hasIds whether its first column holds ids of its own rows
 * @param columns in the order in which they are written
 * @param rows cells in the order of the columns
 */
public record OneList(
    String name, Kind kind, boolean hasIds, List<String> columns, List<List<Cell>> rows) {
  public OneList {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * A cell.
   *
   * @param text as the lists have it, not guarded; several are joined by |
   * @param names the kind whose ids it holds, where it names other rows
   */
  public record Cell(String text, Optional<Kind> names) {
    /** The ids or words in it. */
    public List<String> parts() {
      return text.isEmpty() ? List.of() : List.of(text.split("\\|"));
    }
  }

  static <T> OneList of(CsvKind<T> kind, Almanac almanac, Keys keys) {
    List<String> columns =
        kind.columns().stream()
            .filter(c -> c.form() != Column.Form.IMPORT_ONLY)
            .map(Column::name)
            .toList();
    List<List<Cell>> rows =
        kind.rows(almanac, keys).stream()
            .map(
                row -> {
                  Out out = new Out(keys);
                  kind.write(row, out);
                  Map<String, Cell> cells = out.cells();
                  return columns.stream().map(cells::get).toList();
                })
            .toList();
    String file = kind.file();
    return new OneList(
        file.substring(0, file.lastIndexOf('.')), kind.kind(), kind.hasIds(), columns, rows);
  }
}
