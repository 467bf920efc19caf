package hullalmanac.present.words;

import java.util.List;

/** Numbers as running text writes them. */
public final class NumberWords {
  private static final List<String> SMALL =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private NumberWords() {}

  /** A count up to twelve in words, in figures above. */
  public static String small(int count) {
    return count >= 0 && count < SMALL.size() ? SMALL.get(count) : String.valueOf(count);
  }
}
