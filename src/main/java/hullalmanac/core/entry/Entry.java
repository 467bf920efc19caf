package hullalmanac.core.entry;

import java.util.function.Function;

/**
 * What came of reading a text that a person typed. A text that cannot be read is expected, so it is
 * a value and never an exception.
 *
 * @param <T> what was asked for
 */
public sealed interface Entry<T> {
  /**
   * The text was understood.
   *
   * @param echo the value as the program writes it, to be shown beside the field
   */
  record Read<T>(T value, String echo) implements Entry<T> {}

  /** Nothing was typed but blanks. */
  record Empty<T>() implements Entry<T> {}

  /**
   * The text was not understood, or could mean two things.
   *
   * @param sentence what is wrong and what can be written instead, for people
   */
  record Refused<T>(String sentence) implements Entry<T> {}

  /** The same with another value, where one was read. */
  default <R> Entry<R> map(Function<T, R> to) {
    if (this instanceof Read<T> read) {
      return new Read<>(to.apply(read.value()), read.echo());
    }
    return this instanceof Refused<T> refused ? new Refused<>(refused.sentence()) : new Empty<>();
  }
}
