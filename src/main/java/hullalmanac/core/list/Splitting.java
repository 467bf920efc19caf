package hullalmanac.core.list;

import hullalmanac.core.record.ListField;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Parts a row that may speak of several boats. It is parted without asking only where lengths,
 * beams, hull numbers or years stand there as often as names; otherwise a person is asked.
 *
 * @param parts cells of each boat; one where the row speaks of one boat
 * @param undealt columns of which it is not said to which of the boats they belong
 * @param question to be asked, if it is
 */
record Splitting(List<List<Cell>> parts, Set<Integer> undealt, Optional<Question> question) {
  private static final Pattern BETWEEN_NAMES =
      Pattern.compile("\\s*(?:\\R|;|/|\\+|,|\\s&\\s|\\s(?i:and|und|et)\\s)\\s*");
  private static final Pattern BETWEEN_VALUES =
      Pattern.compile("\\s*(?:\\R|;|/|\\+|,\\s|\\s&\\s|\\s(?i:and|und|et)\\s)\\s*");
  private static final Pattern PREFIX = Pattern.compile("(?i)\\b([smr])/([yvt])\\b");
  private static final String MASK = "\uE000";
  private static final int MOST = 4;

  /** Values of which each boat has her own; such a column says how many boats there are. */
  private static final Set<ListField> COUNTING =
      EnumSet.of(
          ListField.LENGTH_FEET,
          ListField.LENGTH_METRES,
          ListField.LENGTH_CENTIMETRES,
          ListField.BEAM_FEET,
          ListField.BEAM_METRES,
          ListField.BEAM_CENTIMETRES,
          ListField.HULL_NUMBER,
          ListField.BUILT);

  private static final Set<ListField> HERS =
      EnumSet.of(
          ListField.TYPE, ListField.MAKE, ListField.MATERIAL, ListField.COLOUR, ListField.BERTH);

  /** Parts one row. */
  static Splitting of(
      int row, List<Cell> cells, List<ListColumn> columns, KnownNames known, ListChoices choices) {
    Optional<ListColumn> boat =
        columns.stream().filter(c -> c.field() == ListField.BOAT).findFirst();
    List<String> names =
        boat.map(b -> parts(cells.get(b.index()).text(), BETWEEN_NAMES)).orElse(List.of());
    boolean several =
        names.size() > 1
            && names.size() <= MOST
            && names.stream().allMatch(Shape::hasLetter)
            && !known.boat(cells.get(boat.orElseThrow().index()).text());
    if (!several) {
      return whole(cells, Optional.empty());
    }
    boolean certain =
        columns.stream()
            .filter(c -> COUNTING.contains(c.field()))
            .map(c -> parts(cells.get(c.index()).text(), BETWEEN_VALUES))
            .anyMatch(
                values ->
                    values.size() == names.size()
                        && values.stream().allMatch(v -> v.matches("(?s).*\\d.*")));
    if (certain) {
      return dealt(cells, columns, boat.orElseThrow().index(), names, Optional.empty());
    }
    String all = names.size() + " boats";
    Question question =
        Question.of(
            "split " + row,
            "Row "
                + (row + 1)
                + ": “"
                + cells.get(boat.orElseThrow().index()).text().replaceAll("\\R", " / ")
                + "”",
            "It may be one boat or several.",
            List.of(Question.ONE, all),
            choices);
    return question.chosen().equals(all)
        ? dealt(cells, columns, boat.orElseThrow().index(), names, Optional.of(question))
        : whole(cells, Optional.of(question));
  }

  private static Splitting whole(List<Cell> cells, Optional<Question> question) {
    return new Splitting(List.of(cells), Set.of(), question);
  }

  private static List<String> parts(String text, Pattern between) {
    String masked = PREFIX.matcher(text).replaceAll("$1" + MASK + "$2");
    return Arrays.stream(between.split(masked))
        .map(p -> p.replace(MASK, "/").strip())
        .filter(p -> !p.isEmpty())
        .toList();
  }

  private static Splitting dealt(
      List<Cell> cells,
      List<ListColumn> columns,
      int boat,
      List<String> names,
      Optional<Question> question) {
    Set<Integer> undealt = new HashSet<>();
    List<List<Cell>> parts = new ArrayList<>();
    for (int p = 0; p < names.size(); p++) {
      List<Cell> part = new ArrayList<>(cells);
      part.set(boat, Cell.of(names.get(p)));
      for (ListColumn column : columns) {
        Cell cell = cells.get(column.index());
        boolean counting = COUNTING.contains(column.field());
        List<String> values = parts(cell.text(), BETWEEN_VALUES);
        if ((counting || HERS.contains(column.field())) && values.size() == names.size()) {
          part.set(column.index(), new Cell(values.get(p), cell.kind(), false));
        } else if (counting && !cell.isBlank()) {
          undealt.add(column.index());
        }
      }
      parts.add(part);
    }
    return new Splitting(parts, undealt, question);
  }
}
