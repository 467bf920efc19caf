package hullalmanac.present.table;

import java.util.List;

/**
 * A table that is only read.
 *
 * @param name what it is called; how one wants it is remembered under this name
 * @param rows a text a column
 */
public record TableState(String name, List<Column> columns, List<List<String>> rows) {
  public TableState {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    int wide = columns.size();
    if (columns.stream().map(Column::id).distinct().count() < wide) {
      throw new IllegalArgumentException("two columns of " + name + " are called the same");
    }
    if (rows.stream().anyMatch(row -> row.size() != wide)) {
      throw new IllegalArgumentException("a row of " + name + " has not " + wide + " texts");
    }
  }

  /**
   * A column.
   *
   * @param id by which it is remembered
   * @param label what stands over it
   */
  public record Column(String id, String label) {}

  /** A table whose columns are remembered by what stands over them. */
  public static TableState of(String name, List<String> columns, List<List<String>> rows) {
    return new TableState(name, columns.stream().map(c -> new Column(c, c)).toList(), rows);
  }

  /** The ids of its columns. */
  public List<String> ids() {
    return columns.stream().map(Column::id).toList();
  }
}
