package hullalmanac.core.life;

import static hullalmanac.core.record.WaterBehaviour.BEADS;
import static hullalmanac.core.record.WaterBehaviour.FLAT;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** What must hold whatever was found, as long as what is known of the product stays the same. */
@Tag("slow")
@org.junit.jupiter.api.Tag("slow")
class MonotoneTest {
  private static final int AS_OF = 300;

  /** A water finding in the n-th fortnight after laying, so that none joins another. */
  record Look(int fortnight, SurfaceState state, Entered entered, WaterBehaviour seen) {}

  @Provide
  Arbitrary<Look> looks() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 20),
            Arbitraries.of(SurfaceState.class),
            Arbitraries.of(Entered.class),
            Arbitraries.of(BEADS, FLAT))
        .as(Look::new);
  }

  private static Scene scene(List<Look> looks) {
    Scene scene = new Scene().afloat();
    scene.coated();
    looks.forEach(look -> add(scene, look));
    return scene;
  }

  private static void add(Scene scene, Look look) {
    scene.water(14 * look.fortnight(), look.state(), look.seen(), look.entered());
  }

  /** No day comes later; one that is beyond fifteen years is the latest of all. */
  private static void neverLater(CoatForecast after, CoatForecast before) {
    for (int k = 0; k < 20; k++) {
      assertThat(orNever(after.twentieths().get(k)))
          .isBeforeOrEqualTo(orNever(before.twentieths().get(k)));
    }
  }

  private static LocalDate orNever(Optional<LocalDate> day) {
    return day.orElse(LocalDate.MAX);
  }

  /**
   * Holds for the first answer of each way of entry. A further one also bears on whether the
   * earlier answers were real: a bare one proves that somebody looks, and so makes earlier good
   * ones count.
   */
  @Property(tries = 60)
  void aBareLookNeverMakesADateLater(
      @ForAll @Size(max = 4) List<@net.jqwik.api.From("looks") Look> all,
      @ForAll SurfaceState state,
      @ForAll Entered entered) {
    List<Look> looks = all.stream().filter(look -> look.entered() != entered).toList();
    CoatForecast before = scene(looks).forecast(AS_OF + 20);
    Scene more = scene(looks);
    add(more, new Look(22, state, entered, FLAT));
    neverLater(more.forecast(AS_OF + 20), before);
  }

  /**
   * Holds for the first answer of each way of entry. A further one also bears on whether the
   * earlier answers were real, which may weigh against them: see the next tests.
   */
  @Property(tries = 60)
  void aBeadingLookNeverMakesADateEarlier(
      @ForAll @Size(max = 4) List<@net.jqwik.api.From("looks") Look> all,
      @ForAll SurfaceState state,
      @ForAll Entered entered) {
    List<Look> looks = all.stream().filter(look -> look.entered() != entered).toList();
    CoatForecast before = scene(looks).forecast(AS_OF + 20);
    Scene more = scene(looks);
    add(more, new Look(22, state, entered, BEADS));
    neverLater(before, more.forecast(AS_OF + 20));
  }

  /**
   * The limit of the rule above: two good answers by two touches, the second on a dirty surface so
   * late that it is more likely careless than true, which makes the first less believable too.
   */
  @Test
  void aSecondEasyAnswerMayCostTheFirstADayOrTwo() {
    Look first = new Look(4, SurfaceState.WASHED, Entered.TWO_TOUCH, BEADS);
    Look second = new Look(22, SurfaceState.DIRTY, Entered.TWO_TOUCH, BEADS);
    CoatForecast before = scene(List.of(first)).forecast(AS_OF + 20);
    CoatForecast after = scene(List.of(first, second)).forecast(AS_OF + 20);
    assertThat(after.twentieths().get(0).orElseThrow())
        .isEqualTo(before.twentieths().get(0).orElseThrow().minusDays(2));
    assertThat(Scene.middle(after)).isAfterOrEqualTo(Scene.middle(before));
  }

  /** The boat moves the day after the forecast to a harbour with more sun, and nothing else. */
  @Property(tries = 60)
  void moreSunToComeNeverMakesADateLater(
      @ForAll @Size(max = 3) List<@net.jqwik.api.From("looks") Look> looks,
      @ForAll @DoubleRange(min = 0, max = 1) double sunshine,
      @ForAll @DoubleRange(min = 0, max = 1) double less,
      @ForAll @DoubleRange(min = -60, max = 60) double latitude) {
    CoatForecast sunnier = movedTo(looks, latitude, sunshine, Cover.OPEN).forecast(AS_OF);
    CoatForecast duller = movedTo(looks, latitude, sunshine * less, Cover.OPEN).forecast(AS_OF);
    neverLater(sunnier, duller);
  }

  @Property(tries = 60)
  void lessCoverToComeNeverMakesADateLater(
      @ForAll @Size(max = 3) List<@net.jqwik.api.From("looks") Look> looks,
      @ForAll Cover cover,
      @ForAll @DoubleRange(min = -60, max = 60) double latitude) {
    CoatForecast open = movedTo(looks, latitude, 0.6, Cover.OPEN).forecast(AS_OF);
    CoatForecast covered = movedTo(looks, latitude, 0.6, cover).forecast(AS_OF);
    neverLater(open, covered);
  }

  /** One cover in each scene, so that all are alike in how usual their cover is. */
  private static Scene movedTo(List<Look> looks, double latitude, double sunshine, Cover cover) {
    Scene scene = scene(looks);
    Harbour other = scene.yard.harbour(latitude, Collections.nCopies(12, sunshine));
    LocalDate moved = Scene.LAID.plusDays(AS_OF + 1L);
    scene.yard.berth(scene.boat, other, cover, Water.SALT, moved);
    return scene;
  }

  @Property(tries = 60)
  void aDayLaterIsNeverLessSure(
      @ForAll @Size(max = 4) List<@net.jqwik.api.From("looks") Look> looks,
      @ForAll @IntRange(min = 281, max = 1000) int asOf) {
    Scene scene = scene(looks);
    CoatForecast today = scene.forecast(asOf);
    CoatForecast tomorrow = scene.forecast(asOf + 1);
    assertThat(tomorrow.lapsedNow().orElseThrow())
        .isGreaterThanOrEqualTo(today.lapsedNow().orElseThrow());
    neverLater(tomorrow, today);
  }
}
