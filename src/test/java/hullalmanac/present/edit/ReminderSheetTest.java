package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.ReminderState;
import hullalmanac.core.remind.Standing;
import hullalmanac.fixture.Bench;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an owner was told, written down on a boat's sheet and from a letter. */
class ReminderSheetTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder.resolve("record"));
  }

  @AfterEach
  void close() {
    bench.close();
  }

  /** A boat of which one thing is to be told, and nothing was. */
  private Id<Boat> toTell() {
    List<Standing> all = Fleet.dueOf(bench.almanac(), DAY).reminders();
    Id<Boat> boat =
        all.stream()
            .filter(Standing::toTell)
            .map(s -> s.boat().id())
            .filter(b -> all.stream().filter(s -> s.boat().id().equals(b)).count() == 1)
            .filter(b -> bench.almanac().reminders().stream().noneMatch(r -> r.boat().equals(b)))
            .findFirst()
            .orElseThrow();
    bench.presenter().open(new ReminderSheet(bench.presenter(), boat));
    return boat;
  }

  private List<String> buttons() {
    return bench.state().blocks().stream()
        .filter(SheetState.Buttons.class::isInstance)
        .flatMap(b -> ((SheetState.Buttons) b).buttons().stream())
        .map(SheetState.Button::id)
        .toList();
  }

  private String words() {
    return bench.state().blocks().stream()
        .filter(SheetState.Words.class::isInstance)
        .map(b -> ((SheetState.Words) b).text())
        .reduce("", (a, b) -> a + b);
  }

  private List<List<String>> log() {
    return bench.state().blocks().stream()
        .filter(SheetState.Table.class::isInstance)
        .flatMap(b -> ((SheetState.Table) b).rows().stream())
        .toList();
  }

  private Reminder of(Id<Boat> boat) {
    return bench.almanac().reminders().stream()
        .filter(r -> r.boat().equals(boat))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatWasSaidIsWrittenDownStepByStepAndTakenBackByUndo() {
    Id<Boat> boat = toTell();
    assertThat(words()).contains("to be told");
    assertThat(buttons())
        .containsSubsequence("phone", "booked", "declined", "ask-again")
        .doesNotContain("called-off");
    bench.write("said", "words", "left a message");
    bench.sheet().press("phone");
    assertThat(of(boat).log())
        .containsExactly(Reminder.Said.told(DAY, Reminder.Way.PHONE, "left a message"));
    assertThat(words()).contains("told by phone on 1 May");
    assertThat(log().get(0)).startsWith("1 May", "Told by phone", "left a message");
    bench.sheet().press("declined");
    assertThat(of(boat).stateOn(DAY)).isEqualTo(ReminderState.DECLINED);
    assertThat(buttons()).doesNotContain("phone", "declined");
    bench.presenter().undo();
    assertThat(of(boat).stateOn(DAY)).isEqualTo(ReminderState.TOLD);
    bench.presenter().undo();
    assertThat(bench.almanac().reminders()).noneMatch(r -> r.boat().equals(boat));
    assertThat(words()).contains("to be told");
  }

  @Test
  void aButtonPressedTwiceTellsOnceAndNothingIsSaidOfWhatIsNotShown() {
    Id<Boat> boat = toTell();
    bench.tasks().hold(TaskRunner.Lane.DATABASE);
    bench.sheet().press("phone");
    bench.sheet().press("phone");
    bench.sheet().press("declined");
    bench.tasks().release(TaskRunner.Lane.DATABASE);
    assertThat(bench.almanac().reminders()).filteredOn(r -> r.boat().equals(boat)).hasSize(1);
    assertThat(of(boat).log()).extracting(Reminder.Said::what).containsExactly(ReminderEvent.TOLD);
    bench.sheet().press("declined");
    assertThat(of(boat).stateOn(DAY)).isEqualTo(ReminderState.DECLINED);
  }

  @Test
  @Tag("slow")
  void whatIsToBeToldIsPutOnACard() {
    Id<Boat> boat = toTell();
    bench.sheet().press("card");
    assertThat(bench.state().title()).endsWith(": A reminder");
    assertThat(bench.state().facts()).endsWith(" A6");
    assertThat(
            bench.state().blocks().stream()
                .filter(SheetState.Pages.class::isInstance)
                .flatMap(b -> ((SheetState.Pages) b).pages().stream())
                .map(SheetState.Page::words)
                .reduce("", String::concat))
        .contains("Dear ", "A forecast, not a guarantee.");
    bench.presenter().leave();
    assertThat(buttons()).contains("card");
    assertThat(bench.almanac().reminders()).noneMatch(r -> r.boat().equals(boat));
  }

  @Test
  void askingAgainWantsADayThatLiesAhead() {
    Id<Boat> boat = toTell();
    bench.sheet().press("phone");
    bench.sheet().press("ask-again");
    assertThat(bench.state().trouble()).hasValueSatisfying(t -> assertThat(t).contains("the day"));
    bench.write("said", "after", "1/4/2026");
    bench.sheet().press("ask-again");
    assertThat(of(boat).log()).hasSize(1);
    bench.write("said", "after", "15/6/2026");
    bench.sheet().press("ask-again");
    assertThat(of(boat).log().get(1).askAfter()).contains(LocalDate.of(2026, 6, 15));
    assertThat(words()).contains("ask again after 15 June");
    assertThat(bench.state().trouble()).isEmpty();
  }

  @Test
  void whatWasSaidYesterdayIsWrittenDownOnThatDayAndNothingOnADayThatLiesAhead() {
    Id<Boat> boat = toTell();
    bench.write("said", "on", "tomorrow");
    bench.sheet().press("phone");
    assertThat(bench.state().trouble()).isPresent();
    assertThat(bench.sheet().say(new At("said", "", "on"), "tomorrow").refused()).isTrue();
    bench.write("said", "on", "no day");
    bench.sheet().press("phone");
    assertThat(bench.almanac().reminders()).noneMatch(r -> r.boat().equals(boat));
    bench.write("said", "on", "yesterday");
    bench.sheet().press("phone");
    assertThat(of(boat).log())
        .containsExactly(Reminder.Said.told(DAY.minusDays(1), Reminder.Way.PHONE, ""));
    bench.write("said", "after", "+3m");
    bench.sheet().press("ask-again");
    assertThat(of(boat).log().get(1).day()).as("the field was emptied").isEqualTo(DAY);
    bench.write("said", "on", "last mon");
    bench.sheet().press("booked");
    assertThat(of(boat).log()).as("before what was said later").hasSize(2);
    assertThat(bench.shell().trouble().or(() -> bench.state().trouble()).orElseThrow())
        .contains("already");
  }

  @Test
  void aLetterThatWasSentIsWrittenDownAsToldOnce() {
    Id<Boat> boat = toTell();
    bench.sheet().press("write");
    bench.sheet().press("mail");
    assertThat(of(boat).log())
        .singleElement()
        .satisfies(
            said -> {
              assertThat(said.what()).isEqualTo(ReminderEvent.TOLD);
              assertThat(said.way()).contains(Reminder.Way.MAIL);
              assertThat(said.words()).isNotBlank();
            });
    assertThat(words()).contains("written down that this was told by mail");
    bench.write("letter", "about", "any other letter");
    assertThat(buttons()).doesNotContain("mail");
  }

  @Test
  void aheadSaysWhereItStandsWithEachOwner() {
    Fleet fleet = hullalmanac.fixture.OpenSample.fleet();
    java.util.concurrent.atomic.AtomicReference<hullalmanac.present.ahead.AheadState> state =
        new java.util.concurrent.atomic.AtomicReference<>();
    bench.presenter().ahead().onChange(state::set);
    bench.presenter().ahead().show(fleet);
    assertThat(state.get().due())
        .anyMatch(r -> r.told().equals("Owner: to be told"))
        .anyMatch(r -> r.told().startsWith("Owner: told by phone on 22 Apr"))
        .anyMatch(r -> r.told().startsWith("Owner: declined on 19 Apr"))
        .anyMatch(r -> r.told().startsWith("Owner: ask again after 25 May"))
        .allMatch(r -> !r.told().isEmpty());
  }
}
