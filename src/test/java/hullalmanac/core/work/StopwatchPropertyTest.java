package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds whoever presses what, whatever the clock does. */
class StopwatchPropertyTest {
  private static final Instant NOON = Instant.parse("2026-05-06T12:00:00Z");
  private static final int STEPS = 4;

  /**
   * One touch.
   *
   * @param seconds how far the clock went on before it; less than none when it was set back
   */
  record Touch(int step, boolean start, long seconds) {}

  @Provide
  Arbitrary<List<Touch>> touches() {
    Arbitrary<Long> seconds =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(8, Arbitraries.longs().between(0, 20_000)),
            net.jqwik.api.Tuple.of(1, Arbitraries.longs().between(-40_000, 0)),
            net.jqwik.api.Tuple.of(1, Arbitraries.longs().between(50_000, 200_000)));
    return Combinators.combine(
            Arbitraries.integers().between(0, STEPS - 1), Arbitraries.of(true, false), seconds)
        .as(Touch::new)
        .list()
        .ofMaxSize(12);
  }

  /** Two visits of two steps each. */
  private static final class Scene {
    final Slip slip = new Slip();
    final List<Step> steps = new ArrayList<>();

    Scene() {
      Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
      for (int v = 0; v < STEPS / 2; v++) {
        Visit visit = slip.planned(DAY, topsides);
        steps.add(slip.step(visit, StepKind.WASH));
        steps.add(slip.step(visit, StepKind.POLISH));
      }
    }

    Change touch(Touch touch, Instant now) {
      Step step = steps.get(touch.step());
      return touch.start()
          ? Stopwatch.start(slip.almanac(), step.id(), now)
          : Stopwatch.stop(slip.almanac(), step.id(), now);
    }

    int minutes() {
      return slip.almanac().steps().stream().mapToInt(s -> s.minutes().orElse(0)).sum();
    }

    List<Step> timed() {
      return slip.almanac().steps().stream().filter(s -> s.timedSince().isPresent()).toList();
    }
  }

  @Property(tries = 300)
  void neverDoMoreThanOneRunAndMinutesOnlyGrow(@ForAll("touches") List<Touch> touches) {
    Scene scene = new Scene();
    Instant now = NOON;
    for (Touch touch : touches) {
      now = now.plusSeconds(touch.seconds());
      int before = scene.minutes();
      List<Step> timed = scene.timed();
      Change change = scene.touch(touch, now);
      if (change instanceof Change.Refused) {
        Stopwatch.Elapsed why = Stopwatch.elapsed(timed.get(0), now).orElseThrow();
        assertThat(why).isNotInstanceOf(Stopwatch.Minutes.class);
      } else {
        scene.slip.apply(change);
      }
      assertThat(scene.timed()).hasSizeLessThanOrEqualTo(1);
      assertThat(scene.minutes()).isBetween(before, before + 960);
    }
  }

  /** Each stop rounds, so it is off by half a minute at most; in all it is less than 16 hours. */
  @Property(tries = 300)
  void whatIsCountedIsTheTimeThatSomethingRanToHalfAMinuteAStop(
      @ForAll("touches") List<Touch> touches) {
    Scene scene = new Scene();
    Instant now = NOON;
    Optional<Step> running = Optional.empty();
    long ran = 0;
    int stops = 0;
    for (Touch touch : touches) {
      long seconds = Math.floorMod(touch.seconds(), 4_000L);
      now = now.plusSeconds(seconds);
      scene.slip.apply(scene.touch(touch, now));
      Optional<Step> after = Stopwatch.running(scene.slip.almanac());
      ran += running.isPresent() ? seconds : 0;
      stops += running.isPresent() && !running.map(Step::id).equals(after.map(Step::id)) ? 1 : 0;
      running = after;
    }
    if (running.isPresent()) {
      scene.slip.apply(Stopwatch.stop(scene.slip.almanac(), running.get().id(), now));
      stops++;
    }
    assertThat(Math.abs(scene.minutes() * 60L - ran)).isLessThanOrEqualTo(30L * stops);
  }

  /** A timed step that is stopped later has the more minutes, never fewer. */
  @Property(tries = 300)
  void longerIsNeverFewerMinutes(
      @ForAll @net.jqwik.api.constraints.LongRange(min = 0, max = 57_600) long one,
      @ForAll @net.jqwik.api.constraints.LongRange(min = 0, max = 57_600) long other) {
    Step step = new Scene().steps.get(0);
    Step timed = hullalmanac.core.record.With.component(step, "timedSince", Optional.of(NOON));
    int shorter = count(timed, Math.min(one, other));
    int longer = count(timed, Math.max(one, other));
    assertThat(longer).isGreaterThanOrEqualTo(shorter);
    assertThat(Math.abs(longer * 60L - Math.max(one, other))).isLessThanOrEqualTo(30);
  }

  private static int count(Step timed, long seconds) {
    Instant then = NOON.plus(Duration.ofSeconds(seconds));
    return ((Stopwatch.Minutes) Stopwatch.elapsed(timed, then).orElseThrow()).count();
  }
}
