package hullalmanac.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes each row that changes, before and after, into the change log, by temporary triggers made
 * from the tables as they stand. So no store can forget it, and no schema step has to keep it up. A
 * write outside an act is refused.
 */
final class ChangeLog {
  private static final List<String> NOT_LOGGED = List.of("act", "change");

  private ChangeLog() {}

  /** Makes the triggers of a connection that is to write. */
  static void watch(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(
          "CREATE TEMP TABLE current_act (act_id INTEGER NOT NULL, place INTEGER NOT NULL)");
      for (String table : tables(connection)) {
        List<Column> columns = columns(connection, table);
        for (Event event : Event.values()) {
          statement.execute(event.trigger(table, columns));
        }
      }
    }
  }

  /** A column, and its place in the primary key or 0. */
  record Column(String name, int keyPlace) {}

  static List<String> tables(Connection connection) throws SQLException {
    List<String> tables = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY name")) {
      while (rows.next()) {
        if (!NOT_LOGGED.contains(rows.getString(1))) {
          tables.add(rows.getString(1));
        }
      }
    }
    return tables;
  }

  static List<Column> columns(Connection connection, String table) throws SQLException {
    List<Column> columns = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("PRAGMA main.table_info(" + table + ")")) {
      while (rows.next()) {
        columns.add(new Column(rows.getString("name"), rows.getInt("pk")));
      }
    }
    return columns;
  }

  private enum Event {
    INSERT("NULL", "NEW"),
    UPDATE("OLD", "NEW"),
    DELETE("OLD", "NULL");

    private final String before;
    private final String after;

    Event(String before, String after) {
      this.before = before;
      this.after = after;
    }

    String trigger(String table, List<Column> columns) {
      String row = this == DELETE ? "OLD" : "NEW";
      String key =
          columns.stream()
              .filter(c -> c.keyPlace() > 0)
              .map(c -> row + "." + c.name())
              .collect(Collectors.joining(" || '/' || "));
      return """
          CREATE TEMP TRIGGER log_%1$s_%2$s AFTER %2$s ON main.%1$s BEGIN
            SELECT RAISE(ABORT, 'a write outside an act')
            WHERE NOT EXISTS (SELECT 1 FROM current_act);
            UPDATE current_act SET place = place + 1;
            INSERT INTO change (act_id, place, table_name, row_id, before, after)
            SELECT act_id, place, '%1$s', CAST(%3$s AS TEXT), %4$s, %5$s
            FROM current_act;
          END
          """
          .formatted(table, name(), key, image(before, columns), image(after, columns));
    }

    private static String image(String row, List<Column> columns) {
      return row.equals("NULL")
          ? "NULL"
          : columns.stream()
              .map(c -> "'" + c.name() + "', " + row + "." + c.name())
              .collect(Collectors.joining(", ", "json_object(", ")"));
    }
  }
}
