package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Trip;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.NewKeys;
import hullalmanac.present.sheet.Input;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A trip that is being written down; public so that it can be copied with one component changed.
 *
 * @param metres there and back; one is a trip once it says how far it was
 */
public record NewTrip(
    Id<Trip> id,
    LocalDate day,
    Optional<Integer> metres,
    Optional<Integer> minutes,
    Optional<Id<Visit>> visit,
    String note)
    implements NewRow.Begun {
  /** A mile is 1609.344 m exactly (international yard and pound agreement, 1959). */
  private static final BigDecimal METRES_PER_MILE = new BigDecimal("1609.344");

  /** Refuses what a trip refuses. */
  public NewTrip {
    note = new Trip(id, "trip", day, metres.orElse(1), minutes, visit, note).note();
  }

  static NewTrip begun(Id<Trip> id, LocalDate day) {
    return new NewTrip(id, day, Optional.empty(), Optional.empty(), Optional.empty(), "");
  }

  @Override
  public String rowId() {
    return id.toString();
  }

  @Override
  public boolean isWhole() {
    return metres.isPresent();
  }

  /** As a row of a record, under the key it has there already or a new one. */
  Trip in(Almanac almanac) {
    String key =
        almanac.books().trips().stream()
            .filter(t -> t.id().equals(id))
            .map(Trip::key)
            .findFirst()
            .orElseGet(() -> new NewKeys(almanac).next(Kind.TRIP, "trip", day));
    return new Trip(id, key, day, metres.orElseThrow(), minutes, visit, note);
  }

  static List<FieldOf<NewTrip>> fields(
      FieldMaker make, Business business, List<FieldMaker.Named<Visit>> visits) {
    return List.of(
        make.day("day", "Day", NewTrip::day),
        way(business, NewTrip::metres, m -> m),
        make.maybeWhole("minutes", "Minutes", NewTrip::minutes),
        make.maybeOf("visit", "To the visit", visits, NewTrip::visit),
        make.line("note", "Where and what for", NewTrip::note));
  }

  /**
   * How far it was, in miles or kilometres. The text is rounded to a tenth; the way behind it is
   * not, and stays where the text does.
   *
   * @param value what a number of metres is as the component of a row
   */
  static <T extends Record> FieldOf<T> way(
      Business business,
      Function<T, Optional<Integer>> get,
      Function<Optional<Integer>, Object> value) {
    boolean miles = business.units() == Business.Units.FEET;
    BigDecimal unit = miles ? METRES_PER_MILE : BigDecimal.valueOf(1000);
    Function<T, String> text = row -> get.apply(row).map(m -> rounded(m, unit)).orElse("");
    return new FieldOf<>(
        "metres",
        miles ? "Miles" : "Kilometres",
        new Input.Line(""),
        text,
        (row, typed) -> {
          if (!typed.isBlank() && text.apply(row).equals(typed.strip())) {
            return new Entry.Read<>(row, "");
          }
          Entry<BigDecimal> read = NumberEntry.read(typed);
          if (read instanceof Entry.Read<BigDecimal> number) {
            BigDecimal metres = number.value().multiply(unit).setScale(0, RoundingMode.HALF_UP);
            int whole =
                metres
                    .min(BigDecimal.valueOf(Integer.MAX_VALUE))
                    .max(BigDecimal.ZERO)
                    .intValueExact();
            return FieldMaker.set(row, "metres", value.apply(Optional.of(whole)), "");
          }
          return new Entry.Refused<>(
              read instanceof Entry.Refused<BigDecimal> refused
                  ? refused.sentence()
                  : "A number is needed here, such as 12.");
        });
  }

  private static String rounded(int metres, BigDecimal unit) {
    return BigDecimal.valueOf(metres)
        .divide(unit, 1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
