package hullalmanac.study.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Reckons the wear of coats again, day by day and from the rows of the record alone. */
class TruthFromRowsTest {
  @Test
  void whatCoatsHaveSpentFollowsFromTheRowsOfTheRecord() {
    Trade trade =
        new SecondLaw(new SecondLaw.Plan(21, 40, 3, false, true)).lived((soFar, day) -> Set.of());
    SecondLaw.Fleet fleet = trade.fleet();
    List<TrueCoat> lapsed =
        trade.coats().stream()
            .filter(c -> c.lapse() <= Span.number(fleet.asOf()))
            .filter(c -> c.skin().bears(c))
            .toList();
    assertThat(lapsed).hasSizeGreaterThan(30);
    for (TrueCoat coat : lapsed) {
      int day = coat.lapse() - 1;
      double again = worn(fleet.almanac(), trade.world().law(), coat, day);
      assertThat(coat.spent(day) * coat.nature().life()).isCloseTo(again, within(1e-6));
    }
  }

  private static double worn(Almanac almanac, Law law, TrueCoat coat, int until) {
    Surface surface = coat.skin().surface();
    Boat boat =
        almanac.boats().stream().filter(b -> b.id().equals(surface.boat())).findAny().orElseThrow();
    double sum = 0;
    for (int day = coat.laid() + 1; day <= until; day++) {
      LocalDate date = Span.date(day);
      Berth berth = berth(almanac, boat.id(), date);
      Harbour harbour =
          almanac.harbours().stream()
              .filter(h -> h.id().equals(berth.harbour()))
              .findAny()
              .orElseThrow();
      double sun = law.sunWeight(berth.cover(), surface.attitude()) * Sun.strength(harbour, date);
      sum += Law.daily(law.hardship(surface, boat.use()), sun, law.wetness(berth.water()));
    }
    long washes = washes(almanac, surface, Span.date(coat.laid()), Span.date(until));
    return sum + washes * law.wash(coat.skin().make().coatClass());
  }

  private static Berth berth(Almanac almanac, Id<Boat> boat, LocalDate date) {
    List<Berth> all = almanac.berths().stream().filter(b -> b.boat().equals(boat)).toList();
    return all.stream()
        .filter(Berth::yearly)
        .filter(b -> inWinter(b, MonthDay.from(date)))
        .findAny()
        .orElseGet(() -> all.stream().filter(b -> !b.yearly()).findAny().orElseThrow());
  }

  private static boolean inWinter(Berth berth, MonthDay day) {
    boolean afterHauling = !day.isBefore(MonthDay.from(berth.from()));
    boolean beforeLaunch = day.isBefore(MonthDay.from(berth.until().orElseThrow()));
    return afterHauling || beforeLaunch;
  }

  private static long washes(Almanac almanac, Surface surface, LocalDate after, LocalDate until) {
    return almanac.steps().stream()
        .filter(s -> s.kind() == StepKind.WASH)
        .filter(s -> s.day().isAfter(after) && !s.day().isAfter(until))
        .filter(s -> onBoat(almanac, s, surface.boat()))
        .filter(s -> s.surfaces().isEmpty() || s.surfaces().contains(surface.id()))
        .count();
  }

  private static boolean onBoat(Almanac almanac, Step step, Id<Boat> boat) {
    Visit visit =
        almanac.visits().stream().filter(v -> v.id().equals(step.visit())).findAny().orElseThrow();
    return visit.boat().equals(boat);
  }
}
