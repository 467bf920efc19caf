package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.With;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.remind.Telling;
import hullalmanac.core.work.Change;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Beside;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.ToTell;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One letter to all who are to be told. */
@Tag("slow")
class TellAllSheetTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  private Bench bench;
  private final Beside outside = new Beside();

  @BeforeEach
  void open() {
    bench = Bench.open(folder.resolve("record"));
    bench.presenter().reaches(outside);
    bench.presenter().ahead().tellAll();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private ToTell toTell() {
    return ToTell.of(Fleet.dueOf(bench.almanac(), DAY));
  }

  private String words() {
    return bench.state().blocks().stream()
        .filter(SheetState.Words.class::isInstance)
        .map(b -> ((SheetState.Words) b).text())
        .reduce("", (a, b) -> a + b);
  }

  private List<List<String>> rows() {
    return bench.state().blocks().stream()
        .filter(SheetState.Table.class::isInstance)
        .flatMap(b -> ((SheetState.Table) b).rows().stream())
        .toList();
  }

  private List<String> buttons() {
    return bench.state().blocks().stream()
        .filter(SheetState.Buttons.class::isInstance)
        .flatMap(b -> ((SheetState.Buttons) b).buttons().stream())
        .map(SheetState.Button::id)
        .toList();
  }

  private long toldToday() {
    return bench.almanac().reminders().stream()
        .flatMap(r -> r.log().stream())
        .filter(
            s -> s.day().equals(DAY) && s.way().equals(java.util.Optional.of(Reminder.Way.LETTER)))
        .count();
  }

  @Test
  void theListIsWrittenWhereOneWantsItAndWritesNothingDown() {
    Almanac before = bench.almanac();
    assertThat(rows()).hasSizeGreaterThan(1).hasSameSizeAs(toTell().boats());
    assertThat(rows().get(0)).contains(toTell().boats().get(0).boat().name());
    bench.sheet().press("list");
    assertThat(outside.names()).containsExactly("2026-05-01 To be told.csv, CSV");
    assertThat(words()).as("none was chosen").isEmpty();
    Path file = folder.resolve("all.csv");
    outside.choose(file);
    bench.sheet().press("list");
    assertThat(file).content().isEqualTo(toTell().mailMerge());
    assertThat(file).content().startsWith("name,email,").contains(rows().get(0).get(1));
    assertThat(words()).isEqualTo(rows().size() + " lines written to " + file + ".");
    assertThat(bench.almanac()).isEqualTo(before);
    outside.choose(folder.resolve("nowhere/all.csv"));
    bench.sheet().press("list");
    assertThat(bench.shell().trouble().orElseThrow()).startsWith("The list cannot be written to ");
  }

  @Test
  void allAreWrittenDownAsToldInOneActThatOneUndoTakesBack() {
    Almanac before = bench.almanac();
    List<Standing> all = toTell().boats();
    bench.sheet().press("letter");
    assertThat(toldToday()).isEqualTo(all.size());
    assertThat(toTell().boats()).isEmpty();
    assertThat(rows()).isEmpty();
    assertThat(buttons()).containsExactly("done");
    assertThat(words())
        .isEqualTo("It is written down that " + all.size() + " were told by letter.");
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
    assertThat(rows()).hasSameSizeAs(all);
  }

  @Test
  void nothingIsWrittenOfAllWhereOneStandsOtherwiseByThen() {
    List<Standing> all = toTell().boats();
    bench.tasks().hold(TaskRunner.Lane.DATABASE);
    new Told(bench.presenter(), all.get(1).boat().id())
        .write(
            Fleet.dueOf(bench.almanac(), DAY),
            0,
            Reminder.Said.told(DAY, Reminder.Way.PHONE, ""),
            () -> {});
    bench.sheet().press("letter");
    bench.tasks().release(TaskRunner.Lane.DATABASE);
    assertThat(toldToday()).isZero();
    assertThat(bench.shell().trouble().orElseThrow()).contains("stands otherwise");
    bench.sheet().press("letter");
    assertThat(toldToday()).isEqualTo(all.size() - 1);
    bench.sheet().press("letter");
    assertThat(toldToday()).as("pressed twice").isEqualTo(all.size() - 1);
  }

  @Test
  void ofABoatWithoutAnybodyToTellNothingIsWrittenDownAndItIsSaid() {
    Standing one = toTell().boats().get(0);
    bench
        .presenter()
        .edit(
            "nobody",
            almanac ->
                Edit.put(
                    almanac.roles().stream()
                        .filter(r -> r.boat().equals(one.boat().id()))
                        .filter(r -> r.until().isEmpty())
                        .map(
                            r ->
                                With.component(r, "until", java.util.Optional.of(DAY.minusDays(1))))
                        .toList()));
    long others = toTell().boats().stream().filter(s -> s.whom().isPresent()).count();
    assertThat(words()).contains("Nobody is known who could be told of " + one.boat().name() + ".");
    bench.sheet().press("mail");
    assertThat(toTell().boats())
        .singleElement()
        .satisfies(s -> assertThat(s.boat()).isEqualTo(one.boat()));
    assertThat(others).isPositive();
    assertThat(buttons()).containsExactly("list", "done");
  }

  @Test
  void whoFellDueAfterTheListWasSavedIsNotWrittenDownAsTold() {
    Standing later = toTell().boats().get(0);
    Reminder kept =
        (Reminder)
            ((Change.Ready)
                    Telling.change(
                        bench.almanac(),
                        bench.presenter().ids(),
                        later,
                        Reminder.Said.told(DAY, Reminder.Way.PHONE, "")))
                .edit()
                .put()
                .get(0);
    bench.presenter().edit("told", a -> Edit.put(kept));
    outside.choose(folder.resolve("all.csv"));
    bench.sheet().press("list");
    bench.presenter().undo();
    bench.sheet().press("letter");
    assertThat(toldToday()).isZero();
    assertThat(bench.state().trouble().orElseThrow())
        .contains("Not on the list that was saved")
        .contains(later.boat().name());
    bench.sheet().press("list");
    bench.sheet().press("letter");
    assertThat(toldToday()).isPositive();
  }
}
