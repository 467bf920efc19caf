package hullalmanac.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each event makes of a reminder in each state, and what a log of them may say. */
class ReminderStateTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  /** A line a state, a column an event; a dash where it cannot happen. */
  @ParameterizedTest
  @CsvSource({
    "state,     TOLD, BOOKED, DECLINED, ASK_AGAIN, CALLED_OFF, DAY_COMES, WORK_DONE, OVERTAKEN",
    "OPEN,      TOLD, BOOKED, DECLINED, WAITING,   -,          -,         DONE,      CLOSED",
    "TOLD,      TOLD, BOOKED, DECLINED, WAITING,   -,          -,         DONE,      CLOSED",
    "BOOKED,    -,    BOOKED, DECLINED, WAITING,   TOLD,       -,         DONE,      CLOSED",
    "DECLINED,  -,    BOOKED, -,        WAITING,   -,          -,         DONE,      CLOSED",
    "WAITING,   -,    BOOKED, DECLINED, WAITING,   -,          OPEN,      DONE,      CLOSED",
    "DONE,      -,    -,      -,        -,         -,          -,         -,         -",
    "CLOSED,    -,    -,      -,        -,         -,          -,         -,         -"
  })
  void everyEventInEveryStateDoesWhatTheTableSays(
      String state,
      String a,
      String b,
      String c,
      String d,
      String e,
      String f,
      String g,
      String h) {
    List<String> cells = List.of(a, b, c, d, e, f, g, h);
    assertThat(ReminderEvent.values()).hasSize(cells.size());
    if (state.equals("state")) {
      assertThat(ReminderEvent.values()).extracting(Enum::name).containsExactlyElementsOf(cells);
      return;
    }
    ReminderState from = ReminderState.valueOf(state);
    Iterator<String> cell = cells.iterator();
    for (ReminderEvent event : ReminderEvent.values()) {
      String to = from.after(event).map(Enum::name).orElse("-");
      assertThat(to).as(from + " and " + event).isEqualTo(cell.next());
    }
  }

  @Test
  void theTableHasALineForEveryState() {
    assertThat(ReminderState.values())
        .extracting(Enum::name)
        .containsExactly("OPEN", "TOLD", "BOOKED", "DECLINED", "WAITING", "DONE", "CLOSED");
  }

  @Test
  void whatCannotHappenIsRefusedWithASentenceAndWhatToDo() {
    List<String> sentences = new ArrayList<>();
    for (ReminderState state : ReminderState.values()) {
      for (ReminderEvent event : ReminderEvent.values()) {
        if (state.after(event).isEmpty()) {
          sentences.add(state.refusal(event).sentence());
        } else {
          assertThatThrownBy(() -> state.refusal(event))
              .isInstanceOf(IllegalArgumentException.class);
        }
      }
    }
    assertThat(sentences).hasSize(28).allMatch(s -> s.matches("[A-Z][^.]+\\. [A-Z][^.]+\\."));
    assertThat(ReminderState.DECLINED.refusal(ReminderEvent.TOLD).sentence())
        .isEqualTo(
            "The owner declined. Write \"booked\", or a day after which to ask again, first.");
  }

  private static Reminder with(Reminder.Said... said) {
    return new Reminder(
        new Id<>(1),
        "r",
        new Id<>(2),
        Optional.empty(),
        List.of(Reminder.About.coat(new Id<>(3), DAY)),
        List.of(said));
  }

  @Test
  void aReminderStandsWhereItsLogHasBroughtItOnADay() {
    Reminder reminder =
        with(
            Reminder.Said.told(DAY, Reminder.Way.PHONE, "left a message"),
            Reminder.Said.askAgain(DAY.plusDays(2), DAY.plusDays(30), ""),
            Reminder.Said.told(DAY.plusDays(31), Reminder.Way.MAIL, ""),
            Reminder.Said.of(DAY.plusDays(33), ReminderEvent.BOOKED, ""),
            Reminder.Said.of(DAY.plusDays(40), ReminderEvent.CALLED_OFF, "rain"));
    assertThat(reminder.stateOn(DAY.minusDays(1))).isEqualTo(ReminderState.OPEN);
    assertThat(reminder.stateOn(DAY)).isEqualTo(ReminderState.TOLD);
    assertThat(reminder.stateOn(DAY.plusDays(29))).isEqualTo(ReminderState.WAITING);
    assertThat(reminder.stateOn(DAY.plusDays(30))).isEqualTo(ReminderState.OPEN);
    assertThat(reminder.stateOn(DAY.plusDays(31))).isEqualTo(ReminderState.TOLD);
    assertThat(reminder.stateOn(DAY.plusDays(39))).isEqualTo(ReminderState.BOOKED);
    assertThat(reminder.stateOn(DAY.plusDays(40))).isEqualTo(ReminderState.TOLD);
    assertThat(reminder.toldOn(DAY.plusDays(40))).contains(DAY.plusDays(31));
  }

  @Test
  void aLogThatCannotHaveHappenedIsRefused() {
    Reminder.Said told = Reminder.Said.told(DAY, Reminder.Way.PHONE, "");
    assertThatThrownBy(
            () ->
                with(
                    told,
                    Reminder.Said.askAgain(DAY, DAY.plusDays(30), ""),
                    Reminder.Said.told(DAY.plusDays(29), Reminder.Way.MAIL, "")))
        .hasMessageContaining("wants to be asked later");
    assertThatThrownBy(
            () -> with(told, Reminder.Said.of(DAY.minusDays(1), ReminderEvent.BOOKED, "")))
        .hasMessageContaining("behind what was said later");
    assertThatThrownBy(() -> with()).hasMessageContaining("says what was said");
    assertThatThrownBy(() -> Reminder.Said.of(DAY, ReminderEvent.TOLD, ""))
        .hasMessageContaining("says how");
    assertThatThrownBy(() -> Reminder.Said.askAgain(DAY, DAY.minusDays(1), ""))
        .hasMessageContaining("before");
    assertThatThrownBy(() -> Reminder.Said.of(DAY, ReminderEvent.WORK_DONE, ""))
        .hasMessageContaining("follows from the record");
  }
}
