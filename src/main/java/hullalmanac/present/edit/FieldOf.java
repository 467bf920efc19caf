package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A field of a row: how it reads, and what the row becomes with another text in it.
 *
 * @param id unique among the fields of the row
 * @param text the field as text; empty when absent
 * @param enter the row with a text in the field; nothing typed is never {@link Entry.Empty} but
 *     either taken as absent or refused
 * @param <T> the row
 */
public record FieldOf<T>(
    String id,
    String label,
    Input input,
    Function<T, String> text,
    BiFunction<T, String, Entry<T>> enter) {
  /** The field on a form. */
  public SheetState.Field on(T row) {
    String now = text.apply(row);
    return new SheetState.Field(id, label, input, now, say(row, now));
  }

  /** The field as a column of a grid. */
  public SheetState.Column column() {
    return new SheetState.Column(id, label, input);
  }

  /** What a text in it would mean. */
  public Said say(T row, String typed) {
    Entry<T> entry = enter.apply(row, typed);
    if (entry instanceof Entry.Refused<T> refused) {
      String sentence = refused.sentence();
      return new Said(sentence.endsWith(".") ? sentence : sentence + ".", true);
    }
    return entry instanceof Entry.Read<T> read && !read.echo().equals(typed.strip())
        ? new Said(read.echo(), false)
        : Said.NOTHING;
  }
}
