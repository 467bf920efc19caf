package hullalmanac.present.edit;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderState;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.remind.Telling;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.service.Fleet;
import hullalmanac.service.ToTell;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What somebody was told of one boat: read as the record stands, and written down. */
record Told(Desk desk, Id<Boat> boat) {
  /** Where it stands, what is to be told first. */
  List<Standing> standings(Fleet fleet) {
    return ToTell.standings(fleet, boat);
  }

  /** The first of which somebody can be told. */
  Optional<Standing> first(Fleet fleet) {
    return ToTell.first(fleet, boat);
  }

  /**
   * Writes down what was said; what stands in the way is said at the bottom of the window.
   *
   * @param fleet from whose forecast it is read what there is to be told
   * @param nth which of the standings it is said of
   */
  void write(Fleet fleet, int nth, Reminder.Said said, Runnable done) {
    List<Standing> now = standings(fleet);
    if (nth >= now.size()) {
      return;
    }
    Standing standing = now.get(nth);
    desk.change(
        standing.boat().name() + ": " + said.what().words(),
        almanac ->
            fleet.beside(almanac).remindersOf(boat).contains(standing)
                ? Telling.change(almanac, desk.ids(), standing, said)
                : meanwhile(standing),
        done);
  }

  /**
   * Writes down the same of many boats in one act; as all of it was shown, or not at all.
   *
   * @param fleet from whose forecast they are
   * @param shown one or more, of which that can be said
   */
  static void all(Desk desk, Fleet fleet, List<Standing> shown, Reminder.Said said, Runnable done) {
    desk.change(
        (shown.size() == 1 ? "1 boat: " : shown.size() + " boats: ") + said.what().words(),
        almanac -> all(desk, fleet.beside(almanac), shown, said),
        done);
  }

  private static Change all(Desk desk, Fleet now, List<Standing> shown, Reminder.Said said) {
    Set<Standing> stands = new HashSet<>(now.remindersNow());
    Edit edit = Edit.put(List.of());
    for (Standing standing : shown) {
      if (!stands.contains(standing)) {
        return meanwhile(standing);
      }
      Change one = Telling.change(now.almanac(), desk.ids(), standing, said);
      if (!(one instanceof Change.Ready ready)) {
        return one;
      }
      edit = edit.and(ready.edit());
    }
    return Change.checked(now.almanac(), edit);
  }

  /** Said of what was shown, or not at all: a button pressed twice tells once. */
  private static Change meanwhile(Standing standing) {
    return Change.refused(
        new Problem(
            Kind.REMINDER,
            standing.boat().key(),
            "what",
            "it stands otherwise with telling of her since it was shown",
            "Look at it again, then write down what was said"));
  }

  /** Why something cannot be said as it stands. */
  Optional<String> refusal(Fleet fleet, int nth, Reminder.Said said) {
    return standings(fleet).stream()
        .skip(nth)
        .findFirst()
        .flatMap(s -> Telling.refusal(s, said))
        .map(ReminderState.Refusal::sentence);
  }
}
