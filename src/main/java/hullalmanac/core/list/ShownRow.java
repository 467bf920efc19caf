package hullalmanac.core.list;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A row of a list as it is shown before it comes in.
 *
 * @param row from 0
 * @param comesIn what comes in of it: {@code yes}, {@code no}, or how many boats
 * @param texts what each cell was read as; where it was not, what stands there
 * @param marked columns with a sentence about their cell
 */
public record ShownRow(int row, String comesIn, List<String> texts, Set<Integer> marked) {
  /** It comes in. */
  public static final String YES = "yes";

  /** It does not. */
  public static final String NO = "no";

  public ShownRow {
    texts = List.copyOf(texts);
    marked = Set.copyOf(marked);
  }

  /** It comes in as a note with the row above. */
  public static final String ABOVE = "with the row above";

  static ShownRow of(
      int row, List<Line> lines, List<Mark> marks, List<Cell> cells, ListChoices choices) {
    boolean leftOut = choices.says(Lines.rowId(row), Lines.LEFT_OUT);
    List<String> texts =
        IntStream.range(0, cells.size())
            .mapToObj(
                c ->
                    lines.size() == 1
                        ? lines.get(0).shown().getOrDefault(c, cells.get(c).text())
                        : cells.get(c).text())
            .map(t -> t.replaceAll("\\s*\\R\\s*", " / "))
            .toList();
    Set<Integer> marked = marks.stream().map(Mark::column).collect(Collectors.toSet());
    String comesIn =
        leftOut || (lines.isEmpty() && marks.isEmpty())
            ? NO
            : switch (lines.size()) {
              case 0 -> ABOVE;
              case 1 -> YES;
              default -> lines.size() + " boats";
            };
    return new ShownRow(row, comesIn, texts, marked);
  }
}
