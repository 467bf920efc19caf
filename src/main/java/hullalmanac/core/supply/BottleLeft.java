package hullalmanac.core.supply;

import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Product;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is left in a bottle, reckoned.
 *
 * @param from what it starts from, ml; absent where the bottle says neither what is left nor what
 *     it held
 * @param start what that is
 * @param drawn by steps done since, ml
 * @param steps how many these are
 * @param gaps how many of them took it where area or dilution is not known, besides
 * @param origins what the ml for a square metre rest on, in words
 */
public record BottleLeft(
    Bottle bottle,
    Product product,
    Optional<Integer> from,
    Start start,
    double drawn,
    int steps,
    int gaps,
    List<String> origins) {
  /** What it starts from. */
  public enum Start {
    /** Somebody looked on a day. */
    SEEN,
    /** Somebody wrote what was left, but not when; nothing is taken off. */
    SEEN_SOME_DAY,
    /** It was full. */
    FULL,
    UNKNOWN
  }

  public BottleLeft {
    origins = List.copyOf(origins);
  }

  /** What is left, ml; under 0 where more was drawn than it held. */
  public Optional<Double> reckoned() {
    return from.map(ml -> ml - drawn);
  }

  /** What is left, ml, never under 0. */
  public Optional<Double> left() {
    return reckoned().map(ml -> Math.max(0, ml));
  }

  /** Whether steps drew more than it held, so that somebody should look. */
  public boolean overdrawn() {
    return reckoned().filter(ml -> ml < 0).isPresent();
  }

  /** Whether it is past its use-by on a day. */
  public boolean past(LocalDate day) {
    return bottle.useBy().filter(day::isAfter).isPresent();
  }

  /** The last day on which it keeps, as its product says of an opened one. */
  public Optional<LocalDate> keepsUntil() {
    return bottle
        .openedOn()
        .flatMap(opened -> product.handling().openMonths().map(opened::plusMonths));
  }

  /** Whether it has been open for longer than its product allows on a day. */
  public boolean openTooLong(LocalDate day) {
    return keepsUntil().filter(day::isAfter).isPresent();
  }

  /** Whether it can be used on a day. */
  public boolean usable(LocalDate day) {
    return !past(day) && !openTooLong(day);
  }
}
