package hullalmanac.core.find;

import java.util.List;

/**
 * One thing that can be found.
 *
 * @param hit how it is shown; the words of its detail help to find it but do not find it alone
 * @param named whether its title is a name, which counts for more than words in a text
 * @param gone whether it is, or belongs to, a boat that is no longer looked after
 * @param day its day since 1970, 0 for what has none: of equals the newer comes first
 * @param more texts of its own besides the title
 * @param numbers what of it is found by any piece: hull numbers, digits of phones
 */
record Entry(
    Hit hit, boolean named, boolean gone, long day, List<String> more, List<String> numbers) {
  Entry {
    more = more.stream().filter(t -> !t.isBlank()).toList();
    numbers = numbers.stream().filter(t -> !t.isBlank()).toList();
  }

  /** Whether its name is a number or code, which is looked for whatever blanks are in it. */
  boolean coded() {
    return switch (hit.kind()) {
      case HULL_NUMBER, BATCH, COAT, INVOICE -> true;
      default -> false;
    };
  }
}
