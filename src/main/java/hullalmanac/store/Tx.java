package hullalmanac.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An open transaction, handed to the work that is done in it. Not to be kept beyond. */
public final class Tx {
  private final Connection connection;

  Tx(Connection connection) {
    this.connection = connection;
  }

  /** Reads one row. */
  interface RowReader<T> {
    T read(Cells row) throws SQLException;
  }

  /** Binds one item. */
  interface ItemBinder<T> {
    void bind(Binder to, T item) throws SQLException;
  }

  /** Runs a statement once for each item. */
  <T> void each(String sql, List<T> items, ItemBinder<T> binder) throws SQLException {
    if (items.isEmpty()) {
      return;
    }
    NamedSql named = NamedSql.of(sql);
    try (PreparedStatement statement = connection.prepareStatement(named.text())) {
      Binder to = new Binder(statement, named.names());
      for (T item : items) {
        binder.bind(to, item);
        to.finish();
        statement.executeUpdate();
      }
    }
  }

  /** Runs a statement once. */
  void run(String sql, Map<String, ?> values) throws SQLException {
    each(
        sql,
        List.of(values),
        (to, all) -> {
          for (Map.Entry<String, ?> e : all.entrySet()) {
            to.set(e.getKey(), e.getValue());
          }
        });
  }

  /** Reads all rows of a query. */
  <T> List<T> list(String sql, Map<String, ?> values, RowReader<T> reader) throws SQLException {
    NamedSql named = NamedSql.of(sql);
    try (PreparedStatement statement = connection.prepareStatement(named.text())) {
      Binder to = new Binder(statement, named.names());
      for (Map.Entry<String, ?> e : values.entrySet()) {
        to.set(e.getKey(), e.getValue());
      }
      to.finish();
      try (ResultSet rows = statement.executeQuery()) {
        Cells row = new Cells(rows);
        List<T> items = new ArrayList<>();
        while (rows.next()) {
          items.add(reader.read(row));
        }
        return items;
      }
    }
  }

  <T> List<T> list(String sql, RowReader<T> reader) throws SQLException {
    return list(sql, Map.of(), reader);
  }
}
