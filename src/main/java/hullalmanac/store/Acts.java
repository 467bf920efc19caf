package hullalmanac.store;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.RowChange;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads the change log. */
final class Acts {
  private static final int MOST_FIELDS = 4000;

  private final Tx tx;

  Acts(Tx tx) {
    this.tx = tx;
  }

  private static Act act(Cells row) throws SQLException {
    return new Act(
        row.id("id"),
        Instant.parse(row.text("at")),
        row.text("device"),
        row.text("what"),
        row.maybeId("undoes"));
  }

  /**
   * Where undo and redo stand.
   *
   * @param step undo stops at a schema step: only acts of this one count
   */
  Standing standing(int step) throws SQLException {
    String acts =
        """
        SELECT
          id,
          at,
          device,
          what,
          undoes
        FROM act
        WHERE schema_step = :step
        ORDER BY place
        """;
    String issuing =
        """
        SELECT DISTINCT
          act_id
        FROM change
        WHERE table_name = 'invoice'
          AND json_extract(after, '$.number') IS NOT NULL
          AND json_extract(before, '$.number') IS NULL
        """;
    return Standing.of(
        tx.list(acts, Map.of("step", step), Acts::act),
        Set.copyOf(tx.list(issuing, row -> row.<Act>id("act_id"))));
  }

  /** What was changed of a row and of all that belongs to it, newest first. */
  List<RowChange> history(Kind kind, Id<?> id) throws SQLException {
    String fields =
        """
        SELECT
          act.id,
          act.at,
          act.device,
          act.what,
          act.undoes,
          change.table_name,
          change.row_id,
          field.key AS name,
          json_extract(change.before, '$.' || field.key) AS was,
          json_extract(change.after, '$.' || field.key) AS becomes
        FROM change
        JOIN act ON act.id = change.act_id
        JOIN json_each(coalesce(change.after, change.before)) AS field
        WHERE (
            (change.table_name = :table AND change.row_id = CAST(:id AS TEXT))
            OR json_extract(coalesce(change.after, change.before), '$.%1$s_id') = :owner
            %2$s
          )
          AND json_extract(change.before, '$.' || field.key)
            IS NOT json_extract(change.after, '$.' || field.key)
        ORDER BY act.place DESC, change.place, field.id
        LIMIT %3$d
        """;
    String throughSurfaces =
        """
        OR json_extract(coalesce(change.after, change.before), '$.surface_id')
          IN (SELECT id FROM surface WHERE boat_id = :boat)
        """;
    String table = table(kind);
    boolean boat = kind == Kind.BOAT;
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("table", table);
    values.put("id", id);
    values.put("owner", id);
    if (boat) {
      values.put("boat", id);
    }
    return rows(
        tx.list(
            fields.formatted(table, boat ? throughSurfaces : "", MOST_FIELDS),
            values,
            row ->
                new RowChange(
                    act(row),
                    row.text("table_name"),
                    row.text("row_id"),
                    List.of(
                        new RowChange.Field(
                            row.text("name"), row.maybeText("was"), row.maybeText("becomes"))))));
  }

  /** Joins the fields of one row in one act. */
  private static List<RowChange> rows(List<RowChange> fields) {
    Map<String, RowChange> rows = new LinkedHashMap<>();
    for (RowChange f : fields) {
      rows.merge(
          f.act().id() + f.table() + f.rowId(),
          f,
          (a, b) -> {
            List<RowChange.Field> both = new ArrayList<>(a.fields());
            both.addAll(b.fields());
            return new RowChange(a.act(), a.table(), a.rowId(), both);
          });
    }
    return List.copyOf(rows.values());
  }

  /** All acts, newest first, by the first columns that change logs ever had. */
  List<Act> all() throws SQLException {
    return tx.list(
        "SELECT id, at, device, what, undoes FROM act ORDER BY at DESC, id", Map.of(), Acts::act);
  }

  /** Acts that took out rows which are not back, newest first. */
  List<Act> bin(int step) throws SQLException {
    String gone =
        Arrays.stream(Kind.values())
            .filter(kind -> kind != Kind.BUSINESS)
            .map(Acts::table)
            .map(
                t ->
                    """
                    SELECT act_id
                    FROM change
                    WHERE table_name = '%1$s'
                      AND after IS NULL
                      AND CAST(row_id AS INTEGER) NOT IN (SELECT id FROM %1$s)
                    """
                        .formatted(t))
            .collect(Collectors.joining("UNION "));
    String acts =
        """
        SELECT
          id,
          at,
          device,
          what,
          undoes
        FROM act
        WHERE undoes IS NULL
          AND schema_step = :step
          AND id IN (%s)
        ORDER BY place DESC
        """;
    return tx.list(acts.formatted(gone), Map.of("step", step), Acts::act);
  }

  static String table(Kind kind) {
    return kind.one().replace(' ', '_');
  }
}
