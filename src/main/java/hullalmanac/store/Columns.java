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

  /**
   * The columns that tell a row from all others: the id, or for an item of a list its owner and
   * place.
   */
  private List<String> keys() {
    return names.get(0).equals("id") ? names.subList(0, 1) : names.subList(0, 2);
  }

  /**
   * Puts a row in, in the place of the one with the same id; where both are the same nothing is
   * written, so nothing is logged. Parameters are named like the columns.
   */
  String put() {
    List<String> keys = keys();
    List<String> others = names.subList(keys.size(), names.size());
    return "INSERT INTO "
        + table
        + " ("
        + String.join(", ", names)
        + ") VALUES ("
        + each(names, ":")
        + ") ON CONFLICT ("
        + String.join(", ", keys)
        + ") DO UPDATE SET ("
        + String.join(", ", others)
        + ") = ("
        + each(others, "excluded.")
        + ") WHERE ("
        + each(others, table + ".")
        + ") IS NOT ("
        + each(others, "excluded.")
        + ")";
  }

  /** Takes the items of a list from a place on; parameters are the owner's column and the place. */
  String cut() {
    return "DELETE FROM "
        + table
        + " WHERE "
        + names.get(0)
        + " = :"
        + names.get(0)
        + " AND place > :place";
  }

  private static String each(List<String> names, String before) {
    return names.stream().map(n -> before + n).collect(Collectors.joining(", "));
  }

  /** Reads all rows. */
  String select(String order) {
    return "SELECT " + String.join(", ", names) + " FROM " + table + " ORDER BY " + order;
  }
}
