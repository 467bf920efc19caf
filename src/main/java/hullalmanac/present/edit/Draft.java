package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A value one writes at before it becomes rows of the record, as a form. A text that is refused
 * stays as it was typed, with the reason beside it, until it is mended.
 *
 * @param <T> the value
 */
final class Draft<T> {
  private final String id;
  private final Map<String, String> refused = new HashMap<>();
  private T value;

  Draft(String id, T value) {
    this.id = id;
    this.value = value;
  }

  T value() {
    return value;
  }

  /** The fields as they stand. */
  SheetState.Form form(String heading, List<FieldOf<T>> fields) {
    return new SheetState.Form(id, heading, fields.stream().map(this::typed).toList());
  }

  private SheetState.Field typed(FieldOf<T> field) {
    String text = refused.getOrDefault(field.id(), field.text().apply(value));
    return new SheetState.Field(
        field.id(), field.label(), field.input(), text, field.say(value, text));
  }

  private static <T> Optional<FieldOf<T>> field(List<FieldOf<T>> fields, At at) {
    return fields.stream().filter(f -> f.id().equals(at.field())).findFirst();
  }

  /** What a text would mean. */
  Said say(List<FieldOf<T>> fields, At at, String text) {
    return field(fields, at).map(f -> f.say(value, text)).orElse(Said.NOTHING);
  }

  /** Takes a text, or keeps it as it was typed. */
  void enter(List<FieldOf<T>> fields, At at, String text) {
    field(fields, at)
        .map(f -> f.enter().apply(value, text))
        .ifPresent(
            entry -> {
              if (entry instanceof Entry.Read<T> read) {
                value = read.value();
                refused.remove(at.field());
              } else {
                refused.put(at.field(), text);
              }
            });
  }

  /** Why the first text that was not taken was refused; absent when all were taken. */
  Optional<String> trouble(List<FieldOf<T>> fields) {
    return fields.stream()
        .filter(f -> refused.containsKey(f.id()))
        .map(f -> f.label() + ": " + f.say(value, refused.get(f.id())).words())
        .findFirst();
  }
}
