package hullalmanac.present.reckoner;

import hullalmanac.present.sheet.SheetState.Answer;
import java.util.List;

/**
 * What came of a sum.
 *
 * @param answers as many at all times, without text where nothing came out
 * @param note what is still needed, or what else is to be known; blank when nothing is
 * @param rows of a table beside it; empty where there is none
 * @param cautions to be heeded at that work; at least that the label comes first where one works
 */
record Reckoned(List<Answer> answers, String note, List<List<String>> rows, List<String> cautions) {
  Reckoned {
    answers = List.copyOf(answers);
    rows = List.copyOf(rows);
    cautions = List.copyOf(cautions);
  }

  /** Nothing came out yet. */
  static Reckoned nothing(List<Answer> blank, String needs) {
    return new Reckoned(blank, needs, List.of(), List.of());
  }

  static Reckoned of(Answer... answers) {
    return new Reckoned(List.of(answers), "", List.of(), List.of());
  }

  Reckoned note(String words) {
    return new Reckoned(answers, words, rows, cautions);
  }

  Reckoned rows(List<List<String>> table) {
    return new Reckoned(answers, note, table, cautions);
  }

  Reckoned cautions(List<String> sentences) {
    return new Reckoned(answers, note, rows, sentences);
  }
}
