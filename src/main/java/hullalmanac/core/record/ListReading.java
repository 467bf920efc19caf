package hullalmanac.core.record;

import java.util.List;

/**
 * How the columns of a person's own list were understood when it was brought in, so that the same
 * list is understood the same way the next time.
 *
 * @param name of the list when it was brought in last
 * @param columns from left to right
 */
public record ListReading(Id<ListReading> id, String key, String name, List<Column> columns)
    implements Row {
  public ListReading {
    Texts.key(key);
    Texts.require(name, "the name of a list");
    columns = List.copyOf(columns);
    if (columns.isEmpty()) {
      throw new IllegalArgumentException("a list has at least one column");
    }
  }

  /**
   * A column.
   *
   * @param heading its heading in small letters, without accents and signs; empty for one without
   */
  public record Column(String heading, ListField field) {
    public Column {
      if (!heading.equals(heading.strip()) || heading.matches("(?s).*[|\\p{Cntrl}].*")) {
        throw new IllegalArgumentException(
            "a heading has no blanks around it, no | and no control characters: " + heading);
      }
    }
  }

  /** The headings from left to right. */
  public List<String> headings() {
    return columns.stream().map(Column::heading).toList();
  }
}
