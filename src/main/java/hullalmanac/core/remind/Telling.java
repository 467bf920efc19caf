package hullalmanac.core.remind;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.ReminderState;
import hullalmanac.core.record.Row;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewKeys;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes down what was said to somebody of a boat that falls due. */
public final class Telling {
  private Telling() {}

  /** Why something cannot be said as it stands; nothing where it can. */
  public static Optional<ReminderState.Refusal> refusal(Standing standing, Reminder.Said said) {
    if (standing.state().after(said.what()).isEmpty()) {
      return Optional.of(standing.state().refusal(said.what()));
    }
    return written(standing)
        .map(r -> r.stateOn(said.day()))
        .filter(state -> state.after(said.what()).isEmpty())
        .findFirst()
        .map(state -> state.refusal(said.what()));
  }

  /** What was written down, or an empty log for what nobody was told of yet. */
  private static Stream<Reminder> written(Standing standing) {
    return standing.written().stream();
  }

  /** Writes it down: in the reminders that are there, or in a new one. */
  public static Change change(
      Almanac almanac, IdSource ids, Standing standing, Reminder.Said said) {
    Optional<ReminderState.Refusal> not = refusal(standing, said);
    if (not.isPresent()) {
      return refused(standing, not.get());
    }
    Optional<Reminder.Said> later =
        written(standing)
            .map(r -> r.log().get(r.log().size() - 1))
            .filter(last -> last.day().isAfter(said.day()))
            .findFirst();
    if (later.isPresent()) {
      return refused(
          standing,
          new ReminderState.Refusal(
              "something was said of her on " + later.get().day() + " already",
              "Write down what was said from then on"));
    }
    return Change.checked(almanac, Edit.put(rows(almanac, ids, standing, said)));
  }

  private static Change refused(Standing standing, ReminderState.Refusal refusal) {
    return Change.refused(
        new Problem(
            Kind.REMINDER, standing.boat().key(), "what", refusal.message(), refusal.advice()));
  }

  private static List<Row> rows(
      Almanac almanac, IdSource ids, Standing standing, Reminder.Said said) {
    if (standing.written().isEmpty()) {
      return List.of(
          new Reminder(
              ids.next(),
              new NewKeys(almanac).next(Kind.REMINDER, standing.boat().key(), said.day()),
              standing.boat().id(),
              standing.whom().map(Party::id),
              standing.about(),
              List.of(said)));
    }
    List<Row> rows = new ArrayList<>();
    List<Reminder.About> fresh =
        standing.about().stream()
            .filter(a -> written(standing).noneMatch(r -> isAbout(r, a)))
            .toList();
    for (Reminder reminder : standing.written()) {
      rows.add(after(reminder, standing, rows.isEmpty() ? fresh : List.of(), said));
    }
    return rows;
  }

  private static boolean isAbout(Reminder reminder, Reminder.About about) {
    return reminder.about().stream().anyMatch(a -> a.what().equals(about.what()));
  }

  /** Who is told anew is told the days as they are reckoned now. */
  private static Reminder after(
      Reminder reminder, Standing standing, List<Reminder.About> fresh, Reminder.Said said) {
    List<Reminder.About> about = new ArrayList<>();
    for (Reminder.About item : reminder.about()) {
      about.add(
          said.what() == ReminderEvent.TOLD
              ? standing.about().stream()
                  .filter(a -> a.what().equals(item.what()))
                  .findFirst()
                  .orElse(item)
              : item);
    }
    about.addAll(fresh);
    List<Reminder.Said> log = new ArrayList<>(reminder.log());
    log.add(said);
    Optional<Id<Party>> party = reminder.party().or(() -> standing.whom().map(Party::id));
    return new Reminder(reminder.id(), reminder.key(), reminder.boat(), party, about, log);
  }
}
