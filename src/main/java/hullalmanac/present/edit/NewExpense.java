package hullalmanac.present.edit;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.NewKeys;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * An expense that is being written down; public so that it can be copied with one component
 * changed. It is one once it says what was bought and how much was paid.
 */
public record NewExpense(
    Id<Expense> id,
    LocalDate day,
    Expense.Sort sort,
    String what,
    String from,
    Optional<Money> amount,
    Optional<Money> tax,
    Optional<Id<Visit>> visit,
    String note)
    implements NewRow.Begun {
  /** Refuses what an expense refuses, as far as it is written. */
  public NewExpense {
    if (amount.isPresent()) {
      String named = what.isBlank() ? "something" : what;
      note =
          new Expense(id, "expense", day, sort, named, from, amount.get(), tax, visit, note).note();
    }
  }

  static NewExpense begun(Id<Expense> id, LocalDate day) {
    return new NewExpense(
        id,
        day,
        Expense.Sort.CONSUMABLES,
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  @Override
  public String rowId() {
    return id.toString();
  }

  @Override
  public boolean isWhole() {
    return amount.isPresent() && !what.isBlank();
  }

  /** As a row of a record, under the key it has there already or a new one. */
  Expense in(Almanac almanac) {
    String key =
        almanac.books().expenses().stream()
            .filter(e -> e.id().equals(id))
            .map(Expense::key)
            .findFirst()
            .orElseGet(() -> new NewKeys(almanac).next(Kind.EXPENSE, "expense", day));
    return new Expense(id, key, day, sort, what, from, amount.orElseThrow(), tax, visit, note);
  }

  static List<FieldOf<NewExpense>> fields(FieldMaker make, List<FieldMaker.Named<Visit>> visits) {
    return List.of(
        make.day("day", "Day", NewExpense::day),
        make.choice("sort", "Sort", Expense.Sort.class, NewExpense::sort),
        make.line("what", "What", NewExpense::what),
        make.line("from", "Of whom", NewExpense::from),
        make.money("amount", "Paid", NewExpense::amount),
        make.money("tax", "Tax in it", NewExpense::tax),
        make.maybeOf("visit", "For the visit", visits, NewExpense::visit),
        make.line("note", "Note", NewExpense::note));
  }
}
