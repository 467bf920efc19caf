package hullalmanac.sample;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Reminder.Said;
import hullalmanac.core.record.Reminder.Way;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.Row;
import hullalmanac.core.remind.Standing;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What some owners of the sample were told in the weeks before it is opened as of. */
final class SampleReminders {
  private SampleReminders() {}

  static Almanac add(Almanac almanac) {
    LocalDate today = almanac.business().asOf().orElseThrow();
    List<List<Said>> stories =
        List.of(
            List.of(
                Said.told(today.minusDays(9), Way.PHONE, "left a message, waits for her diary")),
            List.of(
                Said.told(today.minusDays(21), Way.MAIL, ""),
                Said.of(today.minusDays(15), ReminderEvent.BOOKED, "the week after the regatta")),
            List.of(
                Said.told(today.minusDays(18), Way.IN_PERSON, "met on the pontoon"),
                Said.askAgain(today.minusDays(18), today.plusDays(24), "is away until then")),
            List.of(
                Said.told(today.minusDays(30), Way.LETTER, ""),
                Said.of(today.minusDays(12), ReminderEvent.DECLINED, "sells her in the autumn")),
            List.of(Said.told(today.minusDays(3), Way.MESSAGE, "")));
    List<Standing> open =
        Fleet.dueOf(almanac, today).reminders().stream()
            .filter(Standing::toTell)
            .filter(s -> s.whom().isPresent())
            .toList();
    List<Row> rows = new ArrayList<>();
    for (List<Said> story : stories) {
      int n = rows.size();
      Standing standing = open.get(2 * n + 1);
      rows.add(
          new Reminder(
              new Id<>(7_002_001 + n),
              "r-000" + (n + 1),
              standing.boat().id(),
              standing.whom().map(Party::id),
              standing.about(),
              story));
    }
    return almanac.with(Edit.put(rows));
  }
}
