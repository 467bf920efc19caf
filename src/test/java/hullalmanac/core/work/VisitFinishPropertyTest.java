package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static hullalmanac.core.work.Slip.ready;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds whatever was done in a visit, on whatever lay there. */
class VisitFinishPropertyTest {
  private static final int SURFACES = 3;

  /**
   * One step.
   *
   * @param surfaces a bit each; none means the whole boat
   * @param daysOn after the first day of the visit
   */
  record Did(StepKind kind, int surfaces, int daysOn, int passes) {}

  /** What lay on a surface before, and what water did on it in the visit. */
  record Lay(boolean base, boolean topper, boolean ended, Optional<WaterBehaviour> water) {}

  private static Arbitrary<List<Did>> steps(int mostDays) {
    return Combinators.combine(
            Arbitraries.of(StepKind.class),
            Arbitraries.integers().between(0, 7),
            Arbitraries.integers().between(0, mostDays),
            Arbitraries.integers().between(1, 3))
        .as(Did::new)
        .list()
        .ofMaxSize(5)
        .map(VisitFinishPropertyTest::inOrder);
  }

  /** Nobody polishes after protecting: kinds and days go up together. */
  private static List<Did> inOrder(List<Did> steps) {
    List<Did> byKind = steps.stream().sorted(Comparator.comparing(Did::kind)).toList();
    int[] days = steps.stream().mapToInt(Did::daysOn).sorted().toArray();
    return IntStream.range(0, days.length)
        .mapToObj(
            i ->
                new Did(
                    byKind.get(i).kind(),
                    byKind.get(i).surfaces(),
                    days[i],
                    byKind.get(i).passes()))
        .toList();
  }

  @Provide
  Arbitrary<List<Did>> works() {
    return steps(2);
  }

  @Provide
  Arbitrary<List<Did>> daysWorks() {
    return steps(0);
  }

