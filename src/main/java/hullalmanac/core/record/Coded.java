package hullalmanac.core.record;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A closed choice with the one word that names it in tables and files, and the words shown to
 * people.
 */
public interface Coded {
  /** The word in tables and files: lower case, words joined by hyphens. */
  String code();

  /** The words on screen and paper: the code with spaces, unless a choice says otherwise. */
  default String words() {
    return code().replace('-', ' ');
  }

  /** Returns the choice with this code, or nothing; case and blanks around it do not matter. */
  static <E extends Enum<E> & Coded> Optional<E> parse(Class<E> type, String code) {
    String wanted =
        code.strip().toLowerCase(java.util.Locale.ROOT).replace(' ', '-').replace('_', '-');
    return Arrays.stream(type.getEnumConstants()).filter(e -> e.code().equals(wanted)).findFirst();
  }

  /** Returns all codes of a choice in order, for a message that says what may be written. */
  static <E extends Enum<E> & Coded> String allCodes(Class<E> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(Coded::code)
        .collect(Collectors.joining(", "));
  }
}
