package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Trip;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Ways driven and money spent, the newest first. */
public final class SpendingSheet extends FleetSheet {
  private static final int MOST_ROWS = 60;

  private static final String TRIPS = "trips";
  private static final String EXPENSES = "expenses";
  private final Rows<Trip> trips;
  private final Rows<Expense> expenses;
  private Optional<NewRow<NewTrip>> newTrip = Optional.empty();
  private Optional<NewRow<NewExpense>> newExpense = Optional.empty();

  /** Visits to choose from, made once for a record; also asked where the record is changed. */
  private volatile Optional<List<FieldMaker.Named<Visit>>> visits = Optional.empty();

  public SpendingSheet(Desk desk) {
    super(desk);
    trips =
        new Rows<>(
            Rows.Block.plain(
                TRIPS,
                "Trips",
                f -> newest(f.almanac().books().trips(), Trip::day, Trip::key),
                t -> "trip of " + t.day(),
                this::trip),
            desk);
    expenses =
        new Rows<>(
            Rows.Block.plain(
                EXPENSES,
                "Expenses",
                f -> newest(f.almanac().books().expenses(), Expense::day, Expense::key),
                Expense::what,
                this::expense),
            desk);
  }

  private static <T> List<T> newest(
      List<T> all, Function<T, LocalDate> day, Function<T, String> key) {
    return all.stream()
        .sorted(Comparator.comparing(day).reversed().thenComparing(key))
        .limit(MOST_ROWS)
        .toList();
  }

  private static FieldMaker make(Fleet fleet) {
    return new FieldMaker(fleet.almanac().business(), fleet.asOf());
  }

  private List<FieldOf<Trip>> trip(Fleet fleet) {
    FieldMaker make = make(fleet);
    return List.of(
        make.day("day", "Day", Trip::day),
        NewTrip.way(
            fleet.almanac().business(), t -> Optional.of(t.metres()), Optional::orElseThrow),
        make.maybeWhole("minutes", "Minutes", Trip::minutes),
        make.maybeOf("visit", "To the visit", visits(fleet), Trip::visit),
        make.line("note", "Where and what for", Trip::note));
  }

  private List<FieldOf<Expense>> expense(Fleet fleet) {
    FieldMaker make = make(fleet);
    return List.of(
        make.day("day", "Day", Expense::day),
        make.choice("sort", "Sort", Expense.Sort.class, Expense::sort),
        make.line("what", "What", Expense::what),
        make.line("from", "Of whom", Expense::from),
        make.price("amount", "Paid", Expense::amount),
        make.money("tax", "Tax in it", Expense::tax),
        make.maybeOf("visit", "For the visit", visits(fleet), Expense::visit),
        make.line("note", "Note", Expense::note));
  }

  private List<FieldMaker.Named<Visit>> visits(Fleet fleet) {
    List<FieldMaker.Named<Visit>> made = visits.orElseGet(() -> choices(fleet));
    visits = Optional.of(made);
    return made;
  }

  /** The newest visits, and those that are named already. */
  private static List<FieldMaker.Named<Visit>> choices(Fleet fleet) {
    Almanac almanac = fleet.almanac();
    Map<Object, String> boats =
        almanac.boats().stream().collect(Collectors.toMap(Boat::id, Boat::name));
    Set<Object> named =
        Stream.concat(
                almanac.books().trips().stream().flatMap(t -> t.visit().stream()),
                almanac.books().expenses().stream().flatMap(e -> e.visit().stream()))
            .collect(Collectors.toSet());
    Stream<Visit> newest =
        newest(
            almanac.visits().stream().filter(v -> !v.day().isAfter(fleet.asOf())).toList(),
            Visit::day,
            Visit::key)
            .stream();
    Stream<Visit> used = almanac.visits().stream().filter(v -> named.contains(v.id()));
    return Stream.concat(newest, used)
        .distinct()
        .map(v -> new FieldMaker.Named<>(v.id(), boats.get(v.boat()) + ", " + v.day()))
        .toList();
  }

  private List<FieldOf<NewTrip>> newTrip(Fleet fleet) {
    return NewTrip.fields(make(fleet), fleet.almanac().business(), visits(fleet));
  }

  private List<FieldOf<NewExpense>> newExpense(Fleet fleet) {
    return NewExpense.fields(make(fleet), visits(fleet));
  }

