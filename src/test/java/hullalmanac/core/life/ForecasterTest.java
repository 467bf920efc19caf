package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ForecasterTest {
  private static final LocalDate LAID = LocalDate.of(2025, 4, 14);
  private static final LocalDate TODAY = LocalDate.of(2026, 4, 6);

  private static CoatForecast only(Made made, LocalDate asOf) {
    List<CoatForecast> all = new Forecaster(made.almanac(), asOf).inService();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private static Made sealed(Tone tone) {
    Made made = new Made(48.4);
    Surface s = made.surface(SurfaceKind.TOPSIDES, Side.BOTH, tone, Finish.GELCOAT);
    made.open(LocalDate.of(2024, 1, 1));
    made.coat(s, made.product(ProductKind.POLYMER_SEALANT, Optional.of(12.0)), LAID);
    return made;
  }

  private static LocalDate renewBy(CoatForecast f) {
    return ((Outcome.Dated) f.outcome()).renewBy();
  }

  @Test
  void datesAreInOrderAndMeanWhatTheySay() {
    CoatForecast f = only(sealed(Tone.LIGHT), LAID.plusDays(20));
    Outcome.Dated d = (Outcome.Dated) f.outcome();
    assertThat(d.early()).isBefore(d.renewBy());
    assertThat(d.renewBy()).isBefore(d.middle().orElseThrow());
    assertThat(d.middle().orElseThrow()).isBefore(d.late().orElseThrow());
    assertThat(f.risk()).isEqualTo(0.30);
    CoatForecast then = only(sealed(Tone.LIGHT), d.renewBy());
    assertThat(then.lapsedNow().orElseThrow()).isCloseTo(0.30, within(0.01));
    assertThat(f.twentieths()).hasSize(20);
  }

  @Test
  void fourStepsLeadToTheDate() {
    CoatForecast f = only(sealed(Tone.LIGHT), TODAY);
    assertThat(f.reasons().stream().map(Reason::stage)).containsExactly(Reason.Stage.values());
    assertThat(f.reasons().get(0).renewBy()).contains(LAID.plusDays(365));
    assertThat(f.reasons().get(3).renewBy()).contains(renewBy(f));
    assertThat(f.reasons().get(3).facts()).containsExactly("Nobody has looked at it yet");
  }

  @Test
  void darkIsRenewedSoonerAndTheBusinessMaySayOtherwise() {
    assertThat(only(sealed(Tone.DARK), TODAY).risk()).isEqualTo(0.20);
    assertThat(renewBy(only(sealed(Tone.DARK), TODAY)))
        .isBefore(renewBy(only(sealed(Tone.LIGHT), TODAY)));
    assertThat(only(sealed(Tone.LIGHT).risk(0.15), TODAY).risk()).isEqualTo(0.15);
  }

  @Test
  void beadsPutItOffAndFlatBringsItForward() {
    LocalDate plain = renewBy(only(sealed(Tone.LIGHT), TODAY));
    Made beads = sealed(Tone.LIGHT);
    beads.water(
        beads.almanac().surfaces().get(0),
        TODAY.minusDays(5),
        SurfaceState.WASHED,
        WaterBehaviour.BEADS);
    Made flat = sealed(Tone.LIGHT);
    flat.water(
        flat.almanac().surfaces().get(0),
        TODAY.minusDays(5),
        SurfaceState.WASHED,
        WaterBehaviour.FLAT);
    assertThat(renewBy(only(beads, TODAY))).isAfter(plain);
    assertThat(renewBy(only(flat, TODAY))).isBefore(plain);
  }

  @Test
  void flatOnADirtySurfaceCountsForLittle() {
    LocalDate plain = renewBy(only(sealed(Tone.LIGHT), TODAY));
    long[] moved = new long[2];
    SurfaceState[] states = {SurfaceState.DIRTY, SurfaceState.DECONTAMINATED};
    for (int i = 0; i < 2; i++) {
      Made made = sealed(Tone.LIGHT);
      made.water(
          made.almanac().surfaces().get(0), LAID.plusDays(120), states[i], WaterBehaviour.FLAT);
      moved[i] = ChronoUnit.DAYS.between(renewBy(only(made, TODAY)), plain);
    }
    assertThat(moved[0]).isPositive().isLessThan(moved[1] / 2);
  }

  @Test
  void twoTouchesWeighLessThanAGrid() {
    LocalDate[] dates = new LocalDate[2];
    Entered[] ways = {Entered.TWO_TOUCH, Entered.GRID};
    for (int i = 0; i < 2; i++) {
      Made made = sealed(Tone.LIGHT);
      Surface s = made.almanac().surfaces().get(0);
      for (int n = 1; n <= 3; n++) {
        made.finding(
            s,
            TODAY.minusDays(20L * n),
            SurfaceState.WASHED,
            ways[i],
            Optional.empty(),
            new Observation.WaterSeen(WaterBehaviour.BEADS));
      }
      dates[i] = renewBy(only(made, TODAY));
    }
    assertThat(dates[0]).isBefore(dates[1]);
  }

  @Test
  void complaintIsReadAsAnIntervalNotAsAnOldDeath() {
    Made made = sealed(Tone.LIGHT);
    Surface s = made.almanac().surfaces().get(0);
    LocalDate day = LAID.plusDays(300);
    made.finding(
        s,
        day,
        SurfaceState.WASHED,
        Entered.GRID,
        Optional.of(made.visit(day, VisitWhy.COMPLAINT)),
        new Observation.WaterSeen(WaterBehaviour.FLAT));
    Made plain = sealed(Tone.LIGHT);
    plain.water(plain.almanac().surfaces().get(0), day, SurfaceState.WASHED, WaterBehaviour.FLAT);
    Outcome complaint = only(made, TODAY).outcome();
    Outcome state = only(plain, TODAY).outcome();
    assertThat(middle(complaint)).isAfter(middle(state).plusDays(20));
  }

  private static LocalDate middle(Outcome outcome) {
    return outcome instanceof Outcome.Dated d
        ? d.middle().orElseThrow()
        : ((Outcome.AlreadyLapsed) outcome).middle();
  }

  @Test
  void seenBareIsLapsedUntilBeadsAfterDecontaminationReopenIt() {
    Made made = sealed(Tone.LIGHT);
    Surface s = made.almanac().surfaces().get(0);
    LocalDate late = LAID.plusDays(600);
    made.water(s, late, SurfaceState.WASHED, WaterBehaviour.FLAT);
    CoatForecast f = only(made, late.plusDays(1));
    assertThat(f.outcome()).isInstanceOf(Outcome.AlreadyLapsed.class);
    assertThat(((Outcome.AlreadyLapsed) f.outcome()).seenOn()).isEqualTo(late);
    made.water(s, late.plusDays(12), SurfaceState.DECONTAMINATED, WaterBehaviour.BEADS);
    assertThat(only(made, late.plusDays(13)).outcome()).isInstanceOf(Outcome.Dated.class);
  }

  @Test
  void whatWasSeenAfterTheDayOfTheForecastIsNotUsed() {
    Made made = sealed(Tone.LIGHT);
    LocalDate before = renewBy(only(made, TODAY));
    made.water(
        made.almanac().surfaces().get(0),
        TODAY.plusDays(1),
        SurfaceState.WASHED,
        WaterBehaviour.FLAT);
    assertThat(renewBy(only(made, TODAY))).isEqualTo(before);
  }

  @Test
  void glossNeedsAFirstReadingAndTwoDatesOfThree() {
    Made made = sealed(Tone.LIGHT);
    Surface s = made.almanac().surfaces().get(0);
    gloss(made, s, LAID.plusDays(100), 84);
    CoatForecast without = only(made, TODAY);
    assertThat(without.gloss()).isEmpty();
    assertThat(without.unused())
        .singleElement()
        .satisfies(u -> assertThat(u.why()).contains("within three weeks"));
    Made full = sealed(Tone.LIGHT);
    Surface t = full.almanac().surfaces().get(0);
    gloss(full, t, LAID.plusDays(10), 90);
    gloss(full, t, LAID.plusDays(150), 81);
    gloss(full, t, LAID.plusDays(200), 79);
    CoatForecast used = only(full, TODAY);
    assertThat(used.unused()).isEmpty();
    assertThat(used.gloss()).isNotEmpty();
    assertThat(middle(used.outcome())).isBefore(middle(without.outcome()));
  }

  private static void gloss(Made made, Surface s, LocalDate day, double g) {
    made.finding(
        s,
        day,
        SurfaceState.WASHED,
        Entered.GRID,
        Optional.empty(),
        new Observation.GlossRead(Geometry.DEG_60, List.of(g, g + 0.5, g - 0.5), Optional.empty()));
  }

  @Test
  void coatMetInServiceIsTakenToHaveLastedUntilThen() {
    Made fresh = sealed(Tone.LIGHT);
    Made met = new Made(48.4);
    Surface s = met.topsides();
    met.open(LocalDate.of(2024, 1, 1));
    Product p = met.product(ProductKind.POLYMER_SEALANT, Optional.of(12.0));
    met.coat(s, p, Optional.of(LAID), Optional.of(LAID.plusDays(250)), Optional.empty());
    assertThat(middle(only(met, TODAY).outcome())).isAfter(middle(only(fresh, TODAY).outcome()));
  }

  @Test
  void saysWhyThereIsNoForecast() {
    Made made = new Made(48.4);
    Surface teak = made.surface(SurfaceKind.TEAK, Side.BOTH, Tone.DARK, Finish.TEAK);
    Surface topsides = made.topsides();
    made.open(LocalDate.of(2024, 1, 1));
    made.coat(teak, made.product(ProductKind.TEAK_SEALER, Optional.empty()), LAID);
    Product sealant = made.product(ProductKind.POLYMER_SEALANT, Optional.of(12.0));
    made.coat(topsides, sealant, Optional.empty(), Optional.of(LAID), Optional.empty());
    List<CoatForecast> all = new Forecaster(made.almanac(), TODAY).inService();
    assertThat(all.stream().map(f -> ((Outcome.NotForecast) f.outcome()).reason()))
        .containsExactlyInAnyOrder(
            Outcome.NotForecast.Reason.PLAIN_INTERVAL, Outcome.NotForecast.Reason.DATE_UNKNOWN);
    assertThat(all.get(0).early()).contains(LAID.plusDays(Math.round(9 * 30.44)));
    Made nowhere = new Made(48.4);
    nowhere.coat(nowhere.topsides(), nowhere.product(ProductKind.CARNAUBA, Optional.empty()), LAID);
    assertThat(only(nowhere, TODAY).outcome())
        .isEqualTo(new Outcome.NotForecast(Outcome.NotForecast.Reason.NO_BERTH, Optional.empty()));
  }

  @Test
  void laterCoatEndsTheEarlierAndATopperDoesNot() {
    Made made = sealed(Tone.LIGHT);
    Surface s = made.almanac().surfaces().get(0);
    Coat base = made.almanac().coats().get(0);
    Product spray = made.product(ProductKind.SILICA_SPRAY, Optional.empty());
    LocalDate bare = middle(only(made, TODAY).outcome());
    made.coat(s, spray, Optional.of(LAID.plusDays(30)), Optional.empty(), Optional.of(base.id()));
    List<CoatForecast> both = new Forecaster(made.almanac(), TODAY).inService();
    assertThat(both).hasSize(2);
    CoatForecast under =
        both.stream().filter(f -> f.coat().id().equals(base.id())).findFirst().orElseThrow();
    assertThat(middle(under.outcome())).as("a base wears slower under a topper").isAfter(bare);
    made.coat(s, spray, LAID.plusDays(200));
    assertThat(only(made, TODAY).coat().laidOn()).contains(LAID.plusDays(200));
  }

  @Test
  void waterUnderATopperSpeaksOfTheTopper() {
    Made made = sealed(Tone.LIGHT);
    Surface s = made.almanac().surfaces().get(0);
    Coat base = made.almanac().coats().get(0);
    Product topper = made.product(ProductKind.SILICA_COATING, Optional.of(24.0));
    made.coat(s, topper, Optional.of(LAID.plusDays(5)), Optional.empty(), Optional.of(base.id()));
    made.water(s, LAID.plusDays(40), SurfaceState.WASHED, WaterBehaviour.FLAT);
    CoatForecast under =
        new Forecaster(made.almanac(), LAID.plusDays(50))
            .inService().stream()
                .filter(f -> f.coat().id().equals(base.id()))
                .findFirst()
                .orElseThrow();
    assertThat(under.unused())
        .singleElement()
        .satisfies(u -> assertThat(u.why()).contains("topper"));
  }

  @Test
  void workIsMovedBeforeTheShrinkWrap() {
    LocalDate asOf = LAID.plusDays(30);
    LocalDate free = renewBy(only(sealed(Tone.LIGHT), asOf));
    Made made = sealed(Tone.LIGHT);
    LocalDate wrapped = free.minusDays(8);
    made.berth(Cover.SHRINK_WRAP, Water.ASHORE, wrapped, Optional.of(free.plusDays(90)), true);
    Outcome.Dated d = (Outcome.Dated) only(made, asOf).outcome();
    assertThat(d.renewBy()).isAfterOrEqualTo(free);
    assertThat(d.workBy()).isEqualTo(wrapped.minusDays(1));
  }

  @Test
  void surfacesDueNearEachOtherAreOneThingToTell() {
    Made made = sealed(Tone.LIGHT);
    Product p = made.almanac().products().get(0);
    made.coat(
        made.surface(SurfaceKind.METALWORK, Side.BOTH, Tone.LIGHT, Finish.METAL),
        p,
        LAID.plusDays(9));
    Product silica = made.product(ProductKind.SILICA_COATING, Optional.of(36.0));
    made.coat(
        made.surface(SurfaceKind.CABIN_SIDES, Side.BOTH, Tone.LIGHT, Finish.GELCOAT), silica, LAID);
    Forecaster forecaster = new Forecaster(made.almanac(), TODAY);
    List<BoatDue> due = forecaster.byBoat(forecaster.inService());
    assertThat(due).hasSize(2);
    assertThat(due.get(0).coats()).hasSize(2);
  }

  @Property(tries = 40)
  void lessCoverAheadNeverMovesADateLater(
      @ForAll @IntRange(min = 10, max = 300) int ahead,
      @ForAll @IntRange(min = -60, max = 60) int latitude) {
    LocalDate[] dates = new LocalDate[2];
    Cover[] covers = {Cover.COVERED_SLIP, Cover.OPEN};
    for (int i = 0; i < 2; i++) {
      Made made = new Made(latitude);
      Surface s = made.topsides();
      made.berth(Cover.COVERED_SLIP, Water.SALT, LocalDate.of(2024, 1, 1), Optional.empty(), false);
      made.berth(covers[i], Water.SALT, TODAY.plusDays(ahead), Optional.empty(), false);
      made.coat(
          s, made.product(ProductKind.POLYMER_SEALANT, Optional.of(12.0)), TODAY.minusDays(20));
      dates[i] = middle(only(made, TODAY).outcome());
    }
    assertThat(dates[1]).isBeforeOrEqualTo(dates[0]);
  }

  @Property(tries = 40)
  void flatIsNeverLaterAndBeadsNeverEarlier(@ForAll @IntRange(min = 1, max = 350) int day) {
    LocalDate plain = middle(only(sealed(Tone.LIGHT), TODAY).outcome());
    for (WaterBehaviour seen : WaterBehaviour.values()) {
      Made made = sealed(Tone.LIGHT);
      made.water(made.almanac().surfaces().get(0), LAID.plusDays(day), SurfaceState.WASHED, seen);
      LocalDate then = middle(only(made, TODAY).outcome());
      if (seen == WaterBehaviour.FLAT) {
        assertThat(then).isBeforeOrEqualTo(plain);
      } else {
        assertThat(then).isAfterOrEqualTo(plain);
      }
    }
  }
}
