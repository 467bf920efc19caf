package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Wall;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.shell.Place;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Steps are timed on the sheet of their visit, on a record of one's own. */
@Tag("slow")
class TimedTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  private final Wall wall = new Wall("2026-05-01T14:02:00Z");
  private final AtomicReference<Optional<String>> line = new AtomicReference<>();
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder, wall);
    bench.presenter().timed().onChange(line::set);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private void restart() {
    bench.close();
    open();
  }

  private void begin(String name) {
    bench.presenter().openBoat(bench.boat(name).id());
    bench.presenter().boats().beginVisit();
  }

  private void press(int row) {
    SheetState.Grid grid = bench.grid("steps");
    bench.sheet().press(new At("steps", grid.rows().get(row).id(), "time"));
  }

  private List<Step> steps(Boat boat) {
    Almanac almanac = bench.almanac();
    Visit newest = newest(boat);
    return almanac.steps().stream()
        .filter(s -> s.visit().equals(newest.id()))
        .sorted(Comparator.comparingInt(Step::order))
        .toList();
  }

  private Visit newest(Boat boat) {
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()))
        .filter(v -> v.day().equals(TODAY) && v.plan().isEmpty())
        .findFirst()
        .orElseThrow();
  }

  private List<Id<Step>> timed() {
    return bench.almanac().steps().stream()
        .filter(s -> s.timedSince().isPresent())
        .map(Step::id)
        .toList();
  }

  private void minutesPass(int minutes) {
    wall.pass(Duration.ofMinutes(minutes));
    bench.presenter().lookAtTheClock();
  }

  @Test
  void aStepStartedRunsOverARestartAndItsStopIsUndoneAndDoneAgain() {
    begin("Siskin");
    Boat boat = bench.boat("Siskin");
    Almanac before = bench.almanac();
    assertThat(bench.cell("steps", 0, "time")).isEqualTo("Start");
    press(0);
    assertThat(line.get())
        .get()
        .asString()
        .endsWith("on Siskin: running since 14:02, 0 min so far");
    restart();
    minutesPass(37);
    assertThat(line.get()).get().asString().endsWith("running since 14:02, 37 min so far");
    bench.presenter().timed().open();
    assertThat(bench.state().title()).isEqualTo("Siskin");
    assertThat(bench.shell().place()).isEqualTo(Place.BOATS);
    assertThat(bench.state().facts())
        .startsWith("Visit planned for Friday, 1 May 2026. ")
        .endsWith(" running since 14:02, 37 min so far.");
    assertThat(bench.cell("steps", 0, "time")).isEqualTo("Stop · 37 min");
    Almanac running = bench.almanac();
    press(0);
    assertThat(steps(boat).get(0).minutes()).contains(37);
    assertThat(bench.cell("steps", 0, "minutes")).isEqualTo("37");
    assertThat(bench.cell("steps", 0, "time")).isEqualTo("Start");
    assertThat(bench.state().facts()).isEqualTo("Visit planned for Friday, 1 May 2026");
    assertThat(line.get()).isEmpty();
    Almanac stopped = bench.almanac();
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(running);
    restart();
    bench.presenter().redo();
    assertThat(bench.almanac()).isEqualTo(stopped);
    bench.presenter().undo();
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
    assertThat(line.get()).isEmpty();
  }

  @Test
  void whatChangedSaysSinceWhenByTheClockOnTheWall() {
    begin("Siskin");
    press(0);
    bench.sheet().press("changes");
    SheetState.Table table = (SheetState.Table) bench.state().blocks().get(0);
    assertThat(table.rows().get(0)).contains("timed since");
    assertThat(table.rows().get(0)).last().asString().endsWith(" 14:02");
  }

  @Test
  void startingAnotherStopsTheFirstInOneAct() {
    begin("Siskin");
    press(0);
    minutesPass(12);
    Almanac before = bench.almanac();
    bench.presenter().leave();
    begin("Merganser");
    press(0);
    assertThat(timed()).containsExactly(steps(bench.boat("Merganser")).get(0).id());
    assertThat(steps(bench.boat("Siskin")).get(0).minutes()).contains(12);
    bench.presenter().undo();
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void theSheetGoesWithTheClock() {
    begin("Siskin");
    press(0);
    AtomicReference<SheetState> shown = new AtomicReference<>();
    bench.sheet().onChange(shown::set);
    minutesPass(5);
    assertThat(shown.get().facts()).endsWith("5 min so far.");
    minutesPass(1);
    assertThat(shown.get().facts()).endsWith("6 min so far.");
  }

  @Test
  void finishingStopsWhatRunsInTheSameAct() {
    begin("Siskin");
    Boat boat = bench.boat("Siskin");
    press(0);
    minutesPass(80);
    Almanac before = bench.almanac();
    bench.sheet().press("finish");
    assertThat(newest(boat).status()).isEqualTo(VisitStatus.DONE);
    assertThat(steps(boat).get(0).minutes()).contains(80);
    assertThat(timed()).isEmpty();
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
    bench.presenter().redo();
    bench.presenter().boats().openVisit(newest(boat).id());
    assertThat(bench.grid("steps").columns()).noneMatch(c -> c.id().equals("time"));
  }

  @Test
  void cancellingStopsWhatRuns() {
    begin("Siskin");
    press(0);
    minutesPass(8);
    bench.write("visit", "cancelled", "weather");
    assertThat(timed()).isEmpty();
    assertThat(steps(bench.boat("Siskin")).get(0).minutes()).contains(8);
  }

  /** A wash of a care plan that was begun with the time running and ends as "washed". */
  @Test
  void washedStopsWhatRuns() {
    Visit planned =
        bench.almanac().visits().stream()
            .filter(v -> v.plan().isPresent() && v.status() == VisitStatus.PLANNED)
            .min(Comparator.comparing(Visit::day))
            .orElseThrow();
    bench
        .presenter()
        .edit(
            "put forward", almanac -> Edit.put(With.component(planned, "day", TODAY.plusDays(2))));
    bench.presenter().openBoat(planned.boat());
    bench.presenter().boats().openVisit(planned.id());
    if (bench.grid("steps").rows().isEmpty()) {
      bench.sheet().press("add step");
    }
    press(0);
    minutesPass(25);
    bench.presenter().leave();
    bench.presenter().openBoat(planned.boat());
    bench.presenter().boats().washed(Optional.empty());
    assertThat(timed()).isEmpty();
    assertThat(
            bench.almanac().steps().stream()
                .filter(s -> s.visit().equals(planned.id()))
                .map(Step::minutes))
        .containsExactly(Optional.of(25));
  }

  @Test
  void aClockSetBackRefusesToStopAndKeepsSinceWhen() {
    begin("Siskin");
    press(0);
    wall.pass(Duration.ofMinutes(-30));
    Almanac before = bench.almanac();
    press(0);
    assertThat(bench.shell().trouble())
        .get()
        .asString()
        .startsWith("The clock shows a time before");
    assertThat(bench.almanac()).isEqualTo(before);
    bench.presenter().lookAtTheClock();
    assertThat(bench.state().facts()).contains("which the clock has not reached again");
    minutesPass(40);
    press(0);
    assertThat(steps(bench.boat("Siskin")).get(0).minutes()).contains(10);
  }

  @Test
  void whatRanOverNightAsksForItsMinutesAndStopsWhenTheyAreWritten() {
    begin("Siskin");
    press(0);
    wall.pass(Duration.ofHours(17));
    bench.presenter().lookAtTheClock();
    press(0);
    assertThat(bench.shell().trouble())
        .get()
        .asString()
        .endsWith(
            "has run for more than 16 hours, which is not believed. Write the minutes that it took; that stops it.");
    assertThat(bench.state().facts()).contains("running since 1 May, 14:02: more than 16 hours");
    bench.sheet().press("finish");
    assertThat(newest(bench.boat("Siskin")).status()).isEqualTo(VisitStatus.PLANNED);
    bench.write("steps", 0, "minutes", "95");
    assertThat(timed()).isEmpty();
    assertThat(steps(bench.boat("Siskin")).get(0).minutes()).contains(95);
    bench.presenter().undo();
    assertThat(timed()).hasSize(1);
  }

  @Test
  void minutesWrittenWhileItRunsAreAddedTo() {
    begin("Siskin");
    press(0);
    minutesPass(10);
    bench.write("steps", 0, "minutes", "30");
    bench.write("steps", 0, "helperMinutes", "20");
    assertThat(timed()).hasSize(1);
    minutesPass(5);
    bench.presenter().timed().stop();
    Step step = steps(bench.boat("Siskin")).get(0);
    assertThat(step.minutes()).contains(45);
    assertThat(step.helperMinutes()).contains(20);
  }

  @Test
  void nothingIsWrittenByPastingOverTheTime() {
    begin("Siskin");
    Almanac before = bench.almanac();
    SheetState.Grid grid = bench.grid("steps");
    bench.sheet().paste(new At("steps", grid.rows().get(0).id(), "time"), List.of(List.of("40")));
    assertThat(bench.almanac()).isEqualTo(before);
    assertThat(bench.cell("steps", 0, "time")).isEqualTo("Start");
    assertThat(bench.state().trouble())
        .contains("1 lay outside what one writes in and were left out.");
  }

  /** A running step that is taken out, and comes back from the bin while another runs. */
  @Test
  void whatComesBackFromTheBinIsStoppedWithTheOther() {
    begin("Siskin");
    bench.sheet().press("add step");
    press(0);
    String row = bench.grid("steps").rows().get(0).id();
    bench.sheet().remove("steps", row);
    assertThat(line.get()).isEmpty();
    minutesPass(5);
    press(0);
    bench.presenter().openBin();
    SheetState.Buttons first = (SheetState.Buttons) bench.state().blocks().get(0);
    bench.sheet().press(first.buttons().get(0).id());
    bench.presenter().leave();
    assertThat(timed()).hasSize(2);
    bench.presenter().boats().openVisit(newest(bench.boat("Siskin")).id());
    minutesPass(5);
    bench.sheet().press("finish");
    assertThat(timed()).isEmpty();
  }
}
