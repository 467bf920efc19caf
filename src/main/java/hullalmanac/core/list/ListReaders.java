package hullalmanac.core.list;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.Business.DayOrder;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.ListField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What reads the cells of a list, each column in its own way. */
final class ListReaders {
  private final LocalDate today;
  private final KnownNames known;
  private final boolean berths;
  private final Map<Integer, ListDays> days = new HashMap<>();
  private final Map<Integer, ListLengths> lengths = new HashMap<>();
  private final List<Question> questions = new ArrayList<>();

  ListReaders(
      ListTable table,
      List<ListColumn> columns,
      KnownNames known,
      Business business,
      LocalDate today,
      ListChoices choices) {
    this.today = today;
    this.known = known;
    this.berths = columns.stream().anyMatch(c -> c.field() == ListField.BERTH);
    for (ListColumn column : columns) {
      List<Cell> cells = table.column(column.index());
      if (column.field() == ListField.LAST_VISIT) {
        days.put(column.index(), days(column, cells, business, choices));
      } else if (column.field().isLength() || column.field().isBeam()) {
        lengths.put(column.index(), ListLengths.of(column.field(), cells, business.units()));
      }
    }
  }

  private ListDays days(
      ListColumn column, List<Cell> cells, Business business, ListChoices choices) {
    ListDays found = ListDays.of(cells, today, business.dayOrder());
    if (!ListDays.isOpen(cells)) {
      return found;
    }
    DayOrder first = business.dayOrder();
    DayOrder second = first == DayOrder.DAY_FIRST ? DayOrder.MONTH_FIRST : DayOrder.DAY_FIRST;
    Question question =
        Question.of(
            "days " + column.index(),
            "Days of " + column.label(),
            "No date of this column says whether the day or the month stands first.",
            List.of(first.words(), second.words()),
            choices);
    questions.add(question);
    return new ListDays(today, Coded.parse(DayOrder.class, question.chosen()).orElse(first), false);
  }

  LocalDate today() {
    return today;
  }

  KnownNames known() {
    return known;
  }

  /** Whether the list has a column of berth numbers. */
  boolean hasBerths() {
    return berths;
  }

  ListDays days(ListColumn column) {
    return days.get(column.index());
  }

  ListLengths length(ListColumn column) {
    return lengths.get(column.index());
  }

  List<Question> questions() {
    return List.copyOf(questions);
  }
}
