package hullalmanac.present.owner;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Row;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

/** What of a record an owner must not read, found by the names of the components that hold it. */
final class Secrets {
  static final String WORD = "unspeakable";
  private static final Money PRICE = new Money(4_747_474, Currency.getInstance("USD"));

  private static final Set<String> NAMES =
      Set.of(
          "note",
          "caption",
          "phone",
          "email",
          "address",
          "keys",
          "gateCode",
          "absence",
          "place",
          "water",
          "power",
          "hours",
          "tide",
          "runoff",
          "reason",
          "text",
          "whom",
          "batch",
          "pad",
          "speed",
          "work",
          "meter");

  private Secrets() {}

  /** Every secret text of a record, and every price as it is written. */
  static List<String> of(Almanac almanac) {
    List<String> texts = new ArrayList<>();
    for (Row row : almanac.rows()) {
      if (row instanceof Party party) {
        texts.add(party.name());
      }
      walk(
          row,
          (name, value) -> {
            if (value instanceof String text && NAMES.contains(name) && !text.isBlank()) {
              texts.add(text);
            } else if (value instanceof Money money) {
              texts.add(money.amount().toPlainString());
            }
          });
    }
    return texts.stream().distinct().toList();
  }

  /** Calls back with every value in a record, and the name of the component that holds it. */
  static void walk(Object in, BiConsumer<String, Object> seen) {
    walk("", in, seen);
  }

  private static void walk(String name, Object value, BiConsumer<String, Object> seen) {
    seen.accept(name, value);
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(v -> walk(name, v, seen));
    } else if (value instanceof Collection<?> all) {
      all.forEach(v -> walk(name, v, seen));
    } else if (value instanceof Record) {
      for (RecordComponent c : value.getClass().getRecordComponents()) {
        walk(c.getName(), get(c, value), seen);
      }
    }
  }

  /** The record with one word in the place of all its secrets, and a price nobody else has. */
  static Almanac poisoned(Almanac almanac) {
    return almanac.with(
        Edit.put(almanac.rows().stream().map(row -> (Row) poison("", row, row)).toList()));
  }

  private static Object poison(String name, Object value, Row row) {
    if (value instanceof String
        && (NAMES.contains(name) || (row instanceof Party && name.equals("name")))) {
      return WORD;
    }
    if (value instanceof Money) {
      return PRICE;
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(v -> poison(name, v, row));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(v -> poison(name, v, row)).toList();
    }
    return value instanceof Record ? rebuilt(value, row) : value;
  }

  private static Object rebuilt(Object value, Row row) {
    try {
      RecordComponent[] components = value.getClass().getRecordComponents();
      Object[] values =
          Arrays.stream(components).map(c -> poison(c.getName(), get(c, value), row)).toArray();
      Constructor<?> made =
          value
              .getClass()
              .getDeclaredConstructor(
                  Arrays.stream(components).map(RecordComponent::getType).toArray(Class[]::new));
      return made.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(value.toString(), e);
    }
  }

  private static Object get(RecordComponent component, Object of) {
    try {
      return component.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(component.toString(), e);
    }
  }
}
