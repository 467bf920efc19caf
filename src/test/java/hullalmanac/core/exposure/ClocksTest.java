package hullalmanac.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CoatClass;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WashStrength;
import hullalmanac.core.record.Water;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClocksTest {
  private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);
  private static final LocalDate AS_OF = LocalDate.of(2026, 5, 1);
  private static final LocalDate WASHED = LocalDate.of(2025, 6, 10);

  private final Boatyard yard = new Boatyard();
  private final Boat boat = yard.boat(Use.WEEKENDS);
  private final Surface port = yard.surface(boat, SurfaceKind.TOPSIDES, Side.PORT);
  private final Surface starboard = yard.surface(boat, SurfaceKind.TOPSIDES, Side.STARBOARD);

  private Clocks clocks() {
    return new Clocks(
        yard.almanac(), WearPractice.usual(), new Clocks.Days(FIRST, AS_OF, AS_OF.plusYears(15)));
  }

  private SurfaceClock clock(Surface surface) {
    return clocks().of(surface).orElseThrow();
  }

  private void lies() {
    yard.berth(boat, yard.harbour(48.4), Cover.OPEN, Water.SALT, FIRST);
  }

  private Product cleaner(WashStrength strength) {
    return yard.product(ProductKind.SOAP, null, null, strength);
  }

  private Visit done(LocalDate day) {
    return yard.visit(boat, day, VisitStatus.DONE, VisitWhy.PLAN);
  }

  /**
   * Port faces 90° to the left of the bow, starboard to the right, the transom astern; the noon sun
   * stands in the south in the north, in the north in the south.
   */
  @ParameterizedTest
  @CsvSource({
    "TOPSIDES, PORT, 270, 48, 1.25",
    "TOPSIDES, PORT, 330, 48, 1.25",
    "TOPSIDES, PORT, 331, 48, 1.0",
    "TOPSIDES, PORT, 210, 48, 1.25",
    "TOPSIDES, PORT, 209, 48, 1.0",
    "TOPSIDES, PORT, 150, 48, 0.80",
    "TOPSIDES, PORT, 151, 48, 1.0",
    "TOPSIDES, PORT, 90, 48, 0.80",
    "TOPSIDES, STARBOARD, 90, 48, 1.25",
    "TOPSIDES, STARBOARD, 270, 48, 0.80",
    "TOPSIDES, STARBOARD, 0, 48, 1.0",
    "TRANSOM, BOTH, 0, 48, 1.25",
    "TRANSOM, BOTH, 180, 48, 0.80",
    "TOPSIDES, PORT, 270, -35, 0.80",
    "TOPSIDES, PORT, 90, -35, 1.25",
    "TOPSIDES, STARBOARD, 270, -35, 1.25",
    "TRANSOM, BOTH, 180, -35, 1.25",
    "TOPSIDES, BOTH, 90, 48, 1.0",
    "FOREDECK, BOTH, 90, 48, 1.0"
  })
  void givesTheSunwardSideMore(
      SurfaceKind kind, Side side, int bow, double latitude, double expected) {
    Surface surface = yard.surface(boat, kind, side);
    assertThat(clocks().side(surface, Optional.of(bow), latitude)).isEqualTo(expected);
    assertThat(clocks().side(surface, Optional.empty(), latitude)).isEqualTo(1.0);
  }

  @ParameterizedTest
  @CsvSource({
    "WAX, MILD, 0.7",
    "WAX, STRONG, 15",
    "WAX, ACID_OR_ALKALI, 30000",
    "SEALANT, MILD, 0.5",
    "SEALANT, STRONG, 5",
    "SEALANT, ACID_OR_ALKALI, 25",
    "SILICA, MILD, 0.3",
    "SILICA, STRONG, 1",
    "SILICA, ACID_OR_ALKALI, 4"
  })
  void takesOffWhatTheCleanerTakesOff(CoatClass coat, WashStrength strength, double wear) {
    lies();
    yard.step(done(WASHED), StepKind.WASH, cleaner(strength), port);
    SurfaceClock clock = clock(port);
    assertThat(clock.washing(coat, FIRST, AS_OF)).isEqualTo(wear);
    assertThat(clock.washing(coat, FIRST, WASHED)).isZero();
    assertThat(clock.washing(coat, FIRST, WASHED.plusDays(1))).isEqualTo(wear);
    assertThat(clock.washing(coat, WASHED, AS_OF)).isZero();
    assertThat(clock(starboard).washing(coat, FIRST, AS_OF)).isZero();
  }

  @Test
  void takesAWashWithoutAProductForMildAndADecontaminationForAcid() {
    lies();
    yard.step(done(WASHED), StepKind.WASH, null);
    assertThat(clock(starboard).washing(CoatClass.SEALANT, FIRST, AS_OF)).isEqualTo(0.5);
    yard.step(done(WASHED.plusDays(9)), StepKind.DECONTAMINATE, null);
    assertThat(clock(starboard).washing(CoatClass.SEALANT, FIRST, AS_OF)).isEqualTo(25.5);
    yard.step(done(WASHED.plusDays(20)), StepKind.POLISH, null);
    assertThat(clock(starboard).washing(CoatClass.SEALANT, FIRST, AS_OF)).isEqualTo(25.5);
  }

  @Test
  void countsNoWashThatIsPlannedOrStillToCome() {
    lies();
    Visit planned = yard.visit(boat, WASHED, VisitStatus.PLANNED, VisitWhy.PLAN);
    yard.step(planned, StepKind.WASH, cleaner(WashStrength.STRONG));
    yard.step(done(AS_OF.plusDays(1)), StepKind.WASH, cleaner(WashStrength.STRONG));
    assertThat(clock(port).washing(CoatClass.WAX, FIRST, AS_OF.plusYears(1))).isZero();
    yard.step(done(AS_OF), StepKind.WASH, cleaner(WashStrength.STRONG));
    assertThat(clock(port).washing(CoatClass.WAX, FIRST, AS_OF.plusYears(1))).isEqualTo(15);
  }

  @Test
  void assumesTheFirstBerthBackForAMonthAndNoLonger() {
    LocalDate noted = LocalDate.of(2025, 6, 1);
    yard.berth(boat, yard.harbour(48.4), Cover.OPEN, Water.SALT, noted);
    SurfaceClock clock = clock(port);
    assertThat(clock.knows(noted.minusDays(31))).isTrue();
    assertThat(clock.knows(noted.minusDays(32))).isFalse();
    assertThat(clock.weather(noted.minusDays(31), noted)).isPositive();
  }

  @Test
  void hasNoClockForABoatWithoutABerth() {
    assertThat(clocks().of(port)).isEmpty();
  }

  /** The same latitude north and south, half a year apart, gives nearly the same year. */
  @Test
  void wearsAlikeInBothHemispheresOverAYear() {
    lies();
    Boat other = yard.boat(Use.WEEKENDS);
    Surface southern = yard.surface(other, SurfaceKind.TOPSIDES, Side.BOTH);
    yard.berth(other, yard.harbour(-48.4), Cover.OPEN, Water.SALT, FIRST);
    double north = clock(port).weather(FIRST, FIRST.plusYears(1));
    double south = clock(southern).weather(FIRST, FIRST.plusYears(1));
    assertThat(south / north).isCloseTo(1, within(0.03));
    LocalDate july = LocalDate.of(2025, 7, 1);
    assertThat(clock(southern).weather(july, july.plusDays(31)))
        .isLessThan(0.5 * clock(port).weather(july, july.plusDays(31)));
  }

  @Test
  void refusesPracticeWithAHole() {
    WearPractice usual = WearPractice.usual();
    assertThatThrownBy(
            () ->
                new WearPractice(
                    usual.sunShare(),
                    usual.leastWear(),
                    usual.meanSky(),
                    usual.facing(),
                    usual.covers(),
                    Map.of(),
                    usual.uses(),
                    usual.waters(),
                    usual.surfaces(),
                    usual.sootyTransom(),
                    usual.washes()))
        .hasMessage("practice has no value for LIGHT");
    assertThatThrownBy(() -> new WearPractice.Shelter(-1, 0)).hasMessageContaining("-1.0");
  }
}
