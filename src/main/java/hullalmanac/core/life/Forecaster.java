package hullalmanac.core.life;

import hullalmanac.core.exposure.Clocks;
import hullalmanac.core.exposure.SurfaceClock;
import hullalmanac.core.exposure.WearPractice;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitWhy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Forecasts every coat in service of a record.
 *
 * <p>Only what was known on the day of the forecast is used: later findings are left out. Boats
 * that were sold or retired are not forecast. Not for use by several threads at once.
 */
public final class Forecaster {
  private final Almanac almanac;
  private final Map<Id<Boat>, Boat> boats;
  private final Map<Id<Product>, Product> products;
  private final Map<Id<Visit>, Visit> visits;
  private final Map<Id<Surface>, List<Finding>> findings;
  private final InService coats;
  private final WearPractice practice;

  /** Forecasts with the starter values of wear. */
  public Forecaster(Almanac almanac) {
    this(almanac, WearPractice.usual());
  }

  public Forecaster(Almanac almanac, WearPractice practice) {
    this.almanac = almanac;
    this.practice = practice;
    boats = almanac.boats().stream().collect(Collectors.toMap(Boat::id, Function.identity()));
    products =
        almanac.products().stream().collect(Collectors.toMap(Product::id, Function.identity()));
    visits = almanac.visits().stream().collect(Collectors.toMap(Visit::id, Function.identity()));
    findings =
        almanac.findings().stream()
            .sorted(Comparator.comparing(Finding::day).thenComparing(Finding::id))
            .collect(Collectors.groupingBy(Finding::surface));
    coats = new InService(almanac.coats());
  }

