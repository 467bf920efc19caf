package hullalmanac.present.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.ahead.AheadState;
import hullalmanac.present.boats.BoatsState;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Acts that come while the record is still being reckoned after the ones before. */
class BusyTest {
  @TempDir Path folder;
  private final Lanes lanes = new Lanes();
  private final AtomicReference<ShellState> shell = new AtomicReference<>();
  private final AtomicReference<BoatsState> boats = new AtomicReference<>();
  private RecordService record;
  private ShellPresenter presenter;
  private Boat boat;

  /** The record is quick and reckoning slow: it waits until it is let go. */
  private static final class Lanes implements TaskRunner {
    private final Deque<Runnable> reckoning = new ArrayDeque<>();

    @Override
    public <T> void run(
        Lane lane, Supplier<T> work, Consumer<T> done, Consumer<RuntimeException> failed) {
      if (lane == Lane.DATABASE) {
        done.accept(work.get());
      } else {
        reckoning.add(() -> done.accept(work.get()));
      }
    }

    void letGo() {
      while (!reckoning.isEmpty()) {
        letOneGo();
      }
    }

    void letOneGo() {
      reckoning.poll().run();
    }
  }

  @BeforeEach
  void open() {
    RecordService.Surroundings surroundings =
        new RecordService.Surroundings(
            Clock.fixed(Instant.parse("2026-05-01T09:00:00Z"), ZoneOffset.UTC),
            new Random(3)::nextLong,
            "desk",
            1);
    RecordService.create(folder, surroundings);
    record = RecordService.open(folder, surroundings);
    record.change("a boat", Edit.all(new Made(48.4).almanac()));
    boat = record.almanac().boats().get(0);
    presenter = new ShellPresenter(FleetService.of(record), new EditService(record), lanes);
    presenter.onChange(shell::set);
    presenter.boats().onChange(boats::set);
    presenter.load();
    lanes.letGo();
  }

  @AfterEach
  void close() {
    record.close();
  }

  private void rename(String name, Runnable done) {
    presenter.edit(name, almanac -> Edit.put(With.component(boat, "name", name)), done);
  }

  @Test
  void anActThatIsRefusedDoesNotHideTheOneBefore() {
    rename("One", () -> {});
    presenter.change(
        "refused",
        almanac ->
            Change.refused(new Problem(Kind.BOAT, "tern", "name", "it is not so", "Mend it")));
    assertThat(shell.get().trouble()).contains("It is not so. Mend it.");
    lanes.letGo();
    assertThat(boats.get().list()).extracting(BoatsState.Item::name).containsExactly("One");
    assertThat(shell.get().undo()).contains("One");
  }

  @Test
  void whatFollowsAnActFollowsWhenTheRecordShowsIt() {
    List<String> shown = new ArrayList<>();
    rename("One", () -> shown.add("one: " + boats.get().list().get(0).name()));
    rename("Two", () -> shown.add("two: " + boats.get().list().get(0).name()));
    assertThat(shown).isEmpty();
    lanes.letGo();
    assertThat(shown).containsExactly("one: Two", "two: Two");
  }

  /** Opens the record as at the start, as far as what is due. */
  private AtomicReference<AheadState> openAgain() {
    AtomicReference<AheadState> ahead = new AtomicReference<>();
    presenter = new ShellPresenter(FleetService.of(record), new EditService(record), lanes);
    presenter.onChange(shell::set);
    presenter.boats().onChange(boats::set);
    presenter.ahead().onChange(ahead::set);
    presenter.load();
    assertThat(ahead.get()).isEqualTo(AheadState.waiting());
    lanes.letOneGo();
    return ahead;
  }

  @Test
  void whatIsDueIsShownBeforeAllElse() {
    AtomicReference<AheadState> ahead = openAgain();
    assertThat(ahead.get().heading()).isEqualTo("Friday, 1 May 2026");
    assertThat(shell.get().status()).contains("saved");
    assertThat(boats.get()).isEqualTo(BoatsState.waiting());
    lanes.letGo();
    assertThat(boats.get().list()).extracting(BoatsState.Item::name).containsExactly(boat.name());
  }

  @Test
  void anActWhileOnlyWhatIsDueIsShownIsShownEverywhere() {
    openAgain();
    List<String> shown = new ArrayList<>();
    rename("One", () -> shown.add(boats.get().list().get(0).name()));
    lanes.letGo();
    assertThat(shown).containsExactly("One");
    assertThat(boats.get().list()).extracting(BoatsState.Item::name).containsExactly("One");
  }
}
