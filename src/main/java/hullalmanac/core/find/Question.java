package hullalmanac.core.find;

import java.util.ArrayList;
import java.util.List;

/**
 * What is typed to find something.
 *
 * @param words its words, folded
 */
record Question(List<String> words) {
  /** Shortest piece of a number that is looked for inside it, not only at its beginning. */
  static final int SHORTEST_INSIDE = 3;

  static Question of(String text) {
    return new Question(Folding.words(text));
  }

  /**
   * The pieces of hull and phone numbers that a word may be part of: itself, all that was typed in
   * one, and for a group of digits all the groups around it in one, also without the zeros that are
   * only dialled at home or abroad.
   */
  List<String> insides(int word) {
    List<String> pieces = new ArrayList<>(List.of(words.get(word), solid()));
    if (digits(word)) {
      String run = run(word);
      pieces.add(run);
      pieces.add(run.replaceFirst("^0{1,2}", ""));
    }
    pieces.removeIf(p -> p.length() < SHORTEST_INSIDE);
    return pieces.stream().distinct().toList();
  }

  /** All that was typed as one word. */
  String solid() {
    return String.join("", words);
  }

  private String run(int word) {
    int first = word;
    while (first > 0 && digits(first - 1)) {
      first--;
    }
    int end = word + 1;
    while (end < words.size() && digits(end)) {
      end++;
    }
    return String.join("", words.subList(first, end));
  }

  private boolean digits(int word) {
    return words.get(word).chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
