package hullalmanac.study;

import hullalmanac.core.exposure.WearPractice;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Forecaster;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatClass;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Water;
import hullalmanac.study.generator.SecondLaw;
import hullalmanac.study.generator.SecondLaw.Fleet;
import hullalmanac.study.generator.SecondLaw.Plan;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Lives fleets through whose visits follow the forecast, and scores it on each. */
final class Fleets {
  private static final int DAYS_AHEAD = 30;
  private static final int YEARS_TOLD_APART = 15;

  private Fleets() {}

  /** A fleet of a plan whose coats are renewed when the forecast says so. */
  static Fleet of(Plan plan) {
    AtomicReference<Forecaster> last = new AtomicReference<>();
    return new SecondLaw(plan)
        .run(
            (known, day) -> {
              Forecaster before = last.get();
              last.set(before == null ? new Forecaster(known, day) : before.next(known, day));
              return due(last.get(), day);
            });
  }

  private static Set<Id<Coat>> due(Forecaster forecaster, LocalDate day) {
    Set<Id<Coat>> due = new HashSet<>();
    for (CoatForecast f : forecaster.inService()) {
      boolean bare = f.outcome() instanceof Outcome.AlreadyLapsed;
      boolean soon =
          f.outcome() instanceof Outcome.Dated d && d.renewBy().isBefore(day.plusDays(DAYS_AHEAD));
      if (bare || soon) {
        due.add(f.coat().id());
      }
    }
    return due;
  }

  /** Scores every coat in service on the fleet's day. */
  static List<Score> scores(Fleet fleet, WearPractice practice) {
    Almanac almanac = fleet.almanac();
    List<Score> scores = new ArrayList<>();
    LocalDate horizon = fleet.asOf().plusYears(YEARS_TOLD_APART);
    for (CoatForecast f : new Forecaster(almanac, practice, fleet.asOf()).inService()) {
      scores.add(Score.of(f, fleet.lapsed().get(f.coat().id()), horizon));
    }
    return scores;
  }

  /** Wear by the calendar alone: every day is a day, wherever and however a boat lies. */
  static WearPractice calendar() {
    return new WearPractice(
        0,
        1,
        0.6,
        new WearPractice.Facing(60, 1, 1),
        all(Cover.values(), new WearPractice.Shelter(1, 1)),
        all(Tone.values(), 1.0),
        all(Use.values(), 1.0),
        all(Water.values(), 1.0),
        all(SurfaceKind.values(), 1.0),
        1,
        all(CoatClass.values(), new WearPractice.WashWear(0, 0, 0)));
  }

  private static <K, V> Map<K, V> all(K[] keys, V value) {
    return Arrays.stream(keys).collect(Collectors.toMap(Function.identity(), k -> value));
  }

  /**
   * Days by which someone is off who knows the weather's true wear, the true median of each product
   * and what each boat does to it, but has not looked at the coat: no forecast that learns from a
   * record can be expected to be much better.
   */
  static List<Double> bestBlindErrors(Fleet fleet) {
    Map<Id<Coat>, Coat> coats =
        fleet.almanac().coats().stream().collect(Collectors.toMap(Coat::id, Function.identity()));
    Map<Id<Surface>, Id<Boat>> boats =
        fleet.almanac().surfaces().stream().collect(Collectors.toMap(Surface::id, Surface::boat));
    Map<Id<Product>, Double> medians = new HashMap<>();
    fleet.lives().keySet().stream()
        .collect(Collectors.groupingBy(id -> coats.get(id).product()))
        .forEach(
            (product, ids) ->
                medians.put(product, median(ids.stream().map(fleet.lives()::get).toList())));
    Map<Id<Boat>, Double> effects =
        fleet.lives().keySet().stream()
            .collect(
                Collectors.groupingBy(
                    id -> boats.get(coats.get(id).surface()),
                    Collectors.averagingDouble(
                        id ->
                            Math.log(
                                fleet.lives().get(id) / medians.get(coats.get(id).product())))));
    List<Double> errors = new ArrayList<>();
    LocalDate horizon = fleet.asOf().plusYears(YEARS_TOLD_APART);
    for (CoatForecast f : new Forecaster(fleet.almanac(), fleet.asOf()).inService()) {
      LocalDate lapse = fleet.lapsed().get(f.coat().id());
      if (lapse.isBefore(horizon)) {
        double expected = medians.get(f.product().id()) * Math.exp(effects.get(f.surface().boat()));
        double days = ChronoUnit.DAYS.between(f.coat().laidOn().orElseThrow(), lapse);
        errors.add(days * Math.abs(1 - expected / fleet.lives().get(f.coat().id())));
      }
    }
    return errors;
  }

  /** The middle of numbers. */
  static double median(List<Double> numbers) {
    List<Double> sorted = numbers.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
