package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import hullalmanac.core.record.Business.DayOrder;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * What stands in a column.
 *
 * @param cells those that say something
 */
record ColumnContent(List<Cell> cells) {
  private static final double MOST = 0.6;
  private static final LocalDate SOME_DAY = LocalDate.of(2199, 12, 31);

  int size() {
    return cells.size();
  }

  /** Share of the cells that are so, 0 to 1; 0 where there are none. */
  double share(Predicate<Cell> so) {
    return cells.isEmpty() ? 0 : (double) cells.stream().filter(so).count() / cells.size();
  }

  boolean mostly(Predicate<Cell> so) {
    return share(so) >= MOST;
  }

  /** Share of different texts, 0 to 1. */
  double different() {
    return cells.isEmpty()
        ? 0
        : (double) cells.stream().map(c -> Folding.name(c.text())).distinct().count()
            / cells.size();
  }

  /** Whether it numbers the rows. */
  boolean counts() {
    return cells.size() > 1
        && IntStream.range(0, cells.size())
            .allMatch(i -> cells.get(i).text().matches("0*" + (i + 1) + "[.)]?"));
  }

  /** Numbers of it that have no unit with them, in order of size. */
  List<Double> bareNumbers() {
    return cells.stream()
        .map(Cell::text)
        .filter(Shape::isNumber)
        .map(t -> Double.parseDouble(t.replace(',', '.')))
        .sorted()
        .toList();
  }

  static boolean isPhone(Cell cell) {
    return cell.kind() != Cell.Kind.DAY && Shape.isPhone(cell.text());
  }

  static boolean isMail(Cell cell) {
    return cell.text().indexOf('@') > 0;
  }

  static boolean isDay(Cell cell) {
    return cell.kind() == Cell.Kind.DAY
        || Shape.isDate(cell.text())
        || new ListDays(SOME_DAY, DayOrder.DAY_FIRST, false).read(cell).value().isPresent();
  }

  static boolean isLength(Cell cell) {
    return Shape.isLength(cell.text()) || Shape.isNumber(cell.text());
  }

  static boolean isYear(Cell cell) {
    return cell.text().matches("(18|19|20)\\d\\d");
  }

  /** Whether a text has about the form of a hull number. */
  static boolean isHullNumber(Cell cell) {
    return Arrays.stream(cell.text().split("[/;,+&\\n]"))
        .map(part -> part.replaceAll("[\\s-]", ""))
        .allMatch(
            solid ->
                solid.matches("[A-Za-z0-9]{10,16}")
                    && solid.matches(".*[A-Za-z].*")
                    && solid.matches(".*\\d.*"));
  }

  /** Whether a text can be a name. */
  static boolean isName(Cell cell) {
    String text = cell.text();
    return text.length() <= 40
        && Shape.hasLetter(text)
        && !Shape.isData(cell)
        && Folding.words(text).size() <= 6;
  }
}
