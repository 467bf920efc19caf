package hullalmanac.core.life;

import hullalmanac.core.record.Boat;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Surfaces of one boat that fall due near each other: one thing to tell the owner.
 *
 * @param coats in order of their early end, at least one
 * @param early the earliest early end among them
 * @param workBy the earliest day by which the work is best done, where there is one
 */
public record BoatDue(
    Boat boat, List<CoatForecast> coats, Optional<LocalDate> early, Optional<LocalDate> workBy) {
  public BoatDue {
    coats = List.copyOf(coats);
  }
}
