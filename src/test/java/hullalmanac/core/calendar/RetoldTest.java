package hullalmanac.core.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RetoldTest {
  private static final Instant MONDAY = Instant.parse("2026-05-04T08:00:00Z");
  private static final Instant TUESDAY = Instant.parse("2026-05-05T08:00:00Z");
  private static final Instant FRIDAY = Instant.parse("2026-05-08T08:00:00Z");
  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  private static final LocalDate LONG_AGO = LocalDate.of(2000, 1, 1);

  private static CalendarEvent event(String uid, LocalDate first, Revision revision) {
    return new CalendarEvent(
        uid,
        EventKind.VISIT,
        first,
        first.plusDays(1),
        Optional.empty(),
        new CalendarEvent.Words("Arctic Tern", "", ""),
        false,
        Optional.of(-15),
        revision);
  }

  private static CalendarEvent retold(CalendarEvent before, CalendarEvent now) {
    List<CalendarEvent> told = Retold.of(List.of(before), List.of(now), FRIDAY, LONG_AGO);
    assertThat(told).hasSize(1);
    return told.get(0);
  }

  @Test
  void whatIsNewIsToldAsItIs() {
    CalendarEvent fresh = event("a", DAY, new Revision(3, MONDAY));
    assertThat(Retold.of(List.of(), List.of(fresh), FRIDAY, LONG_AGO)).containsExactly(fresh);
  }

  @Test
  void whatShowsTheSameStaysAsItWasTold() {
    CalendarEvent before = event("a", DAY, new Revision(1, MONDAY));
    assertThat(retold(before, event("a", DAY, new Revision(3, TUESDAY)))).isEqualTo(before);
  }

  @Test
  void whatShowsSomethingElseCountsAtLeastOneMore() {
    CalendarEvent before = event("a", DAY, new Revision(4, MONDAY));
    LocalDate moved = DAY.plusDays(1);
    assertThat(retold(before, event("a", moved, new Revision(2, MONDAY))))
        .as("nothing says when: at the newest act")
        .isEqualTo(event("a", moved, new Revision(5, FRIDAY)));
    assertThat(retold(before, event("a", moved, new Revision(9, TUESDAY))))
        .isEqualTo(event("a", moved, new Revision(9, TUESDAY)));
  }

  @Test
  void whatIsToldNoMoreIsCancelledOnce() {
    CalendarEvent before = event("a", DAY, new Revision(1, MONDAY));
    List<CalendarEvent> once = Retold.of(List.of(before), List.of(), FRIDAY, LONG_AGO);
    assertThat(once).containsExactly(before.away().as(new Revision(2, FRIDAY)));
    assertThat(Retold.of(once, List.of(), FRIDAY.plusSeconds(60), LONG_AGO)).isEqualTo(once);
  }

  @Test
  void whatEndedLongAgoIsToldNoMoreUnlessItComesAgain() {
    CalendarEvent past = event("a", DAY, new Revision(0, MONDAY));
    assertThat(Retold.of(List.of(), List.of(past), FRIDAY, DAY)).containsExactly(past);
    assertThat(Retold.of(List.of(), List.of(past), FRIDAY, DAY.plusDays(1))).isEmpty();
    assertThat(Retold.of(List.of(past), List.of(), FRIDAY, DAY.plusDays(1))).isEmpty();
    CalendarEvent yearly = again(past, Optional.of(DAY.plusYears(3)));
    assertThat(Retold.of(List.of(), List.of(yearly), FRIDAY, DAY.plusYears(3))).hasSize(1);
    assertThat(Retold.of(List.of(), List.of(yearly), FRIDAY, DAY.plusYears(3).plusDays(1)))
        .isEmpty();
    assertThat(
            Retold.of(List.of(), List.of(again(past, Optional.empty())), FRIDAY, DAY.plusYears(99)))
        .hasSize(1);
  }

  private static CalendarEvent again(CalendarEvent e, Optional<LocalDate> last) {
    return new CalendarEvent(
        e.uid(),
        e.kind(),
        e.first(),
        e.until(),
        Optional.of(new CalendarEvent.Yearly(last)),
        e.words(),
        e.cancelled(),
        e.alarmHours(),
        e.revision());
  }
}
