package hullalmanac.present.table;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How one wants each table that one has changed, by the table's name.
 *
 * @param byTable only tables that are not as they come
 */
public record TableChoices(Map<String, TableChoice> byTable) {
  public TableChoices {
    byTable = Map.copyOf(byTable);
  }

  /** Every table as it comes. */
  public static TableChoices none() {
    return new TableChoices(Map.of());
  }

  /** How one wants a table, where that is known. */
  public Optional<TableChoice> of(String table) {
    return Optional.ofNullable(byTable.get(table));
  }

  /** The same, with another choice for a table; none means as it comes. */
  public TableChoices with(String table, Optional<TableChoice> choice) {
    Map<String, TableChoice> next = new TreeMap<>(byTable);
    next.remove(table);
    choice.ifPresent(c -> next.put(table, c));
    return new TableChoices(next);
  }
}
