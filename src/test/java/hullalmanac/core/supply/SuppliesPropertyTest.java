package hullalmanac.core.supply;

import static hullalmanac.core.supply.Locker.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.VisitChange;
import hullalmanac.core.work.VisitFinish;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Whatever is finished, taken back and corrected in whatever order, no ml is lost or counted twice.
 */
class SuppliesPropertyTest {
  private static final int VISITS = 3;
  private static final double TOPSIDES = 23;
  private static final double TRANSOM = 3;
  private static final double ML = 8;

  /** What a person does next. */
  enum Kind {
    FINISH,
    UNDO,
    PASSES,
    TRANSOM_LEFT_OR_DONE
  }

  /** One thing done to one visit. */
  record Move(Kind kind, int visit, int passes) {}

  /** What a visit is, apart from the record. */
  record Model(boolean done, boolean transomLeft, int passes) {
    double drawn() {
      return done ? ML * passes * (TOPSIDES + (transomLeft ? 0 : TRANSOM)) : 0;
    }

    double needed() {
      return done ? 0 : ML * passes * (TOPSIDES + TRANSOM);
    }
  }

  /** The record and what should be true of it, and how both were before. */
  private static final class Scene {
    private final Locker locker = new Locker();
    private final Product polish = locker.product(ProductKind.POLISH);
    private final List<Bottle> bottles = new ArrayList<>();
    private final List<Id<Visit>> visits = new ArrayList<>();
    private final List<Id<Step>> steps = new ArrayList<>();
    private final Deque<Almanac> before = new ArrayDeque<>();
    private final Deque<Model[]> modelsBefore = new ArrayDeque<>();
    private Model[] models = new Model[VISITS];

    Scene() {
      bottles.add(bottle(200));
      bottles.add(bottle(2));
      for (int v = 0; v < VISITS; v++) {
        Visit visit =
            locker.visit(
                TODAY.minusDays(v * 2L), VisitStatus.PLANNED, locker.topsides, locker.transom);
        Optional<Id<Bottle>> named = v == 0 ? Optional.of(bottles.get(0).id()) : Optional.empty();
        steps.add(locker.step(visit, StepKind.POLISH, polish, named, 1).id());
        visits.add(visit.id());
        models[v] = new Model(false, false, 1);
      }
    }

    private Bottle bottle(int daysOpen) {
      return locker.bottle(
          polish, Optional.of(TODAY.minusDays(daysOpen)), Optional.empty(), Optional.empty());
    }

    private Visit visit(int v) {
      return locker.almanac().visits().stream()
          .filter(x -> x.id().equals(visits.get(v)))
          .findFirst()
          .orElseThrow();
    }

    private Step step(int v) {
      return locker.almanac().steps().stream()
          .filter(x -> x.id().equals(steps.get(v)))
          .findFirst()
          .orElseThrow();
    }

    void move(Move move) {
      Model model = models[move.visit()];
      switch (move.kind()) {
        case UNDO -> undo();
        case FINISH -> {
          Visit visit = visit(move.visit());
          become(
              move.visit(),
              new Model(true, model.transomLeft(), model.passes()),
              VisitFinish.finish(locker.almanac(), locker.ids, visit.id(), TODAY));
        }
        case PASSES ->
            become(
                move.visit(),
                new Model(model.done(), model.transomLeft(), move.passes()),
                VisitChange.of(
                    locker.almanac(),
                    locker.ids,
                    visits.get(move.visit()),
                    Edit.put(
                        With.component(step(move.visit()), "passes", Optional.of(move.passes())))));
        default -> {
          if (model.done()) {
            become(
                move.visit(),
                new Model(true, !model.transomLeft(), model.passes()),
                VisitChange.of(
                    locker.almanac(),
                    locker.ids,
                    visits.get(move.visit()),
                    Edit.put(turned(move.visit(), !model.transomLeft()))));
          }
        }
      }
    }

    private Visit turned(int v, boolean left) {
      Visit visit = visit(v);
      List<Visit.Part> parts =
          visit.surfaces().stream()
              .map(
                  p ->
                      p.surface().equals(locker.transom.id())
                          ? new Visit.Part(
                              p.surface(),
                              left ? WorkState.LEFT : WorkState.DONE,
                              left ? Optional.empty() : Optional.of(visit.day()),
                              "")
                          : p)
              .toList();
      return With.component(visit, "surfaces", parts);
    }

    private void become(int v, Model model, Change change) {
      assertThat(change).isInstanceOf(Change.Ready.class);
      before.push(locker.almanac());
      modelsBefore.push(models);
      locker.apply(((Change.Ready) change).edit());
      models = models.clone();
      models[v] = model;
    }

    private void undo() {
      if (!before.isEmpty()) {
        locker.back(before.pop());
        models = modelsBefore.pop();
      }
    }

    void holds() {
      Supplies supplies = locker.supplies(TODAY.plusDays(7));
      double drawn = supplies.bottles().stream().mapToDouble(BottleLeft::drawn).sum();
      double needed = supplies.enough().stream().mapToDouble(e -> e.need().middle()).sum();
      assertThat(drawn)
          .isCloseTo(Arrays.stream(models).mapToDouble(Model::drawn).sum(), within(1e-6));
      assertThat(needed)
          .isCloseTo(Arrays.stream(models).mapToDouble(Model::needed).sum(), within(1e-6));
      assertThat(supplies.noBottle()).isZero();
      assertThat(locker.almanac().bottles()).containsExactlyInAnyOrderElementsOf(bottles);
    }
  }

  @Provide
  Arbitrary<List<Move>> moves() {
    return Combinators.combine(
            Arbitraries.of(Kind.class),
            Arbitraries.integers().between(0, VISITS - 1),
            Arbitraries.integers().between(1, 4))
        .as(Move::new)
        .list()
        .ofMaxSize(12);
  }

  @Property(tries = 200)
  void whatStepsDrewAndWhatTheyStillNeedIsAllThereIs(@ForAll("moves") List<Move> moves) {
    Scene scene = new Scene();
    scene.holds();
    for (Move move : moves) {
      scene.move(move);
      scene.holds();
    }
  }

  @Property(tries = 50)
  void theOrderOfFinishingDoesNotMatter(@ForAll("orders") List<Integer> order) {
    Scene scene = new Scene();
    order.forEach(v -> scene.move(new Move(Kind.FINISH, v, 1)));
    Scene other = new Scene();
    for (int v = 0; v < VISITS; v++) {
      other.move(new Move(Kind.FINISH, v, 1));
    }
    assertThat(drawn(scene)).isEqualTo(drawn(other));
  }

  private static List<Long> drawn(Scene scene) {
    return scene.locker.supplies(TODAY).bottles().stream()
        .map(b -> Math.round(b.drawn() * 1000))
        .toList();
  }

  @Provide
  Arbitrary<List<Integer>> orders() {
    return Arbitraries.shuffle(0, 1, 2);
  }
}
