package hullalmanac.present.edit;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.ReminderState;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.remind.Telling;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.service.Fleet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What somebody was told of one boat: read as the record stands, and written down. */
record Told(Desk desk, Id<Boat> boat) {
  /** Where it stands, what is to be told first. */
  List<Standing> standings(Fleet fleet) {
    return fleet.remindersOf(boat).stream()
        .sorted(Comparator.comparing(Standing::state).thenComparing(Standing::by))
        .toList();
  }

  /** The first of which something can be said. */
  Optional<Standing> first(Fleet fleet, ReminderEvent event) {
    return standings(fleet).stream().filter(s -> s.state().after(event).isPresent()).findFirst();
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
