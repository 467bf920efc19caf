package hullalmanac.study.generator;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * A business and its boats in a world that keeps to a law of its own: near to practice, but off in
 * every value, with products that last shorter than their labels say, boats that differ, and people
 * who look badly or not at all.
 *
 * <p>The boats, their regular visits and the nature of each surface's first, second, third coat
 * depend on the seed alone; what is renewed when, on the answers given.
 */
public final class SecondLaw {
  private static final LocalDate FIRST_DAY = LocalDate.of(2020, 3, 1);
  private static final int YEARS_AHEAD = 15;

  private final Plan plan;

  public SecondLaw(Plan plan) {
    this.plan = plan;
  }

  /**
   * What to simulate.
   *
   * @param seed two runs with one seed and the same answers are equal
   * @param boats how many come to the business before the last season ends
   * @param seasons how many years from March to February, from 2020 on
   * @param honestLabels whether labels claim the true median life
   * @param gloss whether gloss is read; otherwise all findings are of water
   */
  public record Plan(long seed, int boats, int seasons, boolean honestLabels, boolean gloss) {
    public Plan {
      if (boats < 1 || seasons < 1) {
        throw new IllegalArgumentException(
            "a plan has boats and seasons, not " + boats + " and " + seasons);
      }
    }
  }

  /** Says which coats are due: the forecast that is being tried. */
  public interface Renewals {
    /**
     * Coats in service that should be renewed now.
     *
     * @param soFar what the business knows on the morning of the day
     */
    Set<Id<Coat>> due(Almanac soFar, LocalDate day);
  }

  /**
   * What came of it.
   *
   * @param almanac what the business knows on the evening of {@code asOf}
   * @param lapsed the first day by whose end a coat's dose has reached its life, had it stayed on
   *     and been washed as regularly as planned; {@link LocalDate#MAX} when that is more than
   *     fifteen years after {@code asOf}
   * @param lives true lives in reference days
   */
  public record Fleet(
      Almanac almanac,
      LocalDate asOf,
      Map<Id<Coat>, LocalDate> lapsed,
      Map<Id<Coat>, Double> lives) {
    public Fleet {
      lapsed = Collections.unmodifiableMap(new LinkedHashMap<>(lapsed));
      lives = Collections.unmodifiableMap(new LinkedHashMap<>(lives));
    }
  }

  /** Lives through the seasons, renewing what is said to be due. */
  public Fleet run(Renewals renewals) {
    return lived(renewals).fleet();
  }

  /** The same, with all that is true of it. */
  Trade lived(Renewals renewals) {
    SplittableRandom random = new SplittableRandom(plan.seed());
    LocalDate lastSeason = FIRST_DAY.plusYears(plan.seasons() - 1L);
    LocalDate end = lastSeason.plusYears(1);
    int asOf = random.nextInt(Span.number(lastSeason), Span.number(end));
    LocalDate horizon = Span.date(asOf).plusYears(YEARS_AHEAD);
    World world = World.drawn(random.split(), FIRST_DAY, horizon, plan.honestLabels());
    Shipyard shipyard = new Shipyard(world, new Arrivals(FIRST_DAY, plan.seasons()));
    List<Vessel> vessels = new ArrayList<>();
    for (int i = 1; i <= plan.boats(); i++) {
      vessels.add(shipyard.vessel(i, random.split()));
    }
    Trade trade = new Trade(world, vessels, asOf, plan.gloss());
    trade.live(renewals);
    return trade;
  }
}
