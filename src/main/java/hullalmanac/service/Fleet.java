package hullalmanac.service;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Forecaster;
import hullalmanac.core.life.ProductLives;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.remind.Reminding;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.OpenItems;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A record read on a day, with the forecast of every coat in service.
 *
 * @param coats every coat in service, in order of the early end
 * @param due the same coats joined by boat where they fall due near each other, in order of the
 *     early end
 * @param lives what the record says of each product whose coats are forecast from weather
 * @param forecaster what reckoned it, and knows what it rests on
 * @param accounts what its invoices come to
 * @param open who owes what
 * @param reminders where it stands with telling owners of boats that fall due
 */
public record Fleet(
    Almanac almanac,
    LocalDate asOf,
    List<CoatForecast> coats,
    List<BoatDue> due,
    List<ProductLives> lives,
    Forecaster forecaster,
    Accounts accounts,
    OpenItems open,
    List<Standing> reminders) {
  public Fleet {
    coats = List.copyOf(coats);
    due = List.copyOf(due);
    lives = List.copyOf(lives);
    reminders = List.copyOf(reminders);
  }

  /** Forecasts a record as of a day. Pure and possibly long: for the computing lane. */
  public static Fleet of(Almanac almanac, LocalDate asOf) {
    return dueOf(almanac, asOf).withLives();
  }

  /** The same without what is said of the products, which takes about as long again. */
  public static Fleet dueOf(Almanac almanac, LocalDate asOf) {
    return dueOf(new Forecaster(almanac, asOf), almanac, asOf, Accounts.of(almanac));
  }

  /** This fleet with what is said of the products. Pure and possibly long. */
  public Fleet withLives() {
    return new Fleet(
        almanac, asOf, coats, due, forecaster.lives(), forecaster, accounts, open, reminders);
  }

  /**
   * The record after a change, or on another day; reckons again only what the change touches. Pure
   * and possibly long.
   */
  public Fleet next(Almanac changed, LocalDate day) {
    return dueOf(forecaster.next(changed, day), changed, day, accounts.next(changed)).withLives();
  }

  /**
   * The same forecasts beside a record that has changed since; for those who read its rows before
   * it is reckoned again. What is open stays as it was, and so do the reminders.
   */
  public Fleet beside(Almanac newer) {
    return new Fleet(
        newer, asOf, coats, due, lives, forecaster, accounts.next(newer), open, reminders);
  }

  /** Where it stands with telling of one boat, read from the rows as they are beside this. */
  public List<Standing> remindersOf(Id<Boat> boat) {
    return Reminding.ofBoat(almanac, coats, due, asOf, boat);
  }

  /** Where it stands with telling of all boats, read from the rows as they are beside this. */
  public List<Standing> remindersNow() {
    return Reminding.on(almanac, coats, due, asOf);
  }

  /** The coat that leads what is said of a boat: the first seen bare or dated. */
  public Optional<CoatForecast> leading(Id<Boat> boat) {
    return CoatForecast.leading(coats, boat);
  }

  private static Fleet dueOf(
      Forecaster forecaster, Almanac almanac, LocalDate asOf, Accounts accounts) {
    List<CoatForecast> coats = forecaster.inService();
    List<BoatDue> due = forecaster.byBoat(coats);
    return new Fleet(
        almanac,
        asOf,
        coats,
        due,
        List.of(),
        forecaster,
        accounts,
        OpenItems.of(almanac, accounts, asOf),
        Reminding.on(almanac, coats, due, asOf));
  }
}
