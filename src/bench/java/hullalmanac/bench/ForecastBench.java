package hullalmanac.bench;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Forecaster;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.study.generator.SecondLaw;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Forecasts of an invented fleet from memory, on one thread: all of it from nothing, and again after
 * one finding more. Ten coats and fifty findings a boat.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class ForecastBench {
  private static final int FINDINGS_A_BOAT = 50;
  private static final int DAYS_APART = 11;

  /** How many boats. */
  @Param({"500", "1000", "2000"})
  public int boats;

  private Almanac almanac;
  private Almanac changed;
  private LocalDate today;
  private Forecaster before;

  /** Makes the fleet. */
  @Setup
  public void make() {
    SecondLaw.Plan plan = new SecondLaw.Plan(7, boats, 4, false, true);
    SecondLaw.Fleet fleet = new SecondLaw(plan).run(ForecastBench::old);
    today = fleet.asOf();
    almanac = with(fleet.almanac(), padded(fleet.almanac(), boats * FINDINGS_A_BOAT));
    List<Finding> more = new ArrayList<>(almanac.findings());
    more.add(again(more.get(more.size() / 2), 2, Long.MAX_VALUE));
    changed = with(almanac, more);
    before = new Forecaster(almanac, today);
    before.inService();
    System.out.println(
        boats
            + " boats, "
            + almanac.coats().size()
            + " coats, "
            + almanac.findings().size()
            + " findings, in service "
            + before.inService().size());
  }

  private static Set<Id<Coat>> old(Almanac known, LocalDate day) {
    Set<Id<Coat>> old = new HashSet<>();
    for (Coat coat : known.coats()) {
      boolean serves = coat.ending().isEmpty();
      if (serves && coat.laidOn().orElseThrow().isBefore(day.minusMonths(4))) {
        old.add(coat.id());
      }
    }
    return old;
  }

  private static List<Finding> padded(Almanac almanac, int count) {
    List<Finding> findings = new ArrayList<>(almanac.findings());
    for (int i = 0; findings.size() < count; i++) {
      findings.add(again(findings.get(i), DAYS_APART, Long.MAX_VALUE - 1 - i));
    }
    return findings.subList(0, Math.min(count, findings.size()));
  }

  private static Finding again(Finding f, int daysLater, long id) {
    return new Finding(
        new Id<>(id),
        "again-" + id,
        f.surface(),
        f.visit(),
        f.day().plusDays(daysLater),
        f.state(),
        f.entered(),
        f.seen(),
        f.note());
  }

  private static Almanac with(Almanac a, List<Finding> findings) {
    return new Almanac(
        a.business(), a.harbours(), a.parties(), a.boats(), a.roles(), a.surfaces(), a.berths(),
        a.carePlans(), a.products(), a.bottles(), a.visits(), a.steps(), a.coats(), a.duties(),
        findings, a.photos());
  }

  /** Every coat in service, from nothing. */
  @Benchmark
  public List<CoatForecast> wholeFleet() {
    return new Forecaster(almanac, today).inService();
  }

  /** Reading and learning after one finding more. */
  @Benchmark
  public Forecaster oneFinding() {
    return before.next(changed, today);
  }

  /** Every coat in service after one finding more. */
  @Benchmark
  public List<CoatForecast> wholeFleetAfterOneFinding() {
    return before.next(changed, today).inService();
  }
}
