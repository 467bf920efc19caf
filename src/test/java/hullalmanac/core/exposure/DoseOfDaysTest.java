package hullalmanac.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Water;
import hullalmanac.core.sun.SolarDay;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseOfDaysTest {
  private static final LocalDate FIRST = LocalDate.of(2022, 1, 1);
  private static final Clocks.Days DAYS =
      new Clocks.Days(FIRST, LocalDate.of(2026, 5, 1), LocalDate.of(2042, 5, 1));

  private static SurfaceClock clock(Boatyard yard, Surface surface) {
    return new Clocks(yard.almanac(), WearPractice.usual(), DAYS).of(surface).orElseThrow();
  }

  /** FAO-56 Eq 21, summed here: the mean of Ra at 30° over the days 1 to 365, times 0.55. */
  @Test
  void isMeasuredInMeanDaysAtThirtyDegrees() {
    double sum = 0;
    for (int day = 1; day <= 365; day++) {
      sum += new SolarDay(30, day).extraterrestrial();
    }
    assertThat(0.55 * sum / 365).isCloseTo(WearPractice.REFERENCE_SUN, within(5e-6));
    assertThat(WearPractice.REFERENCE_SUN).isEqualTo(17.31248);
  }

  @Test
  void countsOneForEachDayOfAReferenceYear() {
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(Use.WEEKENDS);
    Surface topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
    yard.berth(boat, yard.harbour(30), Cover.OPEN, Water.SALT, FIRST);
    double year = clock(yard, topsides).weather(LocalDate.of(2023, 1, 1), LocalDate.of(2024, 1, 1));
    assertThat(year).isCloseTo(365, within(1e-3));
  }

  /**
   * A year ashore in a shed, by hand: 365 × 0.85 × 0.05 from the sun, 365 × 0.15 × 0.25 from wet.
   */
  @Test
  void countsLittleInAShed() {
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(Use.WEEKENDS);
    Surface topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
    yard.berth(boat, yard.harbour(30), Cover.SHED, Water.ASHORE, FIRST);
    double year = clock(yard, topsides).weather(LocalDate.of(2023, 1, 1), LocalDate.of(2024, 1, 1));
    assertThat(year).isCloseTo(365 * (0.85 * 0.05 + 0.15 * 0.25), within(1e-3));
  }

  /** A boat that moves once and is laid up each winter until 2026. */
  record Life(
      double latitude,
      Cover summer,
      Cover winter,
      Use use,
      Tone tone,
      SurfaceKind part,
      int move) {}

  @Provide
  Arbitrary<Life> lives() {
    return Combinators.combine(
            Arbitraries.doubles().between(-60, 60),
            Arbitraries.of(Cover.class),
            Arbitraries.of(Cover.class),
            Arbitraries.of(Use.class),
            Arbitraries.of(Tone.class),
            Arbitraries.of(SurfaceKind.TOPSIDES, SurfaceKind.FOREDECK, SurfaceKind.WATERLINE),
            Arbitraries.integers().between(1, 1500))
        .as(Life::new);
  }

  @Property(tries = 200)
  void agreesWithADayByDaySum(
      @ForAll("lives") Life life,
      @ForAll @IntRange(min = 0, max = 1500) int start,
      @ForAll @IntRange(min = 0, max = 3000) int length) {
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(life.use());
    Harbour harbour = yard.harbour(life.latitude());
    Surface surface =
        yard.surface(boat, life.part(), Side.BOTH, Finish.GELCOAT, life.tone(), false);
    LocalDate moved = FIRST.plusDays(life.move());
    LocalDate hauled = LocalDate.of(2022, 10, 20);
    LocalDate launched = LocalDate.of(2023, 3, 31);
    List<Berth> berths =
        List.of(
            yard.berth(boat, harbour, Cover.OPEN, Water.SALT, FIRST),
            yard.berth(boat, harbour, life.summer(), Water.SALT, moved),
            yard.layUp(boat, harbour, life.winter(), hauled, launched, 2026));
    LocalDate a = FIRST.plusDays(start);
    LocalDate b = a.plusDays(length);
    double expected = DailyDose.between(a, b, berths, surface, life.use(), life.latitude());
    assertThat(clock(yard, surface).weather(a, b)).isCloseTo(expected, within(1e-6));
  }

  /** Months of a leap year begin a day later: the sunshine of March begins with March. */
  @ParameterizedTest
  @CsvSource({"2023", "2024"})
  void takesEachMonthsOwnSunshine(int year) {
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(Use.WEEKENDS);
    Surface topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
    List<Double> sunshine = new ArrayList<>(Collections.nCopies(12, 0.0));
    sunshine.set(2, 1.0);
    yard.berth(boat, yard.harbour(45, sunshine), Cover.OPEN, Water.SALT, FIRST);
    SurfaceClock clock = clock(yard, topsides);
    LocalDate first = LocalDate.of(year, 3, 1);
    double march = new SolarDay(45, first.getDayOfYear()).atGround(1) / 17.31248;
    double before = new SolarDay(45, first.getDayOfYear() - 1).atGround(0) / 17.31248;
    assertThat(clock.weather(first, first.plusDays(1)))
        .isCloseTo(0.85 * march + 0.15, within(1e-9));
    assertThat(clock.weather(first.minusDays(1), first))
        .isCloseTo(0.85 * before + 0.15, within(1e-9));
  }

  @Property(tries = 100)
  void addsUp(
      @ForAll @IntRange(min = 0, max = 2000) int first,
      @ForAll @IntRange(min = 0, max = 2000) int second) {
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(Use.WEEKLY);
    Surface deck = yard.surface(boat, SurfaceKind.FOREDECK, Side.BOTH);
    Harbour harbour = yard.harbour(48.4);
    yard.berth(boat, harbour, Cover.OPEN, Water.SALT, FIRST);
    LocalDate hauled = LocalDate.of(2022, 11, 1);
    yard.layUp(boat, harbour, Cover.SHRINK_WRAP, hauled, LocalDate.of(2023, 4, 1), null);
    SurfaceClock clock = clock(yard, deck);
    LocalDate b = FIRST.plusDays(first);
    LocalDate c = b.plusDays(second);
    assertThat(clock.weather(FIRST, b) + clock.weather(b, c))
        .isCloseTo(clock.weather(FIRST, c), within(1e-6));
    assertThat(clock.weather(b, b)).isZero();
  }

  @Property(tries = 100)
  void findsTheFirstDayOnWhichADoseIsReached(
      @ForAll @DoubleRange(min = 0.5, max = 3000) double dose) {
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(Use.WEEKENDS);
    Surface deck = yard.surface(boat, SurfaceKind.FOREDECK, Side.BOTH);
    yard.berth(boat, yard.harbour(48.4), Cover.OPEN, Water.SALT, FIRST);
    SurfaceClock clock = clock(yard, deck);
    LocalDate day =
        SurfaceClock.firstReaching(d -> clock.weather(FIRST, d), dose, FIRST, clock.end())
            .orElseThrow();
    assertThat(clock.weather(FIRST, day)).isGreaterThanOrEqualTo(dose);
    assertThat(clock.weather(FIRST, day.minusDays(1))).isLessThan(dose);
  }

  @Test
  void doesNotReachADoseBeyondItsLimit() {
    LocalDate limit = FIRST.plusYears(15);
    assertThat(SurfaceClock.firstReaching(d -> 1.0, 2.0, FIRST, limit)).isEmpty();
  }

  /** Cover, colour, use and part on one summer day at 45°, where e is linear in each. */
  @ParameterizedTest
  @CsvSource({
    "TOPSIDES, false, 1.0",
    "STRIPE, false, 1.0",
    "METALWORK, false, 1.0",
    "WATERLINE, false, 1.8",
    "TRANSOM, false, 1.15",
    "TRANSOM, true, 1.3",
    "CABIN_SIDES, false, 1.10",
    "GUNWALES, false, 1.25",
    "COCKPIT, false, 1.25",
    "FOREDECK, false, 1.50",
    "SWIM_PLATFORM, false, 1.50",
    "COACHROOF, false, 1.50",
    "HARDTOP, false, 1.50",
    "NON_SKID, false, 2.0",
    "WINDOWS, false, 1.3",
    "FENDER_PATCHES, false, 1.5"
  })
  void wearsEachPartAtItsRate(SurfaceKind kind, boolean soot, double factor) {
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(Use.WEEKENDS);
    Surface part = yard.surface(boat, kind, Side.BOTH, Finish.GELCOAT, Tone.LIGHT, soot);
    Surface topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
    yard.berth(boat, yard.harbour(45), Cover.OPEN, Water.SALT, FIRST);
    LocalDate day = LocalDate.of(2023, 6, 21);
    assertThat(clock(yard, part).weather(day, day.plusDays(1)))
        .isCloseTo(factor * clock(yard, topsides).weather(day, day.plusDays(1)), within(1e-9));
  }

  /** The floor is under every day; with the starter values none is that low. */
  @Test
  void agesByMereTime() {
    WearPractice usual = WearPractice.usual();
    WearPractice allSun =
        new WearPractice(
            1.0,
            usual.leastWear(),
            usual.meanSky(),
            usual.facing(),
            usual.covers(),
            usual.tones(),
            usual.uses(),
            usual.waters(),
            usual.surfaces(),
            usual.sootyTransom(),
            usual.washes());
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(Use.WEEKENDS);
    Surface topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
    yard.berth(boat, yard.harbour(80), Cover.OPEN, Water.SALT, FIRST);
    SurfaceClock clock = new Clocks(yard.almanac(), allSun, DAYS).of(topsides).orElseThrow();
    LocalDate polarNight = LocalDate.of(2022, 12, 1);
    assertThat(clock.weather(polarNight, polarNight.plusDays(10))).isCloseTo(0.3, within(1e-9));
  }

  @Test
  void refusesDaysItDoesNotReckonWith() {
    Boatyard yard = new Boatyard();
    Boat boat = yard.boat(Use.WEEKENDS);
    Surface topsides = yard.surface(boat, SurfaceKind.TOPSIDES, Side.BOTH);
    yard.berth(boat, yard.harbour(45), Cover.OPEN, Water.SALT, FIRST);
    SurfaceClock clock = clock(yard, topsides);
    assertThatThrownBy(() -> clock.weather(FIRST.minusDays(1), FIRST))
        .hasMessageContaining("2021-12-31");
  }
}
