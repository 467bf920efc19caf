package hullalmanac.present.table;

import java.util.List;
import java.util.Optional;

/** Keeps how one wants each table, from one showing of it to the next. */
public final class TableMemory {
  private TableChoices choices = TableChoices.none();

  /** Begins with what was remembered when the program was closed. */
  public void begin(TableChoices before) {
    choices = before;
  }

  /** All that is to be remembered when the program is closed. */
  public TableChoices choices() {
    return choices;
  }

  /**
   * How one wants a table. What was chosen for other columns than it has now no longer fits; then
   * it is as it comes.
   *
   * @param ids of its columns, as they come
   */
  public TableChoice of(String table, List<String> ids) {
    return choices.of(table).filter(c -> c.fits(ids)).orElseGet(() -> TableChoice.usual(ids));
  }

  /**
   * Remembers how one wants a table.
   *
   * @param ids of its columns, as they come
   */
  public void keep(String table, TableChoice choice, List<String> ids) {
    boolean usual = choice.equals(TableChoice.usual(ids));
    choices = choices.with(table, Optional.of(choice).filter(c -> !usual));
  }
}