  /**
   * Forecasts every coat in service on a day, in order of the early end, then by boat and surface.
   */
  public List<CoatForecast> inService(LocalDate asOf) {
    List<CoatForecast> forecasts = new ArrayList<>();
    Run run = new Run(asOf);
    for (Surface surface : almanac.surfaces()) {
      if (boats.get(surface.boat()).status() == BoatStatus.ACTIVE) {
        run.addTo(forecasts, surface);
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
   * Joins the coats in service of each boat that fall due near each other, in order of the early
   * end.
   */
  public List<BoatDue> byBoat(LocalDate asOf) {
    return Joined.byBoat(inService(asOf), boats);
  }

  /** Joins forecasts already made, as {@link #inService} returns them. */
  public List<BoatDue> byBoat(List<CoatForecast> forecasts) {
    return Joined.byBoat(forecasts, boats);
  }

  /** One forecast of the fleet on one day. */
  private final class Run {
    private final LocalDate asOf;
    private final Clocks clocks;
    private final Map<Id<Product>, LifeChances> predictives = new HashMap<>();
    private final Map<Id<Product>, LifeChances> unusualPredictives = new HashMap<>();
    private final Map<Cover, Long> covers;

    Run(LocalDate asOf) {
      this.asOf = asOf;
      LocalDate first =
          almanac.coats().stream().map(Coat::since).min(Comparator.naturalOrder()).orElse(asOf);
      clocks =
          new Clocks(
              almanac,
              practice,
              new Clocks.Days(
                  first.isBefore(asOf) ? first : asOf,
                  asOf,
                  asOf.plusYears(LifePractice.YEARS_AHEAD + 1L)));
      covers =
          almanac.berths().stream()
              .filter(b -> !b.yearly())
              .collect(
                  Collectors.groupingBy(
                      Berth::cover, () -> new EnumMap<>(Cover.class), Collectors.counting()));
    }

    void addTo(List<CoatForecast> forecasts, Surface surface) {
      List<Coat> serving = coats.on(surface.id(), asOf);
      if (serving.isEmpty()) {
        return;
      }
      Optional<SurfaceClock> clock = clocks.of(surface);
      for (Coat coat : serving) {
        forecasts.add(forecast(surface, coat, clock));
      }
    }

    private CoatForecast forecast(Surface surface, Coat coat, Optional<SurfaceClock> clock) {
      Product product = products.get(coat.product());
      Optional<Outcome> not = notForecast(surface, coat, product, clock);
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
      CoatClock coatClock = clockOf(coat, product, clock.orElseThrow());
      LifeChances predictive = predictive(product, coatClock);
      double risk = almanac.business().risk().orElse(LifePractice.risk(surface, product));
      return new CoatForecaster(
              surface, coat, product, coatClock, predictive, evidence(coat, coatClock), risk, asOf)
          .forecast();
    }

    private Optional<Outcome> notForecast(
        Surface surface, Coat coat, Product product, Optional<SurfaceClock> clock) {
      if (LifePractice.byInterval(surface)
          || (product.kind().protects() && product.kind().coatClass().isEmpty())) {
        if (coat.laidOn().isEmpty()) {
          return not(Outcome.NotForecast.Reason.DATE_UNKNOWN);
        }
        Optional<LocalDate> next =
            LifePractice.intervalMonths(surface)
                .map(m -> coat.laidOn().get().plusDays(Math.round(m * LifePractice.DAYS_A_MONTH)));
        return Optional.of(
            new Outcome.NotForecast(
                next.isPresent()
                    ? Outcome.NotForecast.Reason.PLAIN_INTERVAL
                    : Outcome.NotForecast.Reason.NO_INTERVAL,
                next));
      }
      if (product.kind().coatClass().isEmpty()) {
        return not(Outcome.NotForecast.Reason.NOT_A_COAT);
      }
      if (coat.laidOn().isEmpty()) {
        return not(Outcome.NotForecast.Reason.DATE_UNKNOWN);
      }
      boolean known = clock.map(c -> c.knows(coat.laidOn().get())).orElse(false);
      return known ? Optional.empty() : not(Outcome.NotForecast.Reason.NO_BERTH);
    }

    private Optional<Outcome> not(Outcome.NotForecast.Reason reason) {
      return Optional.of(new Outcome.NotForecast(reason, Optional.empty()));
    }

    private Evidence evidence(Coat coat, CoatClock clock) {
      LocalDate end = coats.end(coat).filter(e -> e.isBefore(asOf)).orElse(asOf.plusDays(1));
      List<Finding> seen =
          findings.getOrDefault(coat.surface(), List.of()).stream()
              .filter(f -> !f.day().isBefore(clock.laid()) && f.day().isBefore(end))
              .toList();
      return EvidenceReader.read(coat, clock, seen, this::why, asOf);
    }

    private VisitWhy why(Finding finding) {
      return finding.visit().map(v -> visits.get(v).why()).orElse(VisitWhy.OTHER);
    }

    private LifeChances predictive(Product product, CoatClock clock) {
      boolean unusual = unusual(clock);
      return (unusual ? unusualPredictives : predictives)
          .computeIfAbsent(
              product.id(),
              id ->
                  ProductLife.prior(product)
                      .predictive(
                          unusual ? LifePractice.CLOCK_SD_UNUSUAL_COVER : LifePractice.CLOCK_SD));
    }

    /** Whether the boat lies under a cover that few boats of the record lie under. */
    private boolean unusual(CoatClock clock) {
      Cover cover =
          clock.surface().stays().stream()
              .filter(s -> s.until().isAfter(asOf))
              .findFirst()
              .map(s -> s.berth().cover())
              .orElse(Cover.OPEN);
      double all = covers.values().stream().mapToLong(Long::longValue).sum();
      return covers.getOrDefault(cover, 0L) < LifePractice.UNUSUAL_COVER_SHARE * all;
    }

    /**
     * The coat's clock; a base wears at half rate while a topper lasts, taken to be until it was
     * seen bare or until half of such toppers are.
     */
    private CoatClock clockOf(Coat coat, Product product, SurfaceClock clock) {
      List<CoatClock.Spell> toppers =
          coats.of(coat.surface()).stream()
              .filter(t -> t.over().equals(Optional.of(coat.id())) && !t.since().isAfter(asOf))
              .flatMap(t -> topper(t, clock).stream())
              .toList();
      LocalDate laid = coat.laidOn().orElseThrow();
      return new CoatClock(clock, product.kind().coatClass().orElseThrow(), laid, toppers);
    }

    /** A topper of unknown age is taken to be new on the day it was met. */
    private Optional<CoatClock.Spell> topper(Coat topper, SurfaceClock clock) {
      Product product = products.get(topper.product());
      if (product.kind().coatClass().isEmpty()) {
        return Optional.empty();
      }
      LocalDate last = asOf.plusYears(LifePractice.YEARS_AHEAD);
      LocalDate from = topper.since();
      CoatClock own = new CoatClock(clock, product.kind().coatClass().get(), from, List.of());
      Evidence evidence = evidence(topper, own);
      LifeChances chances = predictive(product, own).times(evidence.logLikelihood());
      LocalDate gone = own.dayOf(chances.quantile(0.5), last).orElse(last);
      LocalDate served = coats.end(topper).filter(e -> !e.isAfter(asOf)).orElse(last);
      LocalDate seenBare = evidence.bareOn().orElse(last);
      return Optional.of(
          new CoatClock.Spell(
              from,
              earliest(gone, earliest(served, seenBare)),
              earliest(served, evidence.bareOn().map(d -> d.plusDays(1)).orElse(last))));
    }

    private static LocalDate earliest(LocalDate a, LocalDate b) {
      return a.isBefore(b) ? a : b;
    }
  }
}
