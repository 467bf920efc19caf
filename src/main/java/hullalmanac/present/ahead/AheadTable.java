package hullalmanac.present.ahead;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.present.table.TableState;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The rows of Ahead as a table, the rings of each by month in numbers.
 *
 * @param boats the boat that a row opens, one a row
 */
public record AheadTable(TableState table, List<Id<Boat>> boats) {
  private static final String NAME = "Ahead";

  public AheadTable {
    boats = List.copyOf(boats);
  }

  static AheadTable of(List<AheadState.Row> rows, LocalDate today) {
    return new AheadTable(
        new TableState(NAME, columns(today), rows.stream().map(r -> cells(r, today)).toList()),
        rows.stream().map(AheadState.Row::boat).toList());
  }

  /**
   * The months are remembered by how far ahead they are, so that they stay in order when another
   * month has begun.
   */
  private static List<TableState.Column> columns(LocalDate today) {
    List<YearMonth> months = Chances.months(today);
    Stream<TableState.Column> ahead =
        IntStream.range(0, months.size())
            .mapToObj(n -> new TableState.Column("month " + n, label(months.get(n), today)));
    return Stream.of(
            Stream.of(same("Boat"), same("Harbour"), same("Due"), same("Before today")),
            ahead,
            Stream.of(same("Later"), same("In words")))
        .flatMap(s -> s)
        .toList();
  }

  private static TableState.Column same(String label) {
    return new TableState.Column(label, label);
  }

  private static String label(YearMonth month, LocalDate today) {
    String name = month.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    return month.getYear() == today.getYear() ? name : name + " " + month.getYear();
  }

  private static List<String> cells(AheadState.Row row, LocalDate today) {
    Chances chances = new Chances(row.dots(), today);
    List<String> cells =
        new ArrayList<>(List.of(row.name(), row.harbour(), row.what(), words(chances.before())));
    Chances.months(today).forEach(m -> cells.add(words(chances.in(m))));
    cells.add(words(chances.after()));
    cells.add(row.detail());
    return cells;
  }

  private static String words(long count) {
    return count == 0 ? "" : count + " in 20";
  }
}