  @Override
  public void show(Fleet now) {
    visits = Optional.empty();
    newTrip = newTrip.filter(r -> r.waits(now.almanac().books().trips(), newTrip(now)));
    newExpense = newExpense.filter(r -> r.waits(now.almanac().books().expenses(), newExpense(now)));
    super.show(now);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(trips, expenses);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    int all = fleet.almanac().books().trips().size() + fleet.almanac().books().expenses().size();
    return new SheetState(
        "Trips and expenses",
        all > MOST_ROWS
            ? "The newest " + MOST_ROWS + " of each; the list for the accountant has all."
            : "What was driven and spent for the business.",
        List.of(
            beginning(
                trips.grid(fleet, "No trip is written down yet."),
                newTrip.map(r -> r.cells(newTrip(fleet)))),
            new SheetState.Buttons(List.of(new SheetState.Button("trip", "Add a trip", false))),
            beginning(
                expenses.grid(fleet, "No expense is written down yet."),
                newExpense.map(r -> r.cells(newExpense(fleet)))),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("expense", "Add an expense", false),
                    new SheetState.Button("accountant", "List for the accountant", false)))),
        Optional.empty());
  }

  /** A grid with a row that is begun in front. */
  private static SheetState.Grid beginning(SheetState.Grid grid, Optional<SheetState.GridRow> row) {
    List<SheetState.GridRow> others =
        grid.rows().stream().filter(r -> row.filter(n -> n.id().equals(r.id())).isEmpty()).toList();
    return new SheetState.Grid(
        grid.id(),
        grid.heading(),
        grid.labels(),
        grid.columns(),
        Stream.concat(row.stream(), others.stream()).toList(),
        grid.empty());
  }

  private boolean isNew(At at) {
    return newTrip.filter(r -> r.is(TRIPS, at)).isPresent()
        || newExpense.filter(r -> r.is(EXPENSES, at)).isPresent();
  }

  @Override
  public Said say(At at, String text) {
    if (!isNew(at) || fleet().isEmpty()) {
      return super.say(at, text);
    }
    Fleet now = fleet().get();
    return at.block().equals(TRIPS)
        ? newTrip.orElseThrow().draft().say(newTrip(now), at, text)
        : newExpense.orElseThrow().draft().say(newExpense(now), at, text);
  }

  @Override
  public void enter(At at, String text) {
    if (!isNew(at) || fleet().isEmpty()) {
      super.enter(at, text);
      return;
    }
    if (at.block().equals(TRIPS)) {
      enterTrip(fleet().get(), newTrip.orElseThrow(), at, text);
    } else {
      enterExpense(fleet().get(), newExpense.orElseThrow(), at, text);
    }
    publish();
  }

  private void enterTrip(Fleet now, NewRow<NewTrip> row, At at, String text) {
    row.draft().enter(newTrip(now), at, text);
    NewTrip said = row.draft().value();
    if (said.isWhole() && row.draft().trouble(newTrip(now)).isEmpty()) {
      desk.edit("a trip added", a -> Edit.put(said.in(a)));
    }
  }

  private void enterExpense(Fleet now, NewRow<NewExpense> row, At at, String text) {
    row.draft().enter(newExpense(now), at, text);
    NewExpense said = row.draft().value();
    if (said.isWhole() && row.draft().trouble(newExpense(now)).isEmpty()) {
      desk.edit("an expense added", a -> Edit.put(said.in(a)));
    }
  }

  @Override
  public void paste(At corner, List<List<String>> texts) {
    for (SheetState.Block block : state().blocks()) {
      if (block instanceof SheetState.Grid grid && grid.id().equals(corner.block())) {
        cells(grid, corner, texts).stream()
            .filter(c -> isNew(c.at()))
            .forEach(c -> enter(c.at(), c.text()));
      }
    }
    super.paste(corner, texts);
  }

  @Override
  public void remove(String block, String row) {
    newTrip = newTrip.filter(r -> !r.is(block, row, TRIPS));
    newExpense = newExpense.filter(r -> !r.is(block, row, EXPENSES));
    publish();
    fleet()
        .flatMap(
            f ->
                Stream.<Row>concat(
                        f.almanac().books().trips().stream(),
                        f.almanac().books().expenses().stream())
                    .filter(r -> block.equals(Kind.of(r).code()) && r.id().toString().equals(row))
                    .findFirst())
        .ifPresent(
            r -> desk.change(Kind.of(r).one() + " removed", almanac -> Removal.of(almanac, r)));
  }

  @Override
  public void press(String button) {
    fleet().ifPresent(f -> press(button, f.asOf()));
  }

  private void press(String button, LocalDate today) {
    switch (button) {
      case "trip" -> {
        newTrip =
            newTrip.or(
                () -> Optional.of(NewRow.of(TRIPS, NewTrip.begun(desk.ids().next(), today))));
        publish();
      }
      case "expense" -> {
        newExpense =
            newExpense.or(
                () -> Optional.of(NewRow.of(EXPENSES, NewExpense.begun(desk.ids().next(), today))));
        publish();
      }
      default -> desk.open(new AccountantSheet(desk));
    }
  }

  @Override
  public Topic topic() {
    return Topic.SPENDING;
  }
}
