package hullalmanac.core.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Words in order, each with the entries that have it. All entries of the words with one beginning
 * lie in a row, so that two binary searches find them.
 */
final class WordTable {
  /** Stands after every letter, and is none. */
  private static final char LAST = '\uffff';

  private final String[] words;

  /** Where the entries of a word begin; one more at the end. */
  private final int[] starts;

  private final int[] entries;

  private WordTable(String[] words, int[] starts, int[] entries) {
    this.words = words;
    this.starts = starts;
    this.entries = entries;
  }

  /** Collects words, then makes the table. */
  static final class Draft {
    private final Map<String, List<Integer>> found = new HashMap<>();
    private int count;

    void add(String word, int entry) {
      List<Integer> at = found.computeIfAbsent(word, w -> new ArrayList<>(1));
      if (at.isEmpty() || at.get(at.size() - 1) != entry) {
        at.add(entry);
        count++;
      }
    }

    WordTable table() {
      String[] words = found.keySet().toArray(String[]::new);
      Arrays.sort(words);
      int[] starts = new int[words.length + 1];
      int[] entries = new int[count];
      int next = 0;
      for (int w = 0; w < words.length; w++) {
        starts[w] = next;
        for (int entry : found.get(words[w])) {
          entries[next++] = entry;
        }
      }
      starts[words.length] = next;
      return new WordTable(words, starts, entries);
    }
  }

  /** Marks the entries that have a word with this beginning. */
  void begins(String beginning, BitSet marked) {
    mark(place(beginning), place(beginning + LAST), marked);
  }

  /** Marks the entries that have this very word. */
  void is(String word, BitSet marked) {
    int at = Arrays.binarySearch(words, word);
    if (at >= 0) {
      mark(at, at + 1, marked);
    }
  }

  private void mark(int from, int to, BitSet marked) {
    for (int i = starts[from]; i < starts[to]; i++) {
      marked.set(entries[i]);
    }
  }

  /** The place of the first word that is not before this one. */
  private int place(String word) {
    int at = Arrays.binarySearch(words, word);
    return at >= 0 ? at : -at - 1;
  }
}
