package hullalmanac.service;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.takings.Ledger;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.csv.LedgerCsv;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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

  /**
   * Writes that list into the folder {@code accounts} of a record; one of the same days is written
   * over.
   *
   * @return the file
   */
  static Path write(RecordService record, LocalDate from, LocalDate until) {
    Path folder = record.folder().resolve("accounts");
    Path file = folder.resolve("accounts-" + from + "-to-" + until.minusDays(1) + ".csv");
    try {
      // In the record's folder, which is not made anew where it is gone.
      if (!Files.isDirectory(folder)) {
        Files.createDirectory(folder);
      }
      WholeFile.write(file, csv(record.almanac(), from, until).getBytes(StandardCharsets.UTF_8));
      return file;
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The list cannot be written to "
              + file
              + ". Close it where it is open, and see that there is room.",
          e);
    }
  }
}
