package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Numbers;
import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * Care plans. Their prices are in the currency of the business, so they are read once that is
 * known.
 */
final class PlanFiles {
  private PlanFiles() {}

  static CsvKind<CarePlan> carePlans(Currency currency) {
    return new CsvKind<>(
        "care-plans.csv",
        Kind.CARE_PLAN,
        List.of(
            needText("id"),
            needText("boat"),
            needText("work"),
            need("every_weeks"),
            value("months"),
            value("price"),
            need("from"),
            value("until"),
            value("skips"))) {
      @Override
      List<CarePlan> rows(Almanac almanac, Keys keys) {
        return almanac.carePlans().stream().sorted(Comparator.comparing(CarePlan::key)).toList();
      }

      @Override
      void write(CarePlan p, Out out) {
        out.put("id", p.key())
            .ref("boat", Kind.BOAT, p.boat())
            .put("work", p.work())
            .put("every_weeks", p.everyWeeks())
            .put("months", p.months().stream().map(Month::getValue).toList())
            .put("price", p.price())
            .put("from", p.from())
            .put("until", p.until())
            .put("skips", p.skips());
      }

      @Override
      Optional<CarePlan> read(In in) {
        Id<CarePlan> id = in.ref(Kind.CARE_PLAN, "id");
        Id<Boat> boat = in.ref(Kind.BOAT, "boat");
        int weeks = in.maybeWhole("every_weeks").orElse(1);
        List<Month> months =
            in.list("months", PlanFiles::month, "Write the numbers of months, such as 5|6|7");
        Optional<Money> price = MoneyFiles.money(in, "price", currency);
        LocalDate from = in.day("from");
        Optional<LocalDate> until = in.maybeDay("until");
        List<LocalDate> skips = in.list("skips", In::dayOf, "Write days as 2026-05-01|2026-06-01");
        List<Month> all = months.isEmpty() ? List.of(Month.values()) : months;
        return in.made(
            () ->
                new CarePlan(
                    id,
                    in.key("id"),
                    boat,
                    in.text("work"),
                    weeks,
                    all,
                    price,
                    from,
                    until,
                    skips));
      }
    };
  }

  private static Month month(String text) {
    int month = Numbers.whole(text);
    if (month < 1 || month > 12) {
      throw new IllegalArgumentException("there is no month " + text);
    }
    return Month.of(month);
  }
}
