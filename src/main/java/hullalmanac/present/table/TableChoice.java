package hullalmanac.present.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one wants a table.
 *
 * @param columns all of its columns in order, those that are hidden too; at least one is shown
 * @param sort by which column it is sorted; absent where its rows stand as they come
 */
public record TableChoice(List<Column> columns, Optional<Sort> sort) {
  public TableChoice {
    columns = List.copyOf(columns);
    List<String> ids = columns.stream().map(Column::id).toList();
    if (new HashSet<>(ids).size() < ids.size()) {
      throw new IllegalArgumentException("a column stands there twice: " + ids);
    }
    if (columns.stream().noneMatch(Column::shown)) {
      throw new IllegalArgumentException("no column is shown of " + ids);
    }
    if (sort.isPresent() && !ids.contains(sort.get().column())) {
      throw new IllegalArgumentException("no column to sort by: " + sort.get().column());
    }
  }

  /**
   * A column.
   *
   * @param width in pixels at 100 %, at least 1; absent where it is as wide as its texts need
   */
  public record Column(String id, boolean shown, Optional<Integer> width) {
    public Column {
      if (width.filter(w -> w < 1).isPresent()) {
        throw new IllegalArgumentException("a width of " + width.get());
      }
    }
  }

  /**
   * By which column, and which way.
   *
   * @param down whether the greatest comes first
   */
  public record Sort(String column, boolean down) {}

  /** A table as it comes. */
  public static TableChoice usual(List<String> ids) {
    return new TableChoice(
        ids.stream().map(id -> new Column(id, true, Optional.empty())).toList(), Optional.empty());
  }

  /** Whether this is about a table with these columns. */
  public boolean fits(List<String> ids) {
    return columns.size() == ids.size()
        && new HashSet<>(ids).equals(new HashSet<>(columns.stream().map(Column::id).toList()));
  }

  /** The ids of the columns shown, in order. */
  public List<String> shown() {
    return columns.stream().filter(Column::shown).map(Column::id).toList();
  }

  /** A column, if there is one of that id. */
  public Optional<Column> column(String id) {
    return columns.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  /** Shows or hides a column; the last one shown stays. */
  public TableChoice show(String id, boolean now) {
    if (!now && shown().equals(List.of(id))) {
      return this;
    }
    return new TableChoice(
        columns.stream().map(c -> c.id().equals(id) ? new Column(id, now, c.width()) : c).toList(),
        sort);
  }

  /** Moves a shown column one place among those shown; at the edge it stays. */
  public TableChoice move(String id, boolean right) {
    List<String> shown = new ArrayList<>(shown());
    int from = shown.indexOf(id);
    int to = right ? from + 1 : from - 1;
    if (from < 0 || to < 0 || to >= shown.size()) {
      return this;
    }
    Collections.swap(shown, from, to);
    return inOrder(shown);
  }

  /**
   * The same columns in another order; hidden ones stay where they are among all.
   *
   * @param shown the ids of those shown
   */
  public TableChoice inOrder(List<String> shown) {
    if (!new HashSet<>(shown).equals(new HashSet<>(shown())) || shown.size() != shown().size()) {
      throw new IllegalArgumentException(shown + " are not the columns shown, " + shown());
    }
    List<Column> ordered = new ArrayList<>();
    int next = 0;
    for (Column c : columns) {
      ordered.add(c.shown() ? column(shown.get(next++)).orElseThrow() : c);
    }
    return new TableChoice(ordered, sort);
  }

  /** Makes columns as wide as said, in pixels at 100 %; others stay. */
  public TableChoice widths(Map<String, Integer> widths) {
    return new TableChoice(
        columns.stream()
            .map(
                c ->
                    new Column(
                        c.id(), c.shown(), Optional.ofNullable(widths.get(c.id())).or(c::width)))
            .toList(),
        sort);
  }

  /** Sorts by a column, or not at all. */
  public TableChoice sortedBy(Optional<Sort> by) {
    return new TableChoice(columns, by);
  }
}
