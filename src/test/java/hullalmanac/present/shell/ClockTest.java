package hullalmanac.present.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.With;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.Wall;
import hullalmanac.present.ahead.AheadState;
import hullalmanac.present.edit.VisitSheet;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window that stays open over midnight, sleeps with the laptop, and has its clock set back. */
class ClockTest {
  @TempDir Path folder;
  private final Wall wall = new Wall("2026-05-01T23:58:00Z");
  private final AtomicReference<AheadState> ahead = new AtomicReference<>();
  private RecordService record;
  private ShellPresenter presenter;

  @BeforeEach
  void open() {
    RecordService.Surroundings surroundings =
        new RecordService.Surroundings(wall, new Random(3)::nextLong, "desk", 1);
    RecordService.create(folder, surroundings);
    record = RecordService.open(folder, surroundings);
    record.change("a boat", Edit.all(new Made(48.4).almanac()));
    presenter =
        new ShellPresenter(
            FleetService.of(record), new EditService(record), new InlineTaskRunner());
    presenter.ahead().onChange(ahead::set);
    presenter.load();
  }

  @AfterEach
  void close() {
    record.close();
  }

  @Test
  void anotherDayBeginsAtMidnightAndAfterSleep() {
    assertThat(ahead.get().heading()).isEqualTo("Friday, 1 May 2026");
    wall.set("2026-05-01T23:59:30Z");
    presenter.lookAtTheClock();
    assertThat(ahead.get().heading()).isEqualTo("Friday, 1 May 2026");
    wall.set("2026-05-02T00:00:10Z");
    presenter.lookAtTheClock();
    assertThat(ahead.get().heading()).isEqualTo("Saturday, 2 May 2026");
    wall.set("2026-06-30T08:00:00Z");
    presenter.lookAtTheClock();
    assertThat(ahead.get().heading()).isEqualTo("Tuesday, 30 June 2026");
  }

  private static String words(Sheet sheet) {
    AtomicReference<SheetState> state = new AtomicReference<>();
    sheet.onChange(state::set);
    return state.get().toString();
  }

  @Test
  void aReadingGoesStaleWhileTheWindowOfTheReckonerStaysOpen() {
    wall.set("2026-05-01T14:00:00Z");
    presenter.reckoner().choose(4);
    Sheet window = presenter.reckoner().chosen();
    AtomicReference<String> seen = new AtomicReference<>();
    window.onChange(state -> seen.set(state.toString()));
    Map.of("air", "20", "humidity", "50", "surface", "15", "at", "13:00")
        .forEach((field, text) -> window.enter(new At("given", "", field), text));
    assertThat(seen.get()).contains("above the dew point, open");
    wall.set("2026-05-01T15:01:00Z");
    presenter.lookAtTheClock();
    assertThat(seen.get()).contains("the reading is older than two hours; take another");
  }

  @Test
  void aReadingOfAVisitGoesStaleWhileItIsOnTheScreen() {
    wall.set("2026-05-01T14:00:00Z");
    Made made = new Made(48.4);
    LocalDate today = LocalDate.of(2026, 5, 1);
    Visit visit = With.component(made.visit(today, VisitWhy.DUE), "status", VisitStatus.PLANNED);
    Step step =
        With.component(
            made.step(visit, StepKind.PROTECT, Optional.empty()),
            "climate",
            Optional.of(new Climate(20, 50, 15, today.atTime(13, 0))));
    presenter.edit("a visit", almanac -> Edit.put(List.of(visit, step)));
    VisitSheet sheet = new VisitSheet(presenter, visit.id());
    presenter.open(sheet);
    assertThat(words(sheet)).contains("Reading of 13:00 for protect. Surface");
    wall.set("2026-05-01T15:01:00Z");
    presenter.lookAtTheClock();
    assertThat(words(sheet)).contains("Closed: the reading is older than two hours; take another");
  }

  private void rename(String name) {
    Boat boat = record.almanac().boats().get(0);
    presenter.edit(name, almanac -> Edit.put(With.component(boat, "name", name)));
  }

  @Test
  void aClockSetBackLosesNothingAndMixesUpNoActs() {
    rename("One");
    wall.set("2026-04-01T08:00:00Z");
    presenter.lookAtTheClock();
    assertThat(ahead.get().heading()).isEqualTo("Wednesday, 1 April 2026");
    rename("Two");
    assertThat(record.standing().undo().map(Act::what)).contains("Two");
    presenter.undo();
    assertThat(record.almanac().boats().get(0).name()).isEqualTo("One");
    presenter.undo();
    presenter.redo();
    presenter.redo();
    assertThat(record.almanac().boats().get(0).name()).isEqualTo("Two");
    assertThat(
            record.history(hullalmanac.core.record.Kind.BOAT, record.almanac().boats().get(0).id()))
        .first()
        .extracting(change -> change.act())
        .extracting(Act::what)
        .isEqualTo("Two");
  }

  @Test
  void saysWhenItWasSaved() {
    AtomicReference<ShellState> shell = new AtomicReference<>();
    presenter.onChange(shell::set);
    wall.set("2026-05-01T14:02:00Z");
    rename("One");
    assertThat(shell.get().status()).startsWith("All changes saved 14:02");
  }
}
