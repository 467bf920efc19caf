package hullalmanac.store;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A table and its columns, from which its statements follow.
 *
 * @param table name of the table
 * @param names its columns in order
 */
record Columns(String table, List<String> names) {
  /** Reads the columns from a text block with one column a line. */
  static Columns of(String table, String block) {
    return new Columns(table, block.strip().lines().map(String::strip).toList());
  }

  /** Inserts a row; parameters are named like the columns. */
  String insert() {
    return "INSERT INTO "
        + table
        + " ("
        + String.join(", ", names)
        + ") VALUES ("
        + names.stream().map(n -> ":" + n).collect(Collectors.joining(", "))
        + ")";
  }

  /** Reads all rows. */
  String select(String order) {
    return "SELECT " + String.join(", ", names) + " FROM " + table + " ORDER BY " + order;
  }
}
