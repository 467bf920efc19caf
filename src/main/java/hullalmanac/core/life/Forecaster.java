package hullalmanac.core.life;

import hullalmanac.core.exposure.WearPractice;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Forecasts every coat in service of a record on one day, from what the record's own coats teach of
 * the lives of its products.
 *
 * <p>Only what was known on that day is used: later findings are left out. Boats that were sold or
 * retired are not forecast, but their coats teach. Not for use by several threads at once.
 */
public final class Forecaster {
  private final Almanac almanac;
  private final LocalDate asOf;
  private final Map<Id<Boat>, Boat> boats;
  private final WearPractice practice;
  private final Known known;
  private final CoatReader reader;
  private final Lives lives;
  private final Risks risks;

  /** Forecasts with the practice values of the business. */
  public Forecaster(Almanac almanac, LocalDate asOf) {
    this(almanac, WearPractice.of(almanac.business().practice()), asOf);
  }

  /** Forecasts with other values of wear. */
  public Forecaster(Almanac almanac, WearPractice practice, LocalDate asOf) {
    this(almanac, practice, asOf, Known.nothing(), Optional.of(Lives.untaught(life(almanac))));
  }

  private Forecaster(
      Almanac almanac,
      WearPractice practice,
      LocalDate asOf,
      Known known,
      Optional<Lives> learnsAfter) {
    this.almanac = almanac;
    this.practice = practice;
    this.asOf = asOf;
    this.known = known;
    reader = new CoatReader(almanac, practice, asOf, known);
    boats = almanac.boats().stream().collect(Collectors.toMap(Boat::id, Function.identity()));
    risks = new Risks(almanac, asOf);
    lives =
        learnsAfter
            .map(before -> Lives.of(reader.lessons(), before))
            .orElseGet(() -> Lives.untaught(life(almanac)));
  }

  /**
   * A forecaster of the record after a change, or on another day, that answers as a new one would
   * but reads again only the coats of which something changed, and learns again only of their
   * products.
   */
  public Forecaster next(Almanac changed, LocalDate day) {
    return changed.business().practice().equals(almanac.business().practice())
        ? new Forecaster(changed, practice, day, known.copy(), Optional.of(lives))
        : new Forecaster(changed, day);
  }

  private static LifePractice life(Almanac almanac) {
    return new LifePractice(almanac.business().practice());
  }

  /** A forecaster that knows labels, berths and each coat's own findings, and learns nothing. */
  static Forecaster untaught(Almanac almanac, LocalDate asOf) {
    return new Forecaster(
        almanac,
        WearPractice.of(almanac.business().practice()),
        asOf,
        Known.nothing(),
        Optional.empty());
  }

  /** Forecasts every coat in service, in order of the early end, then by boat and surface. */
  public List<CoatForecast> inService() {
    List<CoatForecast> forecasts = new ArrayList<>();
    for (Surface surface : almanac.surfaces()) {
      if (boats.get(surface.boat()).status() == BoatStatus.ACTIVE) {
        for (Coat coat : reader.serving(surface)) {
          forecasts.add(forecast(surface, coat));
        }
      }
    }
    forecasts.sort(
        Comparator.comparing((CoatForecast f) -> f.early().orElse(LocalDate.MAX))
            .thenComparing(f -> boats.get(f.surface().boat()).key())
            .thenComparing(f -> f.surface().key())
            .thenComparing(f -> f.coat().key()));
    return List.copyOf(forecasts);
  }

  /**
   * Joins forecasts of each boat that fall due near each other, in order of the early end.
   *
   * @param forecasts as {@link #inService} returns them
   */
  public List<BoatDue> byBoat(List<CoatForecast> forecasts) {
    return Joined.byBoat(forecasts, boats, life(almanac).oneReminderDays());
  }

  /** What the record says of the lives of each product whose coats are forecast from weather. */
  public List<ProductLives> lives() {
    List<ProductLives> all = new ArrayList<>();
    for (Product product : almanac.products()) {
      if (product.kind().coatClass().isPresent()) {
        LivesSeen seen = lives.seen(product);
        all.add(new ProductLives(product, seen, places(seen), lives.survival(product)));
      }
    }
    return all;
  }

  private List<ProductLives.Place> places(LivesSeen seen) {
    List<ProductLives.Place> places = new ArrayList<>();
    for (Harbour harbour : almanac.harbours()) {
      for (Cover cover : List.of(Cover.OPEN, Cover.COVERED_SLIP)) {
        double doseAMonth = LifePractice.DAYS_A_MONTH * reader.meanDay(harbour, cover);
        places.add(new ProductLives.Place(harbour, cover, seen.middle() / doseAMonth));
      }
    }
    return places;
  }

  private CoatForecast forecast(Surface surface, Coat coat) {
    Product product = reader.product(coat);
    Optional<Outcome> not = reader.notForecast(surface, coat);
    if (not.isPresent()) {
      return new CoatForecast(
          surface,
          coat,
          product,
          not.get(),
          Optional.empty(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          0);
    }
    CoatClock clock = reader.clockOf(surface, coat, lives);
    double risk = risks.of(surface, product);
    return new CoatForecaster(
            surface,
            coat,
            product,
            clock,
            reader.expected(surface, coat, clock, lives),
            reader.evidence(coat, clock),
            risk,
            asOf)
        .forecast();
  }
}
