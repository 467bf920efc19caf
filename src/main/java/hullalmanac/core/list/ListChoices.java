package hullalmanac.core.list;

import hullalmanac.core.record.ListField;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a person says of a list before it is brought in.
 *
 * @param headingRow number of the row in which the headings are, from 1; 0 for none; absent: as
 *     found
 * @param fields what columns are, by their index; the others are as guessed
 * @param typed texts that take the place of those in some cells
 * @param answers to questions, by their ids
 */
public record ListChoices(
    Optional<Integer> headingRow,
    Map<Integer, ListField> fields,
    Map<Spot, String> typed,
    Map<String, String> answers) {
  /** Nothing was said. */
  public static final ListChoices NONE =
      new ListChoices(Optional.empty(), Map.of(), Map.of(), Map.of());

  public ListChoices {
    fields = Map.copyOf(fields);
    typed = Map.copyOf(typed);
    answers = Map.copyOf(answers);
  }

  /** A cell by the indexes of its row and column, from 0. */
  public record Spot(int row, int column) {}

  /** The same with the row of headings; what was said of columns is then forgotten. */
  public ListChoices headingRow(int row) {
    return new ListChoices(Optional.of(row), Map.of(), typed, answers);
  }

  /** The same with what a column is. */
  public ListChoices field(int column, ListField field) {
    Map<Integer, ListField> more = new HashMap<>(fields);
    more.put(column, field);
    return new ListChoices(headingRow, more, typed, answers);
  }

  /** The same with another text in a cell. */
  public ListChoices typed(int row, int column, String text) {
    Map<Spot, String> more = new HashMap<>(typed);
    more.put(new Spot(row, column), text);
    return new ListChoices(headingRow, fields, more, answers);
  }

  /** The same with an answer. */
  public ListChoices answer(String id, String answer) {
    Map<String, String> more = new HashMap<>(answers);
    more.put(id, answer);
    return new ListChoices(headingRow, fields, typed, more);
  }

  /** The same with a row that comes in or is left out. */
  public ListChoices comesIn(int row, boolean yes) {
    return answer(Lines.rowId(row), yes ? ShownRow.YES : Lines.LEFT_OUT);
  }

  Optional<String> answer(String id) {
    return Optional.ofNullable(answers.get(id));
  }

  boolean says(String id, String answer) {
    return answer(id).equals(Optional.of(answer));
  }
}
