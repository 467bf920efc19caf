package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.importOnly;
import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Trip;
import hullalmanac.core.record.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Rates, trips and expenses. */
final class BooksFiles {
  private static final int METRES_PER_KM = 1000;

  private BooksFiles() {}

  /** Kinds of step, joined by {@code |}. */
  static List<StepKind> steps(In in) {
    return in.list(
        "steps",
        t ->
            Coded.parse(StepKind.class, t)
                .orElseThrow(() -> new IllegalArgumentException("\"" + t + "\" is not a step")),
        "Write some of " + Coded.allCodes(StepKind.class) + ", joined by |");
  }

  static List<Tax> taxes(In in) {
    return in.maybeText("taxes")
        .flatMap(
            t -> in.maybe("taxes", x -> Tax.parse(t), "Write it as sales tax 7.25|county tax 1"))
        .orElse(List.of());
  }

  static CsvKind<Rate> rates(Currency currency) {
    return new CsvKind<>(
        "rates.csv",
        Kind.RATE,
        List.of(
            needText("id"),
            needText("service"),
            need("steps"),
            value("extent"),
            value("unit"),
            value("condition"),
            value("type"),
            value("from_m"),
            importOnly("from_ft"),
            value("below_m"),
            importOnly("below_ft"),
            need("low"),
            value("high"),
            text("note"))) {
      @Override
      List<Rate> rows(Almanac almanac, Keys keys) {
        return almanac.books().rates().stream().sorted(Comparator.comparing(Rate::key)).toList();
      }

      @Override
      void write(Rate r, Out out) {
        out.put("id", r.key())
            .put("service", r.service())
            .put("steps", List.copyOf(r.steps()))
            .put("extent", r.extent())
            .put("unit", r.unit())
            .put("condition", r.condition())
            .put("type", r.type())
            .put("from_m", r.from())
            .put("below_m", r.below())
            .put("low", r.low())
            .put("high", r.high())
            .put("note", r.note());
      }

      @Override
      Optional<Rate> read(In in) {
        return rate(in, currency);
      }
    };
  }

  private static Optional<Rate> rate(In in, Currency currency) {
    Id<Rate> id = in.ref(Kind.RATE, "id");
    List<StepKind> steps = steps(in);
    Extent extent = in.coded(Extent.class, "extent", Extent.WHOLE_BOAT);
    PriceUnit unit = in.coded(PriceUnit.class, "unit", PriceUnit.FOOT);
    Optional<Condition> condition = in.maybeCoded(Condition.class, "condition");
    Optional<BoatType> type = in.maybeCoded(BoatType.class, "type");
    Optional<Length> from = in.maybeLength("from");
    Optional<Length> below = in.maybeLength("below");
    Money low = MoneyFiles.needed(in, "low", currency);
    Money high = MoneyFiles.money(in, "high", currency).orElse(low);
    return in.made(
        () ->
            new Rate(
                id,
                in.key("id"),
                in.text("service"),
                new TreeSet<>(steps),
                extent,
                unit,
                condition,
                type,
                from,
                below,
                low,
                high,
                in.text("note")));
  }

  static final CsvKind<Trip> TRIPS =
      new CsvKind<>(
          "trips.csv",
          Kind.TRIP,
          List.of(
              needText("id"),
              need("day"),
              need("km"),
              value("minutes"),
              text("visit"),
              text("note"))) {
        @Override
        List<Trip> rows(Almanac almanac, Keys keys) {
          return almanac.books().trips().stream().sorted(Comparator.comparing(Trip::key)).toList();
        }

        @Override
        void write(Trip t, Out out) {
          out.put("id", t.key())
              .put("day", t.day())
              .put("km", BigDecimal.valueOf(t.metres(), 3))
              .put("minutes", t.minutes())
              .ref("visit", Kind.VISIT, t.visit())
              .put("note", t.note());
        }

        @Override
        Optional<Trip> read(In in) {
          Id<Trip> id = in.ref(Kind.TRIP, "id");
          LocalDate day = in.day("day");
          int metres = in.maybe("km", t -> metres(in, t), "Write it as 23.5").orElse(0);
          Optional<Integer> minutes = in.maybeWhole("minutes");
          Optional<Id<Visit>> visit = in.maybeRef(Kind.VISIT, "visit");
          return in.made(
              () -> new Trip(id, in.key("id"), day, metres, minutes, visit, in.text("note")));
        }
      };

  private static int metres(In in, String text) {
    try {
      return in.decimalOf(text).multiply(BigDecimal.valueOf(METRES_PER_KM)).intValueExact();
    } catch (ArithmeticException e) {
      throw new IllegalArgumentException(text + " is no way in km with up to three decimals", e);
    }
  }

  static CsvKind<Expense> expenses(Currency currency) {
    return new CsvKind<>(
        "expenses.csv",
        Kind.EXPENSE,
        List.of(
            needText("id"),
            need("day"),
            value("sort"),
            needText("what"),
            text("from"),
            need("amount"),
            value("tax"),
            text("visit"),
            text("note"))) {
      @Override
      List<Expense> rows(Almanac almanac, Keys keys) {
        return almanac.books().expenses().stream()
            .sorted(Comparator.comparing(Expense::key))
            .toList();
      }

      @Override
      void write(Expense e, Out out) {
        out.put("id", e.key())
            .put("day", e.day())
            .put("sort", e.sort())
            .put("what", e.what())
            .put("from", e.from())
            .put("amount", e.amount())
            .put("tax", e.tax())
            .ref("visit", Kind.VISIT, e.visit())
            .put("note", e.note());
      }

      @Override
      Optional<Expense> read(In in) {
        Id<Expense> id = in.ref(Kind.EXPENSE, "id");
        LocalDate day = in.day("day");
        Expense.Sort sort = in.coded(Expense.Sort.class, "sort", Expense.Sort.CONSUMABLES);
        Money amount = MoneyFiles.needed(in, "amount", currency);
        Optional<Money> tax = MoneyFiles.money(in, "tax", currency);
        Optional<Id<Visit>> visit = in.maybeRef(Kind.VISIT, "visit");
        return in.made(
            () ->
                new Expense(
                    id,
                    in.key("id"),
                    day,
                    sort,
                    in.text("what"),
                    in.text("from"),
                    amount,
                    tax,
                    visit,
                    in.text("note")));
      }
    };
  }
}
