package hullalmanac.core.life;

import hullalmanac.core.exposure.Clocks;
import hullalmanac.core.exposure.SurfaceClock;
import hullalmanac.core.exposure.WearPractice;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.InService;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitWhy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads the coats of a record as they stood on one day: their clocks and their evidence. */
final class CoatReader {
  private final Almanac almanac;
  private final LocalDate asOf;
  private final Map<Id<Product>, Product> products;
  private final Map<Id<Visit>, Visit> visits;
  private final Map<Id<Surface>, List<Finding>> findings;
  private final InService coats;
  private final Clocks clocks;
  private final Map<Id<Surface>, Optional<SurfaceClock>> surfaceClocks = new HashMap<>();
  private final Known known;
  private final Map<Cover, Long> covers;
  private final LifePractice lifePractice;

  /**
   * @param known what was read of coats before
   */
  CoatReader(Almanac almanac, WearPractice practice, LocalDate asOf, Known known) {
    this.known = known;
    this.almanac = almanac;
    this.asOf = asOf;
    lifePractice = new LifePractice(almanac.business().practice());
    products =
        almanac.products().stream().collect(Collectors.toMap(Product::id, Function.identity()));
    visits = almanac.visits().stream().collect(Collectors.toMap(Visit::id, Function.identity()));
    findings =
        almanac.findings().stream()
            .filter(f -> !f.day().isAfter(asOf))
            .sorted(Comparator.comparing(Finding::day).thenComparing(Finding::id))
            .collect(Collectors.groupingBy(Finding::surface));
    coats = new InService(almanac.coats());
    LocalDate first =
        almanac.coats().stream().map(Coat::since).min(Comparator.naturalOrder()).orElse(asOf);
    LocalDate last = asOf.plusYears(LifePractice.YEARS_AHEAD + 1L);
    clocks =
        new Clocks(
            almanac, practice, new Clocks.Days(first.isBefore(asOf) ? first : asOf, asOf, last));
    covers =
        almanac.berths().stream()
            .filter(b -> !b.yearly())
            .collect(
                Collectors.groupingBy(
                    Berth::cover, () -> new EnumMap<>(Cover.class), Collectors.counting()));
  }

  Product product(Coat coat) {
    return products.get(coat.product());
  }

  /** Coats of a surface in service on the day, base first, then toppers. */
  List<Coat> serving(Surface surface) {
    return coats.on(surface.id(), asOf);
  }

  Optional<SurfaceClock> clock(Surface surface) {
    return surfaceClocks.computeIfAbsent(surface.id(), id -> clocks.of(surface));
  }

  /** Why a coat is not forecast from weather, where it is not. */
  Optional<Outcome> notForecast(Surface surface, Coat coat) {
    Product product = product(coat);
    if (LifePractice.byInterval(surface)
        || (product.kind().protects() && product.kind().coatClass().isEmpty())) {
      return coat.laidOn().isEmpty()
          ? not(Outcome.NotForecast.Reason.DATE_UNKNOWN)
          : byInterval(surface, coat.laidOn().get());
    }
    if (product.kind().coatClass().isEmpty()) {
      return not(Outcome.NotForecast.Reason.NOT_A_COAT);
    }
    if (coat.laidOn().isEmpty()) {
      return not(Outcome.NotForecast.Reason.DATE_UNKNOWN);
    }
    boolean known = clock(surface).map(c -> c.knows(coat.laidOn().get())).orElse(false);
    return known ? Optional.empty() : not(Outcome.NotForecast.Reason.NO_BERTH);
  }

  private Optional<Outcome> byInterval(Surface surface, LocalDate laid) {
    Optional<LocalDate> next =
        lifePractice
            .intervalMonths(surface)
            .map(m -> laid.plusDays(Math.round(m * LifePractice.DAYS_A_MONTH)));
    return Optional.of(
        new Outcome.NotForecast(
            next.isPresent()
                ? Outcome.NotForecast.Reason.PLAIN_INTERVAL
                : Outcome.NotForecast.Reason.NO_INTERVAL,
            next));
  }

  private static Optional<Outcome> not(Outcome.NotForecast.Reason reason) {
    return Optional.of(new Outcome.NotForecast(reason, Optional.empty()));
  }

  /**
   * Reads what every coat of the record, in service or not, has shown of its life. How long toppers
   * lasted is taken from labels and practice here.
   */
  Map<Product, List<Lives.Taught>> lessons() {
    Lives untaught = Lives.untaught(lifePractice);
    Map<List<Object>, Long> together =
        almanac.coats().stream()
            .collect(Collectors.groupingBy(this::laying, Collectors.counting()));
    Map<Product, List<Lives.Taught>> lessons = new LinkedHashMap<>();
    for (Surface surface : almanac.surfaces()) {
      for (Coat coat : coats.of(surface.id())) {
        if (coat.since().isAfter(asOf) || notForecast(surface, coat).isPresent()) {
          continue;
        }
        Evidence evidence = evidence(coat, clockOf(surface, coat, untaught));
        if (evidence.saysAnything()) {
          double share = 1.0 / together.get(laying(coat));
          lessons
              .computeIfAbsent(product(coat), p -> new ArrayList<>())
              .add(
                  known
                      .lesson(coat, evidence, share)
                      .orElseGet(() -> known.keep(lesson(surface, coat, evidence, share))));
        }
      }
    }
    return lessons;
  }

