package hullalmanac.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.CoatClass;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.sun.SolarDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SurfaceClockTest {
  private static final LocalDate FROM = LocalDate.of(2023, 1, 1);
  private static final LocalDate UNTIL = LocalDate.of(2033, 1, 1);

  private static SurfaceClock clock(Made made, Surface surface) {
    return new Clocks(made.almanac(), FROM, UNTIL).of(surface).orElseThrow();
  }

  /** FAO-56 Eq 21 at 30°, mean over the days 1 to 365, times 0.25 + 0.50 × 0.6 (Eq 35). */
  @Test
  void unitIsAnAverageDayAtThirtyDegrees() {
    double sum = 0;
    for (int day = 1; day <= 365; day++) {
      sum += new SolarDay(30, day).extraterrestrial();
    }
    assertThat(0.55 * sum / 365).isCloseTo(WearPractice.REFERENCE_SUN, within(5e-6));
    Made made = new Made(30);
    Surface topsides = made.topsides();
    made.open(FROM);
    SurfaceClock clock = clock(made, topsides);
    assertThat(clock.weather(LocalDate.of(2023, 1, 1), LocalDate.of(2024, 1, 1)))
        .isCloseTo(365, within(1e-4));
  }

  @Test
  void sumsDayByDayAcrossBerthsAndLeapDays() {
    Made made = new Made(48.4);
    Surface deck = made.surface(SurfaceKind.FOREDECK, Side.BOTH, Tone.DARK, Finish.GELCOAT);
    made.open(FROM);
    made.berth(
        Cover.SHED,
        Water.ASHORE,
        LocalDate.of(2023, 11, 1),
        Optional.of(LocalDate.of(2024, 3, 20)),
        true);
    SurfaceClock clock = clock(made, deck);
    double byDay = 0;
    for (LocalDate d = LocalDate.of(2023, 6, 1);
        d.isBefore(LocalDate.of(2025, 6, 1));
        d = d.plusDays(1)) {
      byDay += clock.weather(d, d.plusDays(1));
    }
    assertThat(clock.weather(LocalDate.of(2023, 6, 1), LocalDate.of(2025, 6, 1)))
        .isCloseTo(byDay, within(1e-9));
    assertThat(clock.weather(LocalDate.of(2024, 2, 28), LocalDate.of(2024, 3, 1)))
        .as("29 February is a day like others")
        .isGreaterThan(clock.weather(LocalDate.of(2025, 2, 28), LocalDate.of(2025, 3, 1)));
  }

  @Test
  void layUpComesAgainAcrossTheYearsEnd() {
    Made made = new Made(48.4);
    made.topsides();
    made.open(FROM);
    made.berth(
        Cover.SHED,
        Water.ASHORE,
        LocalDate.of(2023, 11, 1),
        Optional.of(LocalDate.of(2024, 3, 1)),
        true);
    List<Stay> stays = Stays.of(made.almanac().berths(), FROM, UNTIL);
    List<LocalDate> up = stays.stream().filter(s -> s.berth().yearly()).map(Stay::from).toList();
    assertThat(up).startsWith(LocalDate.of(2023, 11, 1), LocalDate.of(2024, 11, 1)).hasSize(10);
    assertThat(stays.stream().filter(s -> s.berth().yearly()).map(Stay::until))
        .contains(LocalDate.of(2025, 3, 1), LocalDate.of(2028, 3, 1));
  }

  @Test
  void sideTowardsTheNoonSunWearsFasterInBothHemispheres() {
    for (double latitude : new double[] {48.4, -48.4}) {
      Made made = new Made(latitude);
      Surface port = made.surface(SurfaceKind.TOPSIDES, Side.PORT, Tone.LIGHT, Finish.GELCOAT);
      Surface starboard =
          made.surface(SurfaceKind.TOPSIDES, Side.STARBOARD, Tone.LIGHT, Finish.GELCOAT);
      made.berth(Cover.OPEN, Water.SALT, FROM, Optional.empty(), false, Optional.of(90));
      double a = clock(made, port).weather(FROM, FROM.plusYears(1));
      double b = clock(made, starboard).weather(FROM, FROM.plusYears(1));
      // Bow east: starboard faces south, port north.
      assertThat(latitude > 0 ? b : a).isGreaterThan(1.3 * (latitude > 0 ? a : b));
    }
  }

  @Test
  void washingCountsBetweenLayingAndLooking() {
    Made made = new Made(48.4);
    Surface topsides = made.topsides();
    made.open(FROM);
    LocalDate day = LocalDate.of(2024, 5, 1);
    made.step(made.visit(day, VisitWhy.PLAN), StepKind.WASH, Optional.empty());
    made.step(
        made.visit(day.plusDays(9), VisitWhy.PLAN),
        StepKind.DECONTAMINATE,
        Optional.of(made.product(ProductKind.DECONTAMINANT, Optional.empty())));
    SurfaceClock clock = clock(made, topsides);
    assertThat(clock.washing(CoatClass.SEALANT, day.minusDays(1), day.plusDays(1))).isEqualTo(0.5);
    assertThat(clock.washing(CoatClass.SEALANT, day, day.plusDays(9))).isZero();
    assertThat(clock.washing(CoatClass.SEALANT, day.minusDays(1), day.plusDays(20)))
        .isEqualTo(25.5);
    assertThat(clock.washing(CoatClass.WAX, day, day.plusDays(20))).isEqualTo(WearPractice.ENDS_IT);
  }

  @Property(tries = 60)
  void moreCoverNeverWearsFaster(
      @ForAll @IntRange(min = -65, max = 65) int latitude,
      @ForAll @IntRange(min = 0, max = 3000) int start) {
    double[] doses = new double[2];
    Cover[] covers = {Cover.OPEN, Cover.COVERED_SLIP};
    for (int i = 0; i < 2; i++) {
      Made made = new Made(latitude);
      Surface topsides = made.topsides();
      made.berth(covers[i], Water.SALT, FROM, Optional.empty(), false);
      LocalDate from = FROM.plusDays(start);
      doses[i] = clock(made, topsides).weather(from, from.plusDays(200));
    }
    assertThat(doses[1]).isLessThanOrEqualTo(doses[0]);
  }
}
