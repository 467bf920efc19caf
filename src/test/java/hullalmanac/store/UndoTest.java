package hullalmanac.store;

import static hullalmanac.store.Setup.DAY;
import static hullalmanac.store.Setup.NOON;
import static hullalmanac.store.Setup.SETTING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.RowChange;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Stopwatch;
import hullalmanac.sample.SampleRecord;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class UndoTest {
  @TempDir Path folder;

  private final Almanac sample = unissued(SampleRecord.make().almanac());

  @BeforeEach
  void make() {
    Database.create(folder, SETTING);
  }

  /** The sample with its invoices as drafts: what was issued does not go out again. */
  private static Almanac unissued(Almanac sample) {
    return sample.with(
        Edit.put(
            sample.books().invoices().stream()
                .map(i -> With.component(i, "issue", Optional.empty()))
                .toList()));
  }

  private Database open() {
    return Database.open(folder, Database.Mode.READ_WRITE, DAY, SETTING);
  }

  private static Boat renamed(Boat boat, String name) {
    return With.component(boat, "name", name);
  }

  /** Some rows of the sample out, others in, with all that hangs on them whole. */
  private Edit random(Random random, Almanac now) {
    List<Row> out = new ArrayList<>(now.findings());
    out.addAll(now.photos());
    Collections.shuffle(out, random);
    List<Row> in = new ArrayList<>(sample.findings());
    in.addAll(sample.photos());
    Collections.shuffle(in, random);
    List<Row> gone = out.subList(0, Math.min(out.size(), random.nextInt(20)));
    List<Row> put = new ArrayList<>(in.subList(0, random.nextInt(20)));
    put.removeAll(gone);
    Boat boat = now.boats().get(random.nextInt(now.boats().size()));
    put.add(renamed(boat, "Renamed " + random.nextInt(1000)));
    return new Edit(Optional.empty(), put, gone);
  }

  @Test
  void anyRowOfTheRecordGoesOutAndComesBackByUndoAcrossRestarts() {
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(sample));
      assertThat(db.almanac()).isEqualTo(db.almanac().with(Edit.all(sample)));
      db.change("none", NOON, DAY, Edit.remove(sample.rows()));
      assertThat(db.almanac()).isEqualTo(Almanac.empty(sample.business()));
    }
    try (Database db = open()) {
      assertThat(db.undo(NOON, DAY)).get().extracting(Act::what).isEqualTo("none");
      assertThat(db.almanac().rows()).containsExactlyInAnyOrderElementsOf(sample.rows());
      assertThat(db.redo(NOON, DAY)).get().extracting(Act::what).isEqualTo("none");
      assertThat(db.almanac().rows()).isEmpty();
    }
  }

  @Test
  void undoAndRedoWalkThroughEveryStateBothWaysWhateverTheClockSays() {
    Random random = new Random(11);
    List<Almanac> states = new ArrayList<>();
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(sample));
      states.add(db.almanac());
      for (int i = 0; i < 12; i++) {
        Edit edit = random(random, states.get(i));
        db.change("edit " + i, NOON.minusSeconds(i), DAY, edit);
        assertThat(db.almanac()).isEqualTo(states.get(i).with(edit));
        states.add(db.almanac());
      }
    }
    int at = 12;
    for (int walk = 0; walk < 30; walk++) {
      try (Database db = open()) {
        boolean back = random.nextBoolean();
        Optional<Act> act = back ? db.undo(NOON, DAY) : db.redo(NOON, DAY);
        if (at == 12 && !back) {
          assertThat(act).isEmpty();
        } else if (back && at > 0) {
          assertThat(act).get().extracting(Act::what).isEqualTo("edit " + (at - 1));
          at--;
        } else if (!back) {
          assertThat(act).get().extracting(Act::what).isEqualTo("edit " + at);
          at++;
        }
        assertThat(db.almanac()).isEqualTo(states.get(at));
      }
    }
  }

  @Test
  void aNewActForgetsWhatCouldHaveBeenDoneAgain() {
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(sample));
      Boat boat = db.almanac().boats().get(0);
      db.change("one", NOON, DAY, Edit.put(renamed(boat, "One")));
      db.undo(NOON, DAY);
      assertThat(db.standing().redo()).isPresent();
      db.change("two", NOON, DAY, Edit.put(renamed(boat, "Two")));
      assertThat(db.standing().redo()).isEmpty();
      assertThat(db.standing().undo()).get().extracting(Act::what).isEqualTo("two");
    }
  }

  @Test
  void whatChangesNothingLeavesNoChangeInTheLog() {
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(sample));
      db.change("the same", NOON, DAY, Edit.all(sample));
      int changes =
          db.read(
              tx ->
                  tx.list(
                          """
                          SELECT count(*) AS n
                          FROM change
                          JOIN act ON act.id = act_id
                          WHERE what = 'the same'
                          """,
                          row -> row.whole("n"))
                      .get(0));
      assertThat(changes).isZero();
    }
  }

  @Test
  void saysWhatChangedOfABoatAndWhen() {
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(sample));
      Boat boat = db.almanac().boats().get(0);
      db.change("a new name", NOON.plusSeconds(60), DAY, Edit.put(renamed(boat, "New Name")));
      List<RowChange> history = db.history(Kind.BOAT, boat.id());
      RowChange newest = history.get(0);
      assertThat(newest.act().what()).isEqualTo("a new name");
      assertThat(newest.act().at()).isEqualTo(NOON.plusSeconds(60));
      assertThat(newest.fields())
          .containsExactly(
              new RowChange.Field("name", Optional.of(boat.name()), Optional.of("New Name")));
      assertThat(history).extracting(RowChange::table).contains("boat", "surface", "coat", "visit");
    }
  }

  @Test
  void theBinHoldsWhatWasTakenOutUntilItIsPutBack() {
    Made made = new Made(48.4);
    made.topsides();
    Almanac small = made.almanac();
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(small));
      db.change("the boat removed", NOON, DAY, Edit.remove(owned(small)));
      db.change("harbour added", NOON, DAY, Edit.put(new Made(50, 9).harbour("h2")));
      Act removed = db.bin().get(0);
      assertThat(removed.what()).isEqualTo("the boat removed");
      db.putBack(removed, NOON, DAY);
      assertThat(db.bin()).isEmpty();
      assertThat(db.almanac().rows()).containsAll(small.rows());
      db.undo(NOON, DAY);
      assertThat(db.almanac().boats()).isEmpty();
      assertThat(db.bin()).extracting(Act::what).containsExactly("the boat removed");
    }
  }

  private static List<Row> owned(Almanac small) {
    List<Row> rows = new ArrayList<>(small.surfaces());
    rows.addAll(small.boats());
    return rows;
  }

  /** Each step of the way in a program of its own. */
  @Test
  void aStepIsTimedOnAfterARestartAndItsStopIsUndoneAndDoneAgain() {
    Made made = new Made(48.4);
    made.topsides();
    Visit visit = With.component(made.visit(DAY, VisitWhy.DUE), "status", VisitStatus.PLANNED);
    Step wash = made.step(visit, StepKind.WASH, Optional.empty());
    Almanac before = made.almanac().with(Edit.put(visit));
    Instant start = NOON.plusSeconds(120);
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(before));
      db.change("wash timed", start, DAY, ready(Stopwatch.start(db.almanac(), wash.id(), start)));
    }
    Almanac timed;
    try (Database db = open()) {
      timed = db.almanac();
      assertThat(Stopwatch.running(timed).flatMap(Step::timedSince)).contains(start);
      Instant stop = start.plusSeconds(37 * 60);
      db.change("wash stopped", stop, DAY, ready(Stopwatch.stop(timed, wash.id(), stop)));
    }
    Almanac stopped;
    try (Database db = open()) {
      stopped = db.almanac();
      assertThat(Stopwatch.running(stopped)).isEmpty();
      assertThat(stopped.steps().get(0).minutes()).contains(37);
      db.undo(NOON, DAY);
    }
    try (Database db = open()) {
      assertThat(db.almanac()).isEqualTo(timed);
      db.redo(NOON, DAY);
    }
    try (Database db = open()) {
      assertThat(db.almanac()).isEqualTo(stopped);
      db.undo(NOON, DAY);
      db.undo(NOON, DAY);
      assertThat(db.almanac().steps()).containsExactly(wash);
    }
  }

  private static Edit ready(Change change) {
    return ((Change.Ready) change).edit();
  }

  @Test
  void whoWasToldOfDamageIsKeptAndTakenBack() {
    Made made = new Made(48.4);
    Surface topsides = made.topsides();
    Observation.Damage untold = new Observation.Damage("chip");
    Finding chip =
        made.finding(topsides, DAY, SurfaceState.DIRTY, Entered.GRID, Optional.empty(), untold);
    Observation.Told told = new Observation.Told("Ida Brook", DAY.plusDays(1));
    Finding after = With.component(chip, "seen", new Observation.Damage("chip", Optional.of(told)));
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(made.almanac()));
      db.change("told", NOON, DAY, Edit.put(after));
    }
    try (Database db = open()) {
      assertThat(db.almanac().findings()).containsExactly(after);
      db.undo(NOON, DAY);
      assertThat(db.almanac().findings()).containsExactly(chip);
    }
  }

  @Test
  void whatHangsInTheAirIsRefusedAndChangesNothing() {
    Made made = new Made(48.4);
    made.topsides();
    Almanac small = made.almanac();
    try (Database db = open()) {
      db.change("all", NOON, DAY, Edit.all(small));
      assertThatThrownBy(() -> db.change("x", NOON, DAY, Edit.remove(small.boats())))
          .isInstanceOf(RecordException.class);
      assertThat(db.almanac().boats()).isEqualTo(small.boats());
    }
  }
}