  @Provide
  Arbitrary<List<Lay>> before() {
    return Combinators.combine(
            Arbitraries.of(true, true, false),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false, false),
            Arbitraries.of(WaterBehaviour.class).optional())
        .as(Lay::new)
        .list()
        .ofSize(SURFACES);
  }

  /** A boat, what lay on it, and one planned visit. */
  private static final class Scene {
    final Slip slip = new Slip();
    final List<Surface> surfaces =
        List.of(
            slip.surface(SurfaceKind.TOPSIDES),
            slip.surface(SurfaceKind.TRANSOM),
            slip.surface(SurfaceKind.COCKPIT));
    final Product sealant = slip.product(ProductKind.POLYMER_SEALANT);
    final Product spray = slip.product(ProductKind.SILICA_SPRAY);
    final List<Coat> before;
    final Visit visit;

    Scene(List<Lay> lays) {
      for (int i = 0; i < SURFACES; i++) {
        lie(surfaces.get(i), lays.get(i));
      }
      before = slip.almanac().coats();
      visit = slip.planned(DAY, surfaces.toArray(Surface[]::new));
      for (int i = 0; i < SURFACES; i++) {
        Surface surface = surfaces.get(i);
        lays.get(i).water().ifPresent(w -> slip.water(visit, surface, DAY, w));
      }
    }

    private void lie(Surface surface, Lay lay) {
      if (!lay.base()) {
        return;
      }
      Coat.Ending sanded =
          new Coat.Ending(DAY.minusDays(20), CoatEnd.STRIPPED, EndState.FLAT, "sanded");
      slip.coat(surface, sealant, DAY.minusYears(2));
      Coat base =
          slip.coat(
              surface,
              sealant,
              DAY.minusYears(1),
              Optional.empty(),
              lay.ended() ? Optional.of(sanded) : Optional.empty());
      if (lay.topper()) {
        slip.coat(surface, spray, DAY.minusDays(90), Optional.of(base), Optional.empty());
      }
    }

    void work(List<Did> steps) {
      slip.apply(Edit.remove(InRecord.steps(slip.almanac(), visit)));
      slip.step(visit, StepKind.INSPECT);
      for (Did did : steps) {
        Surface[] on =
            IntStream.range(0, SURFACES)
                .filter(i -> (did.surfaces() & (1 << i)) != 0)
                .mapToObj(surfaces::get)
                .toArray(Surface[]::new);
        Product product = did.kind() == StepKind.TOP ? spray : sealant;
        LocalDate day = DAY.plusDays(did.daysOn());
        Step step = slip.step(visit, did.kind(), day, Optional.of(product), on);
        slip.change(
            step, did.kind(), Optional.of(product), Optional.empty(), Optional.of(did.passes()));
      }
    }

    void finish() {
      slip.finish(visit, DAY);
    }

    /** Each surface was done so many days later. */
    void later(List<Integer> days) {
      Visit v = slip.now(visit);
      List<Visit.Part> parts = new ArrayList<>();
      for (int i = 0; i < v.surfaces().size(); i++) {
        Visit.Part p = v.surfaces().get(i);
        LocalDate on = p.doneOn().orElseThrow().plusDays(days.get(i));
        parts.add(new Visit.Part(p.surface(), p.state(), Optional.of(on), p.note()));
      }
      change(Altered.parts(v, v.plan(), parts));
    }

    void change(Visit v) {
      slip.apply(VisitChange.of(slip.almanac(), slip.ids, visit.id(), Edit.put(v)));
    }

    /** The coats without their identity. */
    List<List<Object>> coats() {
      List<List<Object>> coats = new ArrayList<>();
      for (Coat c : slip.almanac().coats()) {
        Object over =
            c.over().map(o -> like(InRecord.row(slip.almanac().coats(), o))).orElse(List.of());
        coats.add(List.of(like(c), over, c.ending(), c.layers()));
      }
      return coats;
    }

    private static List<Object> like(Coat c) {
      return List.of(c.surface(), c.product(), c.since());
    }
  }

  @Property(tries = 150)
  void finishingTwiceIsFinishingOnce(
      @ForAll("works") List<Did> steps, @ForAll("before") List<Lay> before) {
    Scene scene = new Scene(before);
    scene.work(steps);
    scene.finish();
    Edit again = ready(scene.slip.finishing(scene.visit, DAY));
    assertThat(again.isEmpty()).as("%s", again).isTrue();
  }

  @Property(tries = 150)
  void takingTheVisitOutPutsBackWhatWasThere(
      @ForAll("works") List<Did> steps, @ForAll("before") List<Lay> before) {
    Scene scene = new Scene(before);
    scene.work(steps);
    scene.finish();
    scene.slip.apply(Removal.of(scene.slip.almanac(), scene.visit));
    assertThat(scene.slip.almanac().coats()).isEqualTo(scene.before);
  }

  @Property(tries = 150)
  void aCorrectedVisitIsLikeOneThatWasRightAtOnce(
      @ForAll("daysWorks") List<Did> wrong,
      @ForAll("daysWorks") List<Did> right,
      @ForAll("before") List<Lay> before) {
    Scene corrected = new Scene(before);
    corrected.work(wrong);
    corrected.finish();
    corrected.work(right);
    corrected.finish();
    Scene atOnce = new Scene(before);
    atOnce.work(right);
    atOnce.finish();
    assertThat(corrected.coats()).containsExactlyInAnyOrderElementsOf(atOnce.coats());
    corrected.slip.apply(Removal.of(corrected.slip.almanac(), corrected.visit));
    assertThat(corrected.slip.almanac().coats()).isEqualTo(corrected.before);
  }

  /** Surfaces are often done later than was planned, each on a day of its own. */
  @Property(tries = 80)
  void daysOfSurfacesCanBeCorrectedAndTheVisitStillBeTakenOut(
      @ForAll("works") List<Did> steps,
      @ForAll("before") List<Lay> before,
      @ForAll("daysLate") List<Integer> daysLate) {
    Scene scene = new Scene(before);
    scene.work(steps);
    scene.finish();
    List<List<Object>> atOnce = scene.coats();
    Visit done = scene.slip.now(scene.visit);
    scene.later(daysLate);
    Edit again = ready(scene.slip.finishing(scene.visit, DAY));
    assertThat(again.isEmpty()).as("%s", again).isTrue();
    scene.change(done);
    assertThat(scene.coats()).containsExactlyInAnyOrderElementsOf(atOnce);
    scene.later(daysLate);
    scene.later(List.of(1, 0, 2));
    scene.slip.apply(Removal.of(scene.slip.almanac(), scene.visit));
    assertThat(scene.slip.almanac().coats()).isEqualTo(scene.before);
  }

  @Provide
  Arbitrary<List<Integer>> daysLate() {
    return Arbitraries.integers().between(0, 5).list().ofSize(SURFACES);
  }

  @Property(tries = 150)
  void aSurfaceEndsWithTheCoatThatWasLaidLastAndNoOther(
      @ForAll("works") List<Did> steps, @ForAll("before") List<Lay> before) {
    Scene scene = new Scene(before);
    scene.work(steps);
    scene.finish();
    LocalDate after = DAY.plusDays(3);
    for (int i = 0; i < SURFACES; i++) {
      int bit = 1 << i;
      List<StepKind> on =
          steps.stream()
              .filter(s -> s.surfaces() == 0 || (s.surfaces() & bit) != 0)
              .map(Did::kind)
              .toList();
      Surface surface = scene.surfaces.get(i);
      List<Coat> laid = scene.slip.laid(scene.visit, surface);
      List<Coat> serving = scene.slip.serving(surface, after);
      boolean stripped = on.contains(StepKind.CUT) || on.contains(StepKind.POLISH);
      if (on.contains(StepKind.PROTECT) || stripped) {
        assertThat(serving).isEqualTo(laid);
      } else if (on.contains(StepKind.TOP)) {
        assertThat(serving).containsAll(laid).hasSizeLessThanOrEqualTo(2);
      } else {
        assertThat(laid).isEmpty();
      }
      assertThat(laid)
          .hasSize((on.contains(StepKind.PROTECT) ? 1 : 0) + (on.contains(StepKind.TOP) ? 1 : 0));
    }
  }
}
