package hullalmanac.core.record;

import java.util.List;
import java.util.Optional;

/**
 * What an act did to one row.
 *
 * @param table the table it stands in, such as {@code visit_surface}
 * @param fields the columns that changed; for a row that was put in or taken out, all of them
 */
public record RowChange(Act act, String table, String rowId, List<Field> fields) {
  public RowChange {
    fields = List.copyOf(fields);
  }

  /**
   * A column before and after.
   *
   * @param before absent for a row that was put in, or where there was nothing
   * @param after absent for a row that was taken out, or where there is nothing now
   */
  public record Field(String name, Optional<String> before, Optional<String> after) {}
}
