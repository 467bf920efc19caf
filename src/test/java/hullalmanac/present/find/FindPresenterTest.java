package hullalmanac.present.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.find.Hit;
import hullalmanac.core.find.HitKind;
import hullalmanac.core.find.Target;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.TaskRunner;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finding on the sample record, without a toolkit. */
class FindPresenterTest {
  private final AtomicReference<FindState> state = new AtomicReference<>();
  private final List<Target> taken = new ArrayList<>();

  private FindPresenter show(TaskRunner tasks, Fleet fleet) {
    FindPresenter presenter = new FindPresenter(tasks, taken::add);
    presenter.onChange(state::set);
    presenter.show(fleet);
    return presenter;
  }

  private FindPresenter sample() {
    return show(new InlineTaskRunner(), OpenSample.fleet());
  }

  private static Boat boat(String name) {
    return OpenSample.fleet().almanac().boats().stream()
        .filter(b -> b.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Boat named(Boat boat, String name) {
    return With.component(boat, "name", name);
  }

  private List<String> titles() {
    return state.get().hits().stream().map(Hit::title).toList();
  }

  /** Keeps what it is given until it is told to do it. */
  private static final class Waiting implements TaskRunner {
    private final List<Runnable> work = new ArrayList<>();

    @Override
    public <T> void run(
        Lane lane, Supplier<T> wanted, Consumer<T> done, Consumer<RuntimeException> failed) {
      assertThat(lane).isEqualTo(Lane.COMPUTING);
      work.add(() -> new InlineTaskRunner().run(lane, wanted, done, failed));
    }
  }

  @Test
  void isClosedUntilOpenedAndSaysWhatToType() {
    FindPresenter presenter = sample();
    assertThat(state.get()).isEqualTo(FindState.closed());
    presenter.type("siskin");
    assertThat(state.get()).isEqualTo(FindState.closed());
    presenter.open();
    assertThat(state.get().open()).isTrue();
    assertThat(state.get().sentence()).startsWith("Type the beginning of a name");
    assertThat(state.get().hits()).isEmpty();
  }

  @Test
  void takesTheHitChosenAndCloses() {
    FindPresenter presenter = sample();
    presenter.open();
    presenter.type("sand");
    assertThat(titles()).containsExactly("Sanderling", "Sandpiper");
    assertThat(state.get().chosen()).isZero();
    presenter.up();
    assertThat(state.get().chosen()).isZero();
    presenter.down();
    presenter.down();
    assertThat(state.get().chosen()).isEqualTo(1);
    presenter.take();
    assertThat(taken).containsExactly(new Target.ToBoat(boat("Sandpiper").id()));
    assertThat(state.get()).isEqualTo(FindState.closed());
    presenter.open();
    assertThat(state.get().text()).isEmpty();
  }

  /** Somebody about to press Enter is not left with nothing because something was saved. */
  @Test
  void keepsItsHitsAndTheOneChosenWhileTheRecordIsReadAgain() {
    Waiting tasks = new Waiting();
    FindPresenter presenter = show(tasks, OpenSample.fleet());
    presenter.open();
    tasks.work.remove(0).run();
    presenter.type("sand");
    presenter.down();
    presenter.show(OpenSample.fleet());
    assertThat(titles()).containsExactly("Sanderling", "Sandpiper");
    assertThat(state.get().chosen()).isEqualTo(1);
    assertThat(tasks.work).as("it is read meanwhile").hasSize(1);
    tasks.work.remove(0).run();
    assertThat(titles()).containsExactly("Sanderling", "Sandpiper");
    assertThat(state.get().chosen()).isEqualTo(1);
  }

  /** What is found in may be of before the last change. */
  @Test
  void doesNotGoToWhatIsNoLongerInTheRecord() {
    Waiting tasks = new Waiting();
    FindPresenter presenter = show(tasks, OpenSample.fleet());
    presenter.open();
    tasks.work.remove(0).run();
    presenter.type("sanderling");
    Almanac almanac = OpenSample.fleet().almanac();
    Change.Ready removal = (Change.Ready) Removal.of(almanac, boat("Sanderling"));
    presenter.show(
        OpenSample.fleet().next(almanac.with(removal.edit()), OpenSample.fleet().asOf()));
    presenter.take();
    assertThat(taken).isEmpty();
    assertThat(state.get().sentence()).isEqualTo("That is no longer in the record.");
  }

  @Test
  void startsAtTheBestHitAgainAfterEachLetter() {
    FindPresenter presenter = sample();
    presenter.open();
    presenter.type("s");
    presenter.choose(5);
    presenter.choose(99_999);
    assertThat(state.get().chosen()).isEqualTo(5);
    presenter.type("sk");
    assertThat(state.get().chosen()).isZero();
    assertThat(titles().get(0)).isEqualTo("Skua");
  }

  @Test
  void takesNothingWhereNothingIsFoundAndLeavesWithoutTaking() {
    FindPresenter presenter = sample();
    presenter.open();
    presenter.type("qqq");
    presenter.down();
    presenter.take();
    assertThat(state.get().open()).isTrue();
    presenter.leave();
    assertThat(state.get()).isEqualTo(FindState.closed());
    presenter.take();
    assertThat(taken).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "qqq | No word in the record begins with “qqq”. Try fewer letters of it.",
        "siskin Qüq | No word in the record begins with “Qüq”. Try fewer letters of it.",
        "siskin wryneck | Nothing has all of these words. Leave one out.",
        "?! | Type a letter or a digit."
      })
  void saysTheOneUsefulThingWhenNothingIsFound(String typed, String sentence) {
    FindPresenter presenter = sample();
    presenter.open();
    presenter.type(typed);
    assertThat(state.get().hits()).isEmpty();
    assertThat(state.get().sentence()).isEqualTo(sentence);
  }

  @Test
  void saysThatThereIsNothingInAnEmptyRecord() {
    FindPresenter presenter =
        show(
            new InlineTaskRunner(),
            Fleet.of(Almanac.empty(Business.unnamed()), OpenSample.fleet().asOf()));
    presenter.open();
    assertThat(state.get().sentence()).startsWith("Nothing has been written down yet");
    presenter.type("siskin");
    assertThat(state.get().sentence()).startsWith("Nothing has been written down yet");
  }

  @Test
  void showsTheLastEightBoatsOpenedTheNewestFirst() {
    FindPresenter presenter = sample();
    List<Boat> boats = OpenSample.fleet().almanac().boats().subList(0, 9);
    boats.forEach(b -> presenter.opened(b.id()));
    presenter.opened(boats.get(4).id());
    presenter.opened(new Id<>(Long.MAX_VALUE));
    presenter.open();
    assertThat(state.get().heading()).isEqualTo("Opened last");
    assertThat(titles())
        .as("one of the eight is not of this record")
        .containsExactly(
            boats.get(4).name(),
            boats.get(8).name(),
            boats.get(7).name(),
            boats.get(6).name(),
            boats.get(5).name(),
            boats.get(3).name(),
            boats.get(2).name());
    assertThat(state.get().hits()).extracting(Hit::kind).containsOnly(HitKind.BOAT);
    presenter.take();
    assertThat(taken).containsExactly(new Target.ToBoat(boats.get(4).id()));
  }

  @Test
  void makesTheIndexWhenItIsFirstWantedAndOnlyOnce() {
    Waiting tasks = new Waiting();
    FindPresenter presenter = show(tasks, OpenSample.fleet());
    assertThat(tasks.work).isEmpty();
    presenter.open();
    presenter.type("sis");
    assertThat(state.get().sentence()).isEqualTo("Reading the record …");
    assertThat(tasks.work).hasSize(1);
    tasks.work.get(0).run();
    assertThat(titles()).contains("Siskin");
    presenter.leave();
    presenter.open();
    assertThat(tasks.work).hasSize(1);
  }

  @Test
  void findsInTheNewestRecordOnly() {
    Waiting tasks = new Waiting();
    FindPresenter presenter = show(tasks, OpenSample.fleet());
    presenter.open();
    presenter.type("siskin");
    Almanac changed = OpenSample.fleet().almanac().with(Edit.put(named(boat("Siskin"), "Osprey")));
    presenter.show(OpenSample.fleet().next(changed, OpenSample.fleet().asOf()));
    assertThat(state.get().hits()).isEmpty();
    tasks.work.get(1).run();
    FindState newest = state.get();
    tasks.work.get(0).run();
    assertThat(state.get()).isEqualTo(newest);
    assertThat(newest.sentence()).contains("begins with “siskin”");
    presenter.type("osp");
    assertThat(titles()).contains("Osprey");
  }

  @Test
  void waitsForTheRecordWhenOpenedBeforeItIsRead() {
    FindPresenter presenter = new FindPresenter(new InlineTaskRunner(), taken::add);
    presenter.onChange(state::set);
    presenter.open();
    presenter.type("siskin");
    assertThat(state.get().sentence()).isEqualTo("Reading the record …");
    presenter.show(OpenSample.fleet());
    assertThat(titles()).first().isEqualTo("Siskin");
  }

  @Test
  void refusesAChoiceThatIsNoHit() {
    assertThatThrownBy(() -> new FindState(true, "x", "", List.of(), 0, ""))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
