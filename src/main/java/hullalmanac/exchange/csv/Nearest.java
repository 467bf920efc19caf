package hullalmanac.exchange.csv;

import java.util.Collection;
import java.util.Optional;

/** Finds the word that was probably meant. */
final class Nearest {
  private Nearest() {}

  /** The candidate with the fewest letters to change, if fewer than half of them. */
  static Optional<String> of(String word, Collection<String> candidates) {
    String best = null;
    int least = Math.max(1, word.length() / 2) + 1;
    for (String candidate : candidates) {
      int distance = distance(word, candidate);
      if (distance < least
          || (distance == least && best != null && candidate.compareTo(best) < 0)) {
        least = distance;
        best = candidate;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Letters to insert, delete or replace (V. Levenshtein, 1966). */
  private static int distance(String a, String b) {
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[b.length()];
  }
}
