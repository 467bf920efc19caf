package hullalmanac.core.remind;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderState;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where it stands with telling somebody of a boat, on a day.
 *
 * @param whom who is to be told, or was; absent where nobody is known
 * @param state never over
 * @param about what it is about and is not done yet, each with its day as it is reckoned now
 * @param written what was written down of it; empty for what nobody was told of yet, several where
 *     an owner wanted to be asked again about each
 * @param notBefore the owner is left in peace until that day; absent where nothing keeps from
 *     telling
 * @param visit the day of a planned visit that does all of it
 * @param moved dates that are no longer what was told
 */
public record Standing(
    Boat boat,
    Optional<Party> whom,
    ReminderState state,
    List<Reminder.About> about,
    List<Reminder> written,
    Optional<LocalDate> notBefore,
    Optional<LocalDate> visit,
    List<Moved> moved) {
  public Standing {
    about = List.copyOf(about);
    written = List.copyOf(written);
    moved = List.copyOf(moved);
  }

  /**
   * A date that moved since it was told.
   *
   * @param told with the day that was told
   * @param now the day as it is reckoned now
   * @param after the newest finding since then on that surface, where there is one
   */
  public record Moved(Reminder.About told, LocalDate now, Optional<Finding> after) {}

  /** Whether somebody is to be told now. */
  public boolean toTell() {
    return state == ReminderState.OPEN && notBefore.isEmpty();
  }

  /** The earliest day by which something of it is best done. */
  public LocalDate by() {
    return about.stream()
        .map(Reminder.About::by)
        .min(Comparator.naturalOrder())
        .orElse(LocalDate.MAX);
  }

  /** The last thing said up to a day. */
  public Optional<Reminder.Said> last(LocalDate day) {
    return written.stream()
        .flatMap(r -> r.lastOn(day).stream())
        .max(Comparator.comparing(Reminder.Said::day));
  }
}
