package hullalmanac.core.remind;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.ReminderState;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.sample.SampleRecord;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A year of days over the sample. What was told is kept here by itself, so that the program's word
 * for it is not taken.
 */
@Tag("slow")
class RemindingYearTest {
  private static final int DAYS = 365;

  private final Map<Object, LocalDate> told = new HashMap<>();
  private final Set<Object> mayBeAskedAgain = new HashSet<>();
  private final Map<ReminderState, Integer> seen = new HashMap<>();
  private int moved;
  private int again;

  @Test
  void nobodyIsToldTwiceOfACoatAndNothingDueIsMissed() {
    Almanac sample = SampleRecord.make().almanac();
    Year year = new Year(sample, sample.business().asOf().orElseThrow());
    sample.reminders().forEach(r -> r.about().forEach(a -> told.put(a.what(), r.since())));
    for (int day = 0; day < DAYS; day++) {
      live(year);
      nothingIsMissed(year);
      year.next();
    }
    assertThat(told.size()).as("things told").isGreaterThan(300);
    assertThat(again).as("asked again, as agreed").isGreaterThan(5);
    assertThat(moved).as("days on which a moved date was pointed out").isGreaterThan(50);
    assertThat(seen.keySet())
        .containsExactlyInAnyOrder(
            ReminderState.OPEN,
            ReminderState.TOLD,
            ReminderState.BOOKED,
            ReminderState.DECLINED,
            ReminderState.WAITING);
  }

  private void live(Year year) {
    List<Standing> standings = year.standings();
    Map<Object, Long> open =
        standings.stream()
            .filter(s -> s.state() == ReminderState.OPEN)
            .collect(Collectors.groupingBy(s -> s.boat().id(), Collectors.counting()));
    assertThat(open.values()).as("one to tell for each boat").allMatch(n -> n == 1);
    for (Standing s : standings) {
      seen.merge(s.state(), 1, Integer::sum);
      moved += s.moved().size();
      if (s.toTell()) {
        s.about().forEach(a -> noteTold(a, s, year.today()));
        year.tell(s);
      }
    }
    year.almanac().reminders().stream()
        .filter(r -> r.log().stream().anyMatch(x -> x.what() == ReminderEvent.ASK_AGAIN))
        .filter(r -> r.stateOn(year.today()) == ReminderState.WAITING)
        .forEach(r -> r.about().forEach(a -> mayBeAskedAgain.add(a.what())));
  }

  private void noteTold(Reminder.About about, Standing standing, LocalDate today) {
    LocalDate before = told.put(about.what(), today);
    if (before != null) {
      assertThat(mayBeAskedAgain.remove(about.what()))
          .as("%s is told of %s on %s and on %s", standing.whom(), about, before, today)
          .isTrue();
      again++;
    }
  }

  /** Whether a visit is planned on a surface, which no care plan made by itself. */
  private static boolean booked(Year year, CoatForecast f) {
    return year.almanac().visits().stream()
        .filter(v -> v.boat().equals(f.surface().boat()) && v.plan().isEmpty())
        .filter(v -> v.status() == VisitStatus.PLANNED && !v.day().isBefore(year.today()))
        .anyMatch(
            v ->
                v.surfaces().isEmpty()
                    || v.surfaces().stream().anyMatch(p -> p.surface().equals(f.surface().id())));
  }

  /** All that is due within the lead was told, or is kept back while there is time. */
  private void nothingIsMissed(Year year) {
    LocalDate today = year.today();
    LocalDate soon = today.plusWeeks(year.almanac().business().habits().leadWeeks());
    Set<Object> kept =
        year.standings().stream()
            .filter(s -> s.notBefore().isPresent())
            .peek(s -> assertThat(s.by()).isAfterOrEqualTo(s.notBefore().get().plusDays(14)))
            .flatMap(s -> s.about().stream())
            .map(Reminder.About::what)
            .collect(Collectors.toSet());
    for (BoatDue due : year.due()) {
      if (due.workBy().filter(by -> !by.isAfter(soon)).isPresent()) {
        for (CoatForecast f : due.coats()) {
          Object what = Reminder.About.coat(f.coat().id(), today).what();
          assertThat(
                  f.bestBy().isEmpty()
                      || booked(year, f)
                      || told.containsKey(what)
                      || kept.contains(what))
              .as("%s of %s on %s", f.surface().key(), due.boat().name(), today)
              .isTrue();
        }
      }
    }
    Set<Object> serving = year.coats().stream().map(f -> f.coat().id()).collect(Collectors.toSet());
    for (Duty duty : year.almanac().duties()) {
      if (duty.doneOn().isEmpty() && serving.contains(duty.coat()) && !duty.dueOn().isAfter(soon)) {
        Object what = Reminder.About.duty(duty.id(), today).what();
        assertThat(told.containsKey(what) || kept.contains(what))
            .as("%s on %s", duty.key(), today)
            .isTrue();
      }
    }
  }
}
