package hullalmanac.service;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Boat;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One coat in service and its dates: a row of the list of what is due.
 *
 * @param forecast what it was made from
 * @param renewBy the day on which the chance of a bare coat reaches the risk, before it is moved to
 *     a workable day
 */
public record DueRow(
    Boat boat,
    CoatForecast forecast,
    Optional<LocalDate> renewBy,
    Optional<LocalDate> early,
    Optional<LocalDate> middle,
    Optional<LocalDate> late) {
  static DueRow of(Boat boat, CoatForecast f) {
    Outcome outcome = f.outcome();
    if (outcome instanceof Outcome.Dated d) {
      return new DueRow(
          boat, f, Optional.of(d.renewBy()), Optional.of(d.early()), d.middle(), d.late());
    }
    if (outcome instanceof Outcome.AlreadyLapsed a) {
      return new DueRow(
          boat, f, Optional.empty(), Optional.of(a.early()), Optional.of(a.middle()), a.late());
    }
    if (outcome instanceof Outcome.TooFarAhead t) {
      return new DueRow(boat, f, Optional.empty(), t.early(), Optional.empty(), Optional.empty());
    }
    Outcome.NotForecast n = (Outcome.NotForecast) outcome;
    return new DueRow(
        boat, f, n.byInterval(), Optional.empty(), Optional.empty(), Optional.empty());
  }
}
