package hullalmanac.store;

import hullalmanac.core.calendar.Revision;
import hullalmanac.core.calendar.Revisions;
import hullalmanac.core.record.Id;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads in the change log how often what a calendar shows was changed, for all rows at once. */
final class CalendarLog {
  private static final List<Shown> VISITS =
      List.of(
          new Shown("visit", "id", List.of("boat_id", "day", "status", "care_plan_id")),
          new Shown("visit_surface", "visit_id", List.of("surface_id", "done_on")),
          new Shown("step", "visit_id", List.of("visit_id", "day", "kind", "product_id")));

  private static final List<Shown> BERTHS =
      List.of(
          new Shown(
              "berth",
              "id",
              List.of(
                  "boat_id",
                  "harbour_id",
                  "cover",
                  "water",
                  "from_day",
                  "until_day",
                  "yearly",
                  "last_year",
                  "place")));

  private final Tx tx;

  CalendarLog(Tx tx) {
    this.tx = tx;
  }

  /**
   * A table of which a change is seen in the calendar.
   *
   * @param owner the column with the id of what is told
   * @param columns those that are seen
   */
  private record Shown(String table, String owner, List<String> columns) {
    /** Changes that are seen: whose, in which act, and whether what is told was made by it. */
    String changes() {
      return """
      SELECT
        json_extract(coalesce(after, before), '$.%1$s') AS owner,
        act_id,
        %2$s AND before IS NULL AS made
      FROM change
      WHERE table_name = '%3$s'
        AND (before IS NULL OR after IS NULL OR (%4$s) IS NOT (%5$s))
      """
          .formatted(owner, owner.equals("id"), table, images("before"), images("after"));
    }

    private String images(String image) {
      return columns.stream()
          .map(c -> "json_extract(" + image + ", '$." + c + "')")
          .collect(Collectors.joining(", "));
    }
  }

  /**
   * How often what a calendar shows of each visit and berth changed.
   *
   * @param before since when rows are there that are older than the log; absent: since its first
   *     act
   */
  Revisions revisions(Optional<Instant> before) throws SQLException {
    Optional<Instant> oldest = at("min");
    Instant first = before.or(() -> oldest).orElse(Instant.EPOCH);
    return new Revisions(of(VISITS), of(BERTHS), new Revision(0, first), at("max").orElse(first));
  }

  private Optional<Instant> at(String end) throws SQLException {
    return tx
        .list(
            "SELECT at FROM act WHERE place = (SELECT " + end + "(place) FROM act)",
            row -> Instant.parse(row.text("at")))
        .stream()
        .findFirst();
  }

  /**
   * The act that made a row is none of its changes. With one max() in a query SQLite takes the
   * other columns from the row that has it (sqlite.org/lang_select).
   */
  private <R> Map<Id<R>, Revision> of(List<Shown> tables) throws SQLException {
    String acts =
        """
        SELECT
          owner,
          count(DISTINCT act_id) - (sum(made) > 0) AS times,
          max(act.place) AS newest,
          act.at
        FROM (%s) AS told
        JOIN act ON act.id = told.act_id
        GROUP BY owner
        """
            .formatted(
                tables.stream().map(Shown::changes).collect(Collectors.joining("UNION ALL ")));
    Map<Id<R>, Revision> revisions = new HashMap<>();
    for (Map.Entry<Id<R>, Revision> one : tx.list(acts, row -> this.<R>entry(row))) {
      revisions.put(one.getKey(), one.getValue());
    }
    return revisions;
  }

  private <R> Map.Entry<Id<R>, Revision> entry(Cells row) throws SQLException {
    return Map.entry(
        row.id("owner"), new Revision(row.whole("times"), Instant.parse(row.text("at"))));
  }
}
