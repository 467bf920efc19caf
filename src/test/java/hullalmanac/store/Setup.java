package hullalmanac.store;

import hullalmanac.core.record.Business;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Random;

/** What store tests share. */
final class Setup {
  static final Instant NOON = Instant.parse("2026-05-01T12:00:00Z");
  static final LocalDate DAY = LocalDate.of(2026, 5, 1);
  static final Database.Setting SETTING = Database.Setting.of("test", new Random(3)::nextLong);
  static final Business UNNAMED = Business.unnamed();

  private Setup() {}
}
