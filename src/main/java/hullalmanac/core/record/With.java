package hullalmanac.core.record;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Copies of records in which one component is another. */
public final class With {
  private With() {}

  /**
   * A copy of a record with one component changed.
   *
   * @param path name of the component; one inside a component that is a record itself as {@code
   *     access.place}
   * @throws IllegalArgumentException when the record has no such component, or with its own
   *     sentence when it refuses the value
   */
  public static <T extends Record> T component(T record, String path, Object value) {
    int dot = path.indexOf('.');
    if (dot < 0) {
      return set(record, path, value);
    }
    String name = path.substring(0, dot);
    Record inner = (Record) get(record, find(record, name));
    return set(record, name, component(inner, path.substring(dot + 1), value));
  }

  /**
   * A copy of a value in which each value of a type is another, wherever it stands within records,
   * lists and optional values.
   */
  public static <V> Object each(Object value, Class<V> type, UnaryOperator<V> change) {
    if (type.isInstance(value)) {
      return change.apply(type.cast(value));
    }
    if (value instanceof Optional<?> maybe) {
      return maybe.map(v -> each(v, type, change));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(v -> each(v, type, change)).toList();
    }
    return value instanceof Record row ? within(row, type, change) : value;
  }

  private static <V> Record within(Record row, Class<V> type, UnaryOperator<V> change) {
    Object[] values =
        Arrays.stream(row.getClass().getRecordComponents())
            .map(c -> each(get(row, c), type, change))
            .toArray();
    return made(row, values);
  }

  private static RecordComponent find(Record record, String name) {
    return Arrays.stream(record.getClass().getRecordComponents())
        .filter(c -> c.getName().equals(name))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException(record.getClass() + " has no component " + name));
  }

  private static <T extends Record> T set(T record, String name, Object value) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    RecordComponent changed = find(record, name);
    Object[] values =
        Arrays.stream(components)
            .map(c -> c.getName().equals(changed.getName()) ? value : get(record, c))
            .toArray();
    return made(record, values);
  }

  private static <T extends Record> T made(T record, Object[] values) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    @SuppressWarnings("unchecked")
    Class<T> type = (Class<T>) record.getClass();
    try {
      Constructor<T> canonical = type.getDeclaredConstructor(types);
      return canonical.newInstance(values);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException refused) {
        throw refused;
      }
      throw new IllegalStateException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object get(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
