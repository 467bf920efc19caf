package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Row;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Every reference of every row, read off the types of its components: nothing here knows what
 * refers to what, so a new reference is held as well.
 */
final class References {
  private References() {}

  /**
   * A row that is referred to.
   *
   * @param kind the class of the row
   */
  record To(Class<?> kind, Id<?> id) {}

  /** References of rows of a record to rows that are not in it, in words. */
  static List<String> missing(Almanac almanac) {
    Set<To> there = new HashSet<>();
    almanac.rows().forEach(r -> there.add(new To(r.getClass(), r.id())));
    List<String> missing = new ArrayList<>();
    for (Row row : almanac.rows()) {
      of(row).stream()
          .filter(to -> !there.contains(to))
          .forEach(to -> missing.add(row.getClass().getSimpleName() + " " + row.key() + ": " + to));
    }
    return missing;
  }

  /** What a row refers to, itself not counted. */
  static Set<To> of(Row row) {
    Set<To> found = new HashSet<>();
    collect((Record) row, found);
    found.remove(new To(row.getClass(), row.id()));
    return found;
  }

  private static void collect(Record value, Set<To> found) {
    for (RecordComponent c : value.getClass().getRecordComponents()) {
      try {
        collect(c.getGenericType(), c.getAccessor().invoke(value), found);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private static void collect(Type type, Object value, Set<To> found) {
    if (value instanceof Id<?> id) {
      Type of = ((ParameterizedType) type).getActualTypeArguments()[0];
      found.add(new To((Class<?>) of, id));
    } else if (value instanceof Optional<?> maybe) {
      maybe.ifPresent(v -> collect(inner(type), v, found));
    } else if (value instanceof Collection<?> many) {
      many.forEach(v -> collect(inner(type), v, found));
    } else if (value instanceof Record inner && inner.getClass().getName().contains(".record.")) {
      collect(inner, found);
    }
  }

  private static Type inner(Type type) {
    return ((ParameterizedType) type).getActualTypeArguments()[0];
  }
}
