package hullalmanac.core.list;

import java.util.Optional;

/**
 * What came of reading a cell.
 *
 * @param value absent when it could not be taken: its text then goes into a note
 * @param shown the value as the program writes it, or the text as it stands
 * @param said a sentence about it, when it was not taken or needs a look
 * @param <T> what was asked for
 */
record Understood<T>(Optional<T> value, String shown, Optional<String> said) {
  static <T> Understood<T> taken(T value, String shown) {
    return new Understood<>(Optional.of(value), shown, Optional.empty());
  }

  static <T> Understood<T> doubted(T value, String shown, String said) {
    return new Understood<>(Optional.of(value), shown, Optional.of(said));
  }

  static <T> Understood<T> refused(Cell cell, String said) {
    return new Understood<>(Optional.empty(), cell.text(), Optional.of(said));
  }
}
