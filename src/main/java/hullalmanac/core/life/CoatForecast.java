package hullalmanac.core.life;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * When one coat in service is best renewed, and why.
 *
 * @param lapsedNow chance, 0 to 1, that it is bare on the day of the forecast; absent when not
 *     forecast
 * @param twentieths the days at which the chance of a bare coat passes 1/40, 3/40 … 39/40: 20
 *     entries, absent where over 15 years ahead; an empty list when not forecast
 * @param reasons the steps by which the date came about, in order; empty when not forecast
 * @param unused findings that were not used, and why
 * @param gloss the model's gloss from the first reading on, by day; empty without a first reading
 * @param risk the chance of a bare coat at which renewal is due
 */
public record CoatForecast(
    Surface surface,
    Coat coat,
    Product product,
    Outcome outcome,
    Optional<Double> lapsedNow,
    List<Optional<LocalDate>> twentieths,
    List<Reason> reasons,
    List<Unused> unused,
    List<GlossPoint> gloss,
    double risk) {
  public CoatForecast {
    twentieths = List.copyOf(twentieths);
    reasons = List.copyOf(reasons);
    unused = List.copyOf(unused);
    gloss = List.copyOf(gloss);
  }

  /**
   * The early end of the range by which lists are sorted: early, or the interval's day, where there
   * is one.
   */
  public Optional<LocalDate> early() {
    if (outcome instanceof Outcome.Dated d) {
      return Optional.of(d.early());
    }
    if (outcome instanceof Outcome.AlreadyLapsed a) {
      return Optional.of(a.early());
    }
    if (outcome instanceof Outcome.TooFarAhead t) {
      return t.early();
    }
    return ((Outcome.NotForecast) outcome).byInterval();
  }

  /**
   * The coat that leads what is said of a boat: the first seen bare or dated.
   *
   * @param coats in order of their early ends
   */
  public static Optional<CoatForecast> leading(List<CoatForecast> coats, Id<Boat> boat) {
    List<CoatForecast> hers = coats.stream().filter(f -> f.surface().boat().equals(boat)).toList();
    return hers.stream()
        .filter(f -> !(f.outcome() instanceof Outcome.NotForecast))
        .findFirst()
        .or(() -> hers.stream().findFirst());
  }

  /**
   * The day by which it is best renewed, where there is one: the workable day, the day it was seen
   * bare, the interval.
   */
  public Optional<LocalDate> bestBy() {
    if (outcome instanceof Outcome.Dated d) {
      return Optional.of(d.workBy());
    }
    if (outcome instanceof Outcome.AlreadyLapsed a) {
      return Optional.of(a.seenOn());
    }
    return outcome instanceof Outcome.NotForecast n ? n.byInterval() : Optional.empty();
  }
}
