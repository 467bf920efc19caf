package hullalmanac.present.card;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Beside;
import hullalmanac.fixture.Wall;
import hullalmanac.present.shell.Notice;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The card of a visit that was begun, on a record of one's own, under a clock set by hand. */
@Tag("slow")
class CardPresenterTest {
  @TempDir Path folder;
  private final Wall wall = new Wall("2026-05-01T09:00:00Z");
  private final AtomicReference<Optional<CardState>> card = new AtomicReference<>();
  private final AtomicReference<CardClock> clock = new AtomicReference<>();
  private final AtomicInteger sounds = new AtomicInteger();
  private Bench bench;
  private CardPresenter presenter;
  private int acid;

  /** A visit to Siskin whose second step is done with acid, at whatever it was before. */
  @BeforeEach
  void open() {
    bench = Bench.open(folder, wall);
    presenter = bench.presenter().card();
    presenter.onChange(card::set);
    presenter.onClock(clock::set);
    presenter.onSound(sounds::incrementAndGet);
    Boat boat = bench.boat("Siskin");
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().beginVisit();
    bench.sheet().press("add step");
    acid = 1;
    Step step = steps().get(acid);
    Product product =
        bench.almanac().products().stream()
            .filter(p -> p.hazards().contains(Hazard.ACID))
            .findFirst()
            .orElseThrow();
    bench
        .presenter()
        .edit(
            "acid",
            almanac ->
                Edit.put(
                    With.component(
                        With.component(
                            With.component(step, "kind", StepKind.DECONTAMINATE),
                            "product",
                            Optional.of(product.id())),
                        "bottle",
                        Optional.empty())));
    bench.presenter().openCard();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private Visit visit() {
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(bench.boat("Siskin").id()))
        .filter(v -> v.status() == VisitStatus.PLANNED)
        .filter(v -> v.day().equals(LocalDate.of(2026, 5, 1)) && v.plan().isEmpty())
        .findFirst()
        .orElseThrow();
  }

  private List<Step> steps() {
    return bench.almanac().steps().stream()
        .filter(s -> s.visit().equals(visit().id()))
        .sorted(Comparator.comparingInt(Step::order))
        .toList();
  }

  private CardState.Now now() {
    return card.get().orElseThrow().now().orElseThrow();
  }

  private void pass(int seconds) {
    wall.pass(Duration.ofSeconds(seconds));
    presenter.lookAtTheClock();
  }

  private void readAll() {
    for (int i = 0; i < now().stops().size(); i++) {
      presenter.read(i);
    }
  }

  @Test
  void showsTheStepsAndTheFirstInFull() {
    CardState state = card.get().orElseThrow();
    assertThat(state.title()).isEqualTo("Siskin");
    assertThat(state.facts()).startsWith("Friday, 1 May 2026 · ");
    assertThat(state.steps()).hasSameSizeAs(steps());
    assertThat(state.steps().get(0).shown()).isTrue();
    assertThat(now().heading()).startsWith("1 of " + steps().size() + ": ");
    assertThat(state.runoff()).startsWith("Runoff: ");
    assertThat(state.standing()).contains("local codes");
    presenter.go(1);
    assertThat(now().heading()).startsWith("2 of ").contains("decontaminate");
    presenter.go(-1);
    presenter.go(-1);
    assertThat(now().heading()).startsWith("1 of ");
  }

  @Test
  void theDilutionIsWorkedOutForTheBottleInHandWaterFirst() {
    presenter.choose(acid);
    assertThat(now().mix())
        .containsExactly(
            "1 part and 4 parts water, 5 in all",
            "For 1 l: 800 ml water first, then 200 ml of the acid into it");
    presenter.bottle(500);
    assertThat(now().mix().get(1)).startsWith("For 500 ml: 400 ml water first, then 100 ml");
    assertThat(now().bottles()).filteredOn(CardState.Bottle::chosen).hasSize(1);
  }

  @Test
  void nothingGoesOnBeforeWhatStopsItWasRead() {
    presenter.choose(acid);
    assertThat(now().stops()).isNotEmpty().noneMatch(CardState.StopLine::read);
    assertThat(now().free()).isFalse();
    presenter.time();
    presenter.tickStep();
    assertThat(now().timing()).isFalse();
    assertThat(now().done()).isFalse();
    readAll();
    assertThat(now().free()).isTrue();
    presenter.tickStep();
    assertThat(now().done()).isTrue();
    assertThat(card.get().orElseThrow().steps().get(acid).done()).isTrue();
    presenter.tickStep();
    assertThat(now().done()).isFalse();
  }

