package hullalmanac.exchange.csv;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Kind;
import java.util.List;
import java.util.Optional;

/**
 * One file of the set.
 *
 * @param <T> what a row is
 */
abstract class CsvKind<T> {
  private final String file;
  private final Kind kind;
  private final List<Column> columns;

  CsvKind(String file, Kind kind, List<Column> columns) {
    this.file = file;
    this.kind = kind;
    this.columns = List.copyOf(columns);
  }

  /** Name of the file. */
  final String file() {
    return file;
  }

  /** The kind whose ids its column {@code id} holds, or to which its rows belong. */
  final Kind kind() {
    return kind;
  }

  final List<Column> columns() {
    return columns;
  }

  /** Whether its rows have ids of their own. */
  final boolean hasIds() {
    return columns.get(0).name().equals("id");
  }

  /** All its rows of a record, in the order in which they are written. */
  abstract List<T> rows(Almanac almanac, Keys keys);

  abstract void write(T row, Out out);

  abstract Optional<T> read(In in);
}
