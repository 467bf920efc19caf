package hullalmanac.service;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.takings.Ledger;
import hullalmanac.exchange.csv.LedgerCsv;
import java.time.LocalDate;

/** What an accountant is given of a record. */
public final class AccountsService {
  private AccountsService() {}

  /**
   * Invoices, credits, payments, expenses and trips of a span of days, as one list in CSV.
   *
   * @param from first day
   * @param until first day that does not count any more
   */
  public static String csv(Almanac almanac, LocalDate from, LocalDate until) {
    return LedgerCsv.of(Ledger.of(almanac, from, until), almanac.business().currency());
  }
}
