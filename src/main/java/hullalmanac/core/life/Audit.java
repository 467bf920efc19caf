package hullalmanac.core.life;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.InService;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What was said and what was seen: for each year that has passed, the forecasts that the record as
 * it then stood gives for its first day, held against the looks of that year.
 *
 * <p>A forecast names the days by which 1 and 9 in 10 such coats are bare. A coat seen bare before
 * the first went earlier than was said, one seen alive after the second lasted longer; each should
 * befall about 1 in 10 at most. Only looks at water on a washed or decontaminated surface count
 * that were written down as such, and what was seen as a coat was renewed or stripped.
 */
public final class Audit {
  private final Almanac almanac;
  private final LocalDate today;
  private final InService coats;
  private final Map<Id<Surface>, List<Finding>> looks;

  private Audit(Almanac almanac, LocalDate today) {
    this.almanac = almanac;
    this.today = today;
    coats = new InService(almanac.coats());
    looks =
        almanac.findings().stream()
            .filter(f -> f.seen() instanceof Observation.WaterSeen)
            .filter(f -> f.entered() != Entered.TWO_TOUCH)
            .filter(
                f -> f.state() == SurfaceState.WASHED || f.state() == SurfaceState.DECONTAMINATED)
            .collect(Collectors.groupingBy(Finding::surface));
  }

  /** How a forecast did. */
  public enum Verdict {
    WITHIN,
    EARLIER,
    LONGER
  }

  /**
   * A forecast and what came of it.
   *
   * @param bare whether it was seen bare on the day, or alive
   */
  public record Held(
      CoatForecast said, Outcome.Dated dates, LocalDate seenOn, boolean bare, Verdict verdict) {}

  /**
   * A year.
   *
   * @param held every coat of which something was said on its first day and seen in it
   */
  public record Year(int year, List<Held> held) {
    public Year {
      held = List.copyOf(held);
    }

    /** How many forecasts did so. */
    public long count(Verdict verdict) {
      return held.stream().filter(h -> h.verdict() == verdict).count();
    }
  }

  /** A look at a coat. */
  private record Look(LocalDate day, boolean bare) {}

  /** Every year from the first after the first coat, oldest first. Long: a forecast a year. */
  public static List<Year> of(Almanac almanac, LocalDate today) {
    Audit audit = new Audit(almanac, today);
    int first =
        almanac.coats().stream().mapToInt(c -> c.since().getYear()).min().orElse(today.getYear());
    List<Year> years = new ArrayList<>();
    for (int year = first + 1; year <= today.getYear(); year++) {
      years.add(new Year(year, audit.held(LocalDate.of(year, 1, 1))));
    }
    return years;
  }

  private List<Held> held(LocalDate from) {
    List<Held> held = new ArrayList<>();
    for (CoatForecast said : new Forecaster(almanac, from).inService()) {
      if (said.outcome() instanceof Outcome.Dated dates) {
        hold(said, dates, looksAt(said.coat(), from)).ifPresent(held::add);
      }
    }
    return held;
  }

  /** Looks at a coat in the year from a day on, while nothing lay over it. */
  private List<Look> looksAt(Coat coat, LocalDate from) {
    LocalDate until = from.plusYears(1);
    LocalDate end = coats.end(coat).orElse(LocalDate.MAX);
    List<Look> seen = new ArrayList<>();
    for (Finding f : looks.getOrDefault(coat.surface(), List.of())) {
      boolean inTime =
          f.day().isAfter(from)
              && f.day().isBefore(until)
              && f.day().isBefore(end)
              && !f.day().isAfter(today);
      if (inTime && onTop(coat, f.day())) {
        seen.add(new Look(f.day(), isFlat(f)));
      }
    }
    coat.ending()
        .filter(e -> e.on().isAfter(from) && e.on().isBefore(until) && !e.on().isAfter(today))
        .filter(e -> e.seen() != EndState.NOT_LOOKED)
        .ifPresent(e -> seen.add(new Look(e.on(), e.seen() == EndState.FLAT)));
    seen.sort(Comparator.comparing(Look::day));
    return seen;
  }

  private boolean onTop(Coat coat, LocalDate day) {
    List<Coat> serving = coats.on(coat.surface(), day);
    return !serving.isEmpty() && serving.get(serving.size() - 1).id().equals(coat.id());
  }

  private static boolean isFlat(Finding f) {
    return ((Observation.WaterSeen) f.seen()).behaviour() == WaterBehaviour.FLAT;
  }

  private static Optional<Held> hold(CoatForecast said, Outcome.Dated dates, List<Look> looks) {
    if (looks.isEmpty()) {
      return Optional.empty();
    }
    Optional<Look> longer =
        looks.stream()
            .filter(l -> !l.bare() && dates.late().filter(l.day()::isAfter).isPresent())
            .findFirst();
    Optional<Look> bare = looks.stream().filter(Look::bare).findFirst();
    Look last = longer.or(() -> bare).orElse(looks.get(looks.size() - 1));
    Verdict verdict =
        longer.isPresent()
            ? Verdict.LONGER
            : bare.filter(l -> l.day().isBefore(dates.early())).isPresent()
                ? Verdict.EARLIER
                : Verdict.WITHIN;
    return Optional.of(new Held(said, dates, last.day(), last.bare(), verdict));
  }
}
