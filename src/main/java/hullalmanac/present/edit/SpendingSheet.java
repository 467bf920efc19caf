package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Trip;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.NewKeys;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Ways driven and money spent, the newest first. */
public final class SpendingSheet extends FleetSheet {
  private static final int MOST_ROWS = 60;

  /** A mile is 1609.344 m exactly (international yard and pound agreement, 1959). */
  private static final BigDecimal METRES_PER_MILE = new BigDecimal("1609.344");

  private final Rows<Trip> trips;
  private final Rows<Expense> expenses;

  public SpendingSheet(Desk desk) {
    super(desk);
    trips =
        new Rows<>(
            Rows.Block.plain(
                "trips",
                "Trips",
                f -> newest(f.almanac().books().trips(), Trip::day, Trip::key),
                t -> "trip of " + t.day(),
                SpendingSheet::trip),
            desk);
    expenses =
        new Rows<>(
            Rows.Block.plain(
                "expenses",
                "Expenses",
                f -> newest(f.almanac().books().expenses(), Expense::day, Expense::key),
                Expense::what,
                SpendingSheet::expense),
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

  private static List<FieldOf<Trip>> trip(Fleet fleet) {
    FieldMaker make = make(fleet);
    return List.of(
        make.day("day", "Day", Trip::day),
        way(fleet.almanac().business()),
        make.maybeWhole("minutes", "Minutes", Trip::minutes),
        make.maybeOf("visit", "To the visit", visits(fleet), Trip::visit),
        make.line("note", "Where and what for", Trip::note));
  }

  private static List<FieldOf<Expense>> expense(Fleet fleet) {
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

  private static FieldOf<Trip> way(Business business) {
    boolean miles = business.units() == Business.Units.FEET;
    BigDecimal unit = miles ? METRES_PER_MILE : BigDecimal.valueOf(1000);
    return new FieldOf<>(
        "metres",
        miles ? "Miles" : "Kilometres",
        new Input.Line(""),
        t ->
            BigDecimal.valueOf(t.metres())
                .divide(unit, 1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString(),
        (t, typed) -> {
          Entry<BigDecimal> read = NumberEntry.read(typed);
          if (read instanceof Entry.Read<BigDecimal> number) {
            BigDecimal metres = number.value().multiply(unit).setScale(0, RoundingMode.HALF_UP);
            return FieldMaker.set(
                t,
                "metres",
                metres.min(BigDecimal.valueOf(Integer.MAX_VALUE)).max(BigDecimal.ZERO).intValue(),
                "");
          }
          return new Entry.Refused<>(
              read instanceof Entry.Refused<BigDecimal> refused
                  ? refused.sentence()
                  : "A number is needed here, such as 12.");
        });
  }

  /** The newest visits, and those that are named already. */
  private static List<FieldMaker.Named<Visit>> visits(Fleet fleet) {
    Almanac almanac = fleet.almanac();
    Map<Object, String> boats =
        almanac.boats().stream().collect(Collectors.toMap(Boat::id, Boat::name));
    List<Object> named =
        Stream.concat(
                almanac.books().trips().stream().flatMap(t -> t.visit().stream()),
                almanac.books().expenses().stream().flatMap(e -> e.visit().stream()))
            .<Object>map(v -> v)
            .toList();
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
            trips.grid(fleet, "No trip is written down yet."),
            new SheetState.Buttons(List.of(new SheetState.Button("trip", "Add a trip", false))),
            expenses.grid(fleet, "No expense is written down yet."),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("expense", "Add an expense", false),
                    new SheetState.Button("accountant", "List for the accountant", false)))),
        Optional.empty());
  }

  @Override
  public void remove(String block, String row) {
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
      case "trip" -> desk.edit("a trip added", a -> Edit.put(newTrip(a, today)));
      case "expense" -> desk.edit("an expense added", a -> Edit.put(newExpense(a, today)));
      default -> desk.open(new AccountantSheet(desk));
    }
  }

  private Trip newTrip(Almanac almanac, LocalDate today) {
    int unit =
        almanac.business().units() == Business.Units.FEET ? METRES_PER_MILE.intValue() : 1000;
    return new Trip(
        desk.ids().next(),
        new NewKeys(almanac).next(Kind.TRIP, "trip", today),
        today,
        unit,
        Optional.empty(),
        Optional.empty(),
        "");
  }

  private Expense newExpense(Almanac almanac, LocalDate today) {
    return new Expense(
        desk.ids().next(),
        new NewKeys(almanac).next(Kind.EXPENSE, "expense", today),
        today,
        Expense.Sort.CONSUMABLES,
        "…",
        "",
        Money.of(BigDecimal.ONE, almanac.business().currency()),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  @Override
  public Topic topic() {
    return Topic.SPENDING;
  }
}
