package hullalmanac.exchange.csv;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import java.util.List;
import java.util.function.Function;

/** Gathers the people's own ids of a record. */
final class KeysOf {
  private KeysOf() {}

  static Keys almanac(Almanac a) {
    Keys keys = new Keys();
    note(keys, Kind.HARBOUR, a.harbours(), x -> x.key(), x -> x.id());
    note(keys, Kind.PARTY, a.parties(), x -> x.key(), x -> x.id());
    note(keys, Kind.BOAT, a.boats(), x -> x.key(), x -> x.id());
    note(keys, Kind.ROLE, a.roles(), x -> x.key(), x -> x.id());
    note(keys, Kind.SURFACE, a.surfaces(), x -> x.key(), x -> x.id());
    note(keys, Kind.BERTH, a.berths(), x -> x.key(), x -> x.id());
    note(keys, Kind.CARE_PLAN, a.carePlans(), x -> x.key(), x -> x.id());
    note(keys, Kind.PRODUCT, a.products(), x -> x.key(), x -> x.id());
    note(keys, Kind.BOTTLE, a.bottles(), x -> x.key(), x -> x.id());
    note(keys, Kind.VISIT, a.visits(), x -> x.key(), x -> x.id());
    note(keys, Kind.STEP, a.steps(), x -> x.key(), x -> x.id());
    note(keys, Kind.COAT, a.coats(), x -> x.key(), x -> x.id());
    note(keys, Kind.DUTY, a.duties(), x -> x.key(), x -> x.id());
    note(keys, Kind.FINDING, a.findings(), x -> x.key(), x -> x.id());
    note(keys, Kind.PHOTO, a.photos(), x -> x.key(), x -> x.id());
    note(keys, Kind.RATE, a.books().rates(), x -> x.key(), x -> x.id());
    note(keys, Kind.ESTIMATE, a.books().estimates(), x -> x.key(), x -> x.id());
    note(keys, Kind.INVOICE, a.books().invoices(), x -> x.key(), x -> x.id());
    note(keys, Kind.PAYMENT, a.books().payments(), x -> x.key(), x -> x.id());
    note(keys, Kind.TRIP, a.books().trips(), x -> x.key(), x -> x.id());
    note(keys, Kind.EXPENSE, a.books().expenses(), x -> x.key(), x -> x.id());
    note(keys, Kind.LIST_READING, a.listReadings(), x -> x.key(), x -> x.id());
    note(keys, Kind.WORDING, a.wordings(), x -> x.key(), x -> x.id());
    note(keys, Kind.REMINDER, a.reminders(), x -> x.key(), x -> x.id());
    return keys;
  }

  private static <T> void note(
      Keys keys, Kind kind, List<T> rows, Function<T, String> key, Function<T, Id<T>> id) {
    rows.forEach(r -> keys.note(kind, key.apply(r), id.apply(r), 0));
  }
}
