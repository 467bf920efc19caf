package hullalmanac.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Takes an act back from its images in the change log, row by row, the last change first. */
final class Undo {
  private Undo() {}

  private record Change(String table, String rowId, String before, String after) {}

  /** Takes back an act within a transaction in which another act is current. */
  static void apply(Connection connection, long act) throws SQLException {
    for (Change change : changes(connection, act)) {
      List<ChangeLog.Column> columns = ChangeLog.columns(connection, change.table());
      if (change.after() != null && change.before() == null) {
        run(
            connection,
            "DELETE FROM " + change.table() + " WHERE " + keyOf(columns, "?1"),
            change.after());
      } else if (change.before() != null && change.after() == null) {
        insert(connection, change, "INSERT INTO ");
      } else {
        run(
            connection,
            "UPDATE "
                + change.table()
                + " SET ("
                + names(columns)
                + ") = ("
                + values(columns)
                + ") WHERE "
                + keyOf(columns, "?1"),
            change.before());
      }
    }
  }

  /**
   * Puts back the rows which an act took out and which are not there, within a transaction in which
   * another act is current; rows that lost what named these get it back. A row whose own id was
   * taken by another meanwhile gets one with a number after it.
   *
   * @return how many rows came back
   */
  static int putBack(Connection connection, long act) throws SQLException {
    int back = 0;
    for (Change change : changes(connection, act)) {
      if (change.before() != null && change.after() == null) {
        back += insert(connection, withFreeKey(connection, change), "INSERT OR IGNORE INTO ");
      } else if (change.before() != null) {
        asBefore(connection, change);
      }
    }
    return back;
  }

  /** Gives a row what it was before an act, unless it was changed again or issued since. */
  private static void asBefore(Connection connection, Change change) throws SQLException {
    List<ChangeLog.Column> columns = ChangeLog.columns(connection, change.table());
    String unchanged =
        columns.stream()
            .map(c -> c.name() + " IS json_extract(?2, '$." + c.name() + "')")
            .collect(Collectors.joining(" AND "));
    String sql =
        "UPDATE "
            + change.table()
            + " SET ("
            + names(columns)
            + ") = ("
            + values(columns)
            + ") WHERE "
            + unchanged;
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, change.before());
      statement.setString(2, change.after());
      statement.executeUpdate();
    } catch (SQLException e) {
      if (!Failures.isOfIssued(e)) {
        throw e;
      }
    }
  }

  private static Change withFreeKey(Connection connection, Change change) throws SQLException {
    boolean keyed =
        ChangeLog.columns(connection, change.table()).stream()
            .anyMatch(c -> c.name().equals("key"));
    Change free = change;
    for (int n = 2; keyed && keyIsTaken(connection, free); n++) {
      free =
          new Change(
              change.table(),
              change.rowId(),
              ask(
                  connection,
                  "SELECT json_set(?1, '$.key', substr(json_extract(?1, '$.key'), 1, 70) || '-"
                      + n
                      + "')",
                  change.before()),
              change.after());
    }
    return free;
  }

  private static boolean keyIsTaken(Connection connection, Change change) throws SQLException {
    return ask(
            connection,
            "SELECT count(*) FROM "
                + change.table()
                + " WHERE key = json_extract(?1, '$.key') AND id <> json_extract(?1, '$.id')",
            change.before())
        .equals("1");
  }

  private static String ask(Connection connection, String sql, String image) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, image);
      try (ResultSet rows = statement.executeQuery()) {
        return rows.getString(1);
      }
    }
  }

  private static int insert(Connection connection, Change change, String verb) throws SQLException {
    List<ChangeLog.Column> columns = ChangeLog.columns(connection, change.table());
    return run(
        connection,
        verb + change.table() + " (" + names(columns) + ") VALUES (" + values(columns) + ")",
        change.before());
  }

  private static List<Change> changes(Connection connection, long act) throws SQLException {
    List<Change> changes = new ArrayList<>();
    try (PreparedStatement statement =
        connection.prepareStatement(
            "SELECT table_name, row_id, before, after FROM change WHERE act_id = ? ORDER BY place DESC")) {
      statement.setLong(1, act);
      try (ResultSet rows = statement.executeQuery()) {
        while (rows.next()) {
          changes.add(
              new Change(
                  rows.getString(1), rows.getString(2), rows.getString(3), rows.getString(4)));
        }
      }
    }
    return changes;
  }

  private static int run(Connection connection, String sql, String image) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, image);
      return statement.executeUpdate();
    }
  }

  private static String names(List<ChangeLog.Column> columns) {
    return columns.stream().map(ChangeLog.Column::name).collect(Collectors.joining(", "));
  }

  private static String values(List<ChangeLog.Column> columns) {
    return columns.stream()
        .map(c -> "json_extract(?1, '$." + c.name() + "')")
        .collect(Collectors.joining(", "));
  }

  private static String keyOf(List<ChangeLog.Column> columns, String image) {
    return columns.stream()
        .filter(c -> c.keyPlace() > 0)
        .map(c -> c.name() + " = json_extract(" + image + ", '$." + c.name() + "')")
        .collect(Collectors.joining(" AND "));
  }
}
