package hullalmanac.exchange.csv;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Numbers;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** One row as it is written. */
final class Out {
  private final Map<String, OneList.Cell> cells = new HashMap<>();
  private final Keys keys;

  Out(Keys keys) {
    this.keys = keys;
  }

  /** Puts a value in the form in which files keep it; an absent one leaves the cell empty. */
  Out put(String column, Object value) {
    return put(column, value, Optional.empty());
  }

  private Out put(String column, Object value, Optional<Kind> names) {
    cells.put(column, new OneList.Cell(plain(value), names));
    return this;
  }

  Out ref(String column, Kind kind, Id<?> id) {
    return put(column, keys.key(kind, id), Optional.of(kind));
  }

  Out ref(String column, Kind kind, Optional<? extends Id<?>> id) {
    return put(column, id.map(i -> keys.key(kind, i)), Optional.of(kind));
  }

  Out refs(String column, Kind kind, List<? extends Id<?>> ids) {
    return put(
        column,
        ids.stream().map(i -> keys.key(kind, i)).collect(Collectors.joining("|")),
        Optional.of(kind));
  }

  private static String plain(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(Out::plain).orElse("");
    }
    if (value instanceof Coded coded) {
      return coded.code();
    }
    if (value instanceof Double number) {
      return Numbers.plain(number);
    }
    if (value instanceof BigDecimal number) {
      return number.toPlainString();
    }
    if (value instanceof Money money) {
      return money.amount().toPlainString();
    }
    if (value instanceof Boolean flag) {
      return flag ? "yes" : "no";
    }
    if (value instanceof Length length) {
      return String.format(Locale.ROOT, "%.3f", length.metres());
    }
    if (value instanceof List<?> list) {
      return list.stream().map(Out::plain).collect(Collectors.joining("|"));
    }
    return value.toString();
  }

  /** The cells by column, not guarded. */
  Map<String, OneList.Cell> cells() {
    return Map.copyOf(cells);
  }

  /** The cells in the order of the columns, texts guarded. */
  List<String> line(List<Column> columns) {
    return columns.stream()
        .filter(c -> c.form() != Column.Form.IMPORT_ONLY)
        .map(
            c -> {
              OneList.Cell cell = cells.get(c.name());
              if (cell == null) {
                throw new IllegalStateException("nothing was put into the column " + c.name());
              }
              return c.form() == Column.Form.TEXT ? Guard.on(cell.text()) : cell.text();
            })
        .toList();
  }
}