  @Test
  void aDwellSurvivesAStepChangeAndSoundsOnceAPhase() {
    presenter.choose(acid);
    readAll();
    presenter.time();
    assertThat(presenter.timing()).isTrue();
    assertThat(clock.get().large()).isEqualTo("3:00");
    pass(20);
    assertThat(clock.get().large()).isEqualTo("2:40");
    presenter.choose(0);
    assertThat(clock.get().large()).isEmpty();
    assertThat(clock.get().rows().get(acid)).isEqualTo("2:40");
    pass(160);
    pass(1);
    assertThat(sounds.get()).isEqualTo(1);
    assertThat(clock.get().rows().get(acid)).isEqualTo("1:59");
    presenter.choose(acid);
    assertThat(clock.get().words()).isEqualTo("Rinse it off now");
    assertThat(clock.get().urgent()).isTrue();
    pass(130);
    assertThat(sounds.get()).isEqualTo(2);
    assertThat(clock.get().large()).isEqualTo("+0:11");
    presenter.time();
    assertThat(presenter.timing()).isFalse();
    assertThat(clock.get().large()).isEmpty();
  }

  @Test
  void aDwellThatEndsWhileNoCardIsShownIsSaidInTheWindow() {
    presenter.choose(acid);
    readAll();
    presenter.time();
    presenter.leave();
    assertThat(card.get()).isEmpty();
    pass(181);
    assertThat(sounds.get()).isEqualTo(1);
    assertThat(bench.shell().notices().stream().map(Notice::words))
        .contains("decontaminate on Siskin: rinse it off now");
    bench.presenter().openCard();
    presenter.choose(acid);
    assertThat(now().timing()).isTrue();
  }

  @Test
  void ticksAndTheTimeOfComingBackAreKeptAndStandInNoRecord() {
    Almanac before = bench.almanac();
    presenter.tick(0);
    presenter.back("16:30");
    assertThat(card.get().orElseThrow().backSaid())
        .isEqualTo("Expected back by 16:30. Tell someone.");
    presenter.leave();
    bench.presenter().openCard();
    assertThat(card.get().orElseThrow().checks().get(0).ticked()).isTrue();
    assertThat(card.get().orElseThrow().back()).isEqualTo("16:30");
    presenter.back("half past");
    assertThat(card.get().orElseThrow().backSaid()).contains("half past");
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void onWhatIsKnownOfABoatTheCardIsOfHerNextPlannedVisit() {
    Visit next = visit();
    presenter.leave();
    bench.presenter().openBoat(next.boat());
    bench.presenter().boats().change();
    bench.presenter().openCard();
    assertThat(bench.shell().trouble()).isEmpty();
    assertThat(presenter.shown()).contains(next.id());
  }

  private void dwells(int from, int to) {
    Product used =
        bench.almanac().products().stream()
            .filter(p -> steps().get(acid).product().equals(Optional.of(p.id())))
            .findFirst()
            .orElseThrow();
    Product.Handling handling =
        With.component(
            With.component(used.handling(), "dwellMin", Optional.of(from)),
            "dwellMax",
            Optional.of(to));
    bench
        .presenter()
        .edit("dwell", almanac -> Edit.put(With.component(used, "handling", handling)));
  }

  @Test
  void aDwellOfOneMinuteIsSaidInTheSingular() {
    presenter.choose(acid);
    dwells(1, 1);
    assertThat(now().dwell()).isEqualTo("Dwells 1 minute. Do not let it dry.");
    dwells(0, 1);
    assertThat(now().dwell()).isEqualTo("Dwells up to 1 minute. Do not let it dry.");
    dwells(1, 2);
    assertThat(now().dwell()).isEqualTo("Dwells 1 to 2 minutes. Do not let it dry.");
  }

  @Test
  void aCardWhoseVisitIsRemovedIsLeft() {
    bench.sheet().press("remove");
    assertThat(card.get()).isEmpty();
    assertThat(presenter.shown()).isEmpty();
  }

  /** Lines that were broken to fit the page are put together again. */
  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void onPaperEveryStepStandsInFullWithWhatIsToBeReadAndWhatComesFirst() {
    Beside beside = new Beside();
    bench.presenter().reaches(beside);
    presenter.back("17:30");
    presenter.print();
    String paper = flat(String.join("\n", beside.printed().get(0).texts()));
    for (int i = 0; i < steps().size(); i++) {
      presenter.choose(i);
      CardState.Now now = card.get().orElseThrow().now().orElseThrow();
      now.stops().forEach(s -> assertThat(paper).contains(flat(s.text())));
      now.mix().forEach(m -> assertThat(paper).contains(flat(m)));
      now.cautions().forEach(c -> assertThat(paper).contains(flat(c)));
      assertThat(paper).contains(flat(now.dwell()));
    }
    assertThat(paper)
        .contains("Siskin")
        .contains("17:30")
        .contains(flat(card.get().orElseThrow().standing()));
    presenter.leave();
    presenter.print();
    assertThat(beside.printed()).hasSize(1);
  }
}
