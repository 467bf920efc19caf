package hullalmanac.core.report;

import hullalmanac.core.exposure.Stay;
import hullalmanac.core.exposure.Stays;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.GlossPoint;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One boat over time, ready to be drawn: a lane a surface.
 *
 * @param from first day shown
 * @param until last day shown
 * @param layUps when the boat lay ashore
 * @param lanes surfaces with a coat in service, the soonest due first
 */
public record BoatTimeline(
    LocalDate from, LocalDate until, LocalDate today, List<Span> layUps, List<Lane> lanes) {
  private static final int YEARS_BACK = 2;

  public BoatTimeline {
    layUps = List.copyOf(layUps);
    lanes = List.copyOf(lanes);
  }

  /** Days from one up to another. */
  public record Span(LocalDate from, LocalDate until) {}

  /**
   * One surface.
   *
   * @param coats when coats were laid
   * @param gloss means of gloss readings at 60°
   * @param model the model's gloss; empty without a first reading
   * @param water looks at water
   * @param renewBy the day to renew by, where there is one
   * @param likely from when to when it is likely to lapse
   */
  public record Lane(
      String name,
      List<CoatMark> coats,
      List<GlossDot> gloss,
      List<GlossPoint> model,
      List<WaterMark> water,
      Optional<LocalDate> renewBy,
      Optional<Span> likely) {
    public Lane {
      coats = List.copyOf(coats);
      gloss = List.copyOf(gloss);
      model = List.copyOf(model);
      water = List.copyOf(water);
    }
  }

  /** A coat laid. */
  public record CoatMark(LocalDate day, String product, boolean topper) {}

  /** Mean of a gloss finding. */
  public record GlossDot(LocalDate day, double gloss, int readings) {}

  /** A look at water. */
  public record WaterMark(LocalDate day, WaterBehaviour behaviour, String state) {}

  /** Gathers one boat's timeline. */
  public static BoatTimeline of(
      Almanac almanac, Boat boat, List<CoatForecast> forecasts, LocalDate today) {
    LocalDate from = today.minusYears(YEARS_BACK);
    LocalDate until = today.plusYears(1);
    List<Span> layUps =
        Stays.of(
                almanac.berths().stream().filter(b -> b.boat().equals(boat.id())).toList(),
                from,
                until)
            .stream()
            .filter(s -> s.berth().water() == Water.ASHORE)
            .map((Stay s) -> new Span(s.from(), s.until()))
            .toList();
    Map<Id<Surface>, CoatForecast> leading = new LinkedHashMap<>();
    for (CoatForecast f : forecasts) {
      if (f.surface().boat().equals(boat.id())) {
        leading.merge(f.surface().id(), f, (a, b) -> a.coat().over().isPresent() ? b : a);
      }
    }
    Map<Id<Product>, Product> products =
        almanac.products().stream().collect(Collectors.toMap(Product::id, Function.identity()));
    List<Lane> lanes = new ArrayList<>();
    for (CoatForecast f : leading.values()) {
      lanes.add(lane(almanac, f, products, from));
    }
    return new BoatTimeline(from, until, today, layUps, lanes);
  }

  private static Lane lane(
      Almanac almanac, CoatForecast f, Map<Id<Product>, Product> products, LocalDate from) {
    Id<Surface> surface = f.surface().id();
    List<Finding> findings =
        almanac.findings().stream()
            .filter(x -> x.surface().equals(surface) && !x.day().isBefore(from))
            .sorted(Comparator.comparing(Finding::day))
            .toList();
    List<GlossDot> gloss = new ArrayList<>();
    List<WaterMark> water = new ArrayList<>();
    for (Finding x : findings) {
      if (x.seen() instanceof Observation.GlossRead g
          && g.geometry() == hullalmanac.core.record.Geometry.DEG_60) {
        gloss.add(new GlossDot(x.day(), g.mean(), g.readings().size()));
      } else if (x.seen() instanceof Observation.WaterSeen w) {
        water.add(new WaterMark(x.day(), w.behaviour(), x.state().words()));
      }
    }
    List<CoatMark> coats =
        almanac.coats().stream()
            .filter(c -> c.surface().equals(surface) && c.laidOn().isPresent())
            .filter(c -> !c.since().isBefore(from))
            .sorted(Comparator.comparing(Coat::since))
            .map(
                c ->
                    new CoatMark(c.since(), products.get(c.product()).name(), c.over().isPresent()))
            .toList();
    return new Lane(f.surface().words(), coats, gloss, f.gloss(), water, renewBy(f), likely(f));
  }

  private static Optional<LocalDate> renewBy(CoatForecast f) {
    if (f.outcome() instanceof Outcome.Dated d) {
      return Optional.of(d.workBy());
    }
    return f.outcome() instanceof Outcome.NotForecast n ? n.byInterval() : Optional.empty();
  }

  private static Optional<Span> likely(CoatForecast f) {
    if (f.outcome() instanceof Outcome.Dated d) {
      return Optional.of(new Span(d.early(), d.late().orElse(LocalDate.of(2200, 1, 1))));
    }
    return Optional.empty();
  }
}
