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
public final class Draft<T> {
  private final String id;
  private final Map<String, String> refused = new HashMap<>();
  private T value;

  public Draft(String id, T value) {
    this.id = id;
    this.value = value;
  }

  public T value() {
    return value;
  }

  /** Whether it is this value, and no text waits to be mended. */
  boolean isStill(T other) {
    return refused.isEmpty() && value.equals(other);
  }

  /** The fields as they stand. */
  public SheetState.Form form(String heading, List<FieldOf<T>> fields) {
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
  public Said say(List<FieldOf<T>> fields, At at, String text) {
    return field(fields, at).map(f -> f.say(value, text)).orElse(Said.NOTHING);
  }

  /** What the value would be with a text in a field; as it is where the text is refused. */
  public T trying(List<FieldOf<T>> fields, At at, String text) {
    return field(fields, at)
                .map(f -> f.enter().apply(value, text))
                .orElseGet(() -> new Entry.Empty<>())
            instanceof Entry.Read<T> read
        ? read.value()
        : value;
  }

  /** The texts of the fields as they stand, for a row of a grid. */
  public List<String> cells(List<FieldOf<T>> fields) {
    return fields.stream().map(f -> typed(f).text()).toList();
  }

  /** Takes a text, or keeps it as it was typed. */
  public void enter(List<FieldOf<T>> fields, At at, String text) {
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
  public Optional<String> trouble(List<FieldOf<T>> fields) {
    return fields.stream()
        .filter(f -> refused.containsKey(f.id()))
        .map(f -> f.label() + ": " + f.say(value, refused.get(f.id())).words())
        .findFirst();
  }
}