  private Lives.Taught lesson(Surface surface, Coat coat, Evidence evidence, double share) {
    return new Lives.Taught(
        surface.boat(),
        coat,
        share,
        new Lesson(evidence.logLikelihood(), evidence.metAt(), share),
        evidence,
        seenBare(coat, evidence));
  }

  /** What coats laid in one go have in common. */
  private List<Object> laying(Coat coat) {
    return List.of(
        coat.product(), coat.visit().map(v -> (Object) v).orElse(coat.surface()), coat.since());
  }

  private boolean seenBare(Coat coat, Evidence evidence) {
    return evidence.bareOn().isPresent()
        || coat.ending()
            .filter(e -> !e.on().isAfter(asOf) && e.seen() == EndState.FLAT)
            .isPresent();
  }

  /** Dose of an average day on light topsides at a harbour. */
  double meanDay(Harbour harbour, Cover cover) {
    return clocks.meanDay(harbour, cover);
  }

  Evidence evidence(Coat coat, CoatClock clock) {
    LocalDate end = coats.end(coat).filter(e -> e.isBefore(asOf)).orElse(asOf.plusDays(1));
    List<Finding> seen =
        findings.getOrDefault(coat.surface(), List.of()).stream()
            .filter(f -> !f.day().isBefore(clock.laid()) && f.day().isBefore(end))
            .toList();
    return known.evidence(
        coat,
        content(coat, clock, seen),
        () -> EvidenceReader.read(coat, clock, seen, this::why, lifePractice, asOf));
  }

  /** All that the evidence of a coat rests on. */
  private List<Object> content(Coat coat, CoatClock clock, List<Finding> seen) {
    Optional<LocalDate> ended =
        coat.ending().map(Coat.Ending::on).filter(day -> !day.isAfter(asOf));
    List<Object> content = new ArrayList<>();
    content.add(coat);
    content.add(ended);
    content.add(clock.coatClass());
    content.add(clock.toppers());
    content.add(clock.surface().washes());
    content.add(ended.map(clock::dose));
    content.add(coat.knownFrom().map(clock::dose));
    for (Finding f : seen) {
      content.add(f);
      content.add(why(f));
      content.add(clock.dose(f.day()));
    }
    return content;
  }

  private VisitWhy why(Finding finding) {
    return finding.visit().map(v -> visits.get(v).why()).orElse(VisitWhy.OTHER);
  }

  /** What is known of such coats before this one was looked at. */
  CoatForecaster.Expected expected(Surface surface, Coat coat, CoatClock clock, Lives lives) {
    Product product = product(coat);
    double clockSd = unusual(clock) ? LifePractice.CLOCK_SD_UNUSUAL_COVER : LifePractice.CLOCK_SD;
    return new CoatForecaster.Expected(
        lives.such(product, coat, clockSd),
        lives.predictive(product, coat, surface.boat(), clockSd),
        lives.factor(product, coat, surface.boat()),
        lives.seen(product),
        lifePractice);
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
   * The clock of a coat that is forecast; a base wears at half rate while a topper lasts, taken to
   * be until it was seen bare or until half of such toppers are.
   */
  CoatClock clockOf(Surface surface, Coat coat, Lives lives) {
    SurfaceClock clock = clock(surface).orElseThrow();
    List<CoatClock.Spell> toppers =
        coats.of(surface.id()).stream()
            .filter(t -> t.over().equals(Optional.of(coat.id())) && !t.since().isAfter(asOf))
            .flatMap(t -> topper(surface, t, lives).stream())
            .toList();
    return new CoatClock(
        clock,
        product(coat).kind().coatClass().orElseThrow(),
        coat.laidOn().orElseThrow(),
        toppers);
  }

  /** A topper of unknown age is taken to be new on the day it was met. */
  private Optional<CoatClock.Spell> topper(Surface surface, Coat topper, Lives lives) {
    Product product = product(topper);
    if (product.kind().coatClass().isEmpty()) {
      return Optional.empty();
    }
    LocalDate last = asOf.plusYears(LifePractice.YEARS_AHEAD);
    LocalDate from = topper.since();
    SurfaceClock clock = clock(surface).orElseThrow();
    CoatClock own = new CoatClock(clock, product.kind().coatClass().get(), from, List.of());
    Evidence evidence = evidence(topper, own);
    LifeChances chances =
        expected(surface, topper, own, lives).predictive().times(evidence.logLikelihood());
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
