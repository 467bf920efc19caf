package hullalmanac.service;

import hullalmanac.core.record.Almanac;
import java.time.LocalDate;
import java.util.function.Supplier;

/** Reads the record for those who show or print what is due. */
public final class FleetService {
  private final Supplier<Almanac> record;
  private final Supplier<LocalDate> today;

  /**
   * @param record reads the record's present contents; may touch the file
   * @param today the day the record is worked on: today, or the day a sample is opened as of
   */
  public FleetService(Supplier<Almanac> record, Supplier<LocalDate> today) {
    this.record = record;
    this.today = today;
  }

  /** Reads the record's contents; touches the file, so for the database lane. */
  public Almanac read() {
    return record.get();
  }

  /** The day the record is worked on. */
  public LocalDate today() {
    return today.get();
  }
}
