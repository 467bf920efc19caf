package hullalmanac.store;

import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;

/** What owners were told, and what came of it. */
final class ReminderStore {
  private static final Columns REMINDER =
      Columns.of(
          "reminder",
          """
          id
          key
          boat_id
          party_id
          """);

  private static final Columns ABOUT =
      Columns.of(
          "reminder_about",
          """
          reminder_id
          place
          coat_id
          duty_id
          care_plan_id
          due_on
          """);

  private static final Columns SAID =
      Columns.of(
          "reminder_said",
          """
          reminder_id
          place
          day
          what
          way
          ask_after
          words
          """);

  private final Tx tx;

  ReminderStore(Tx tx) {
    this.tx = tx;
  }

  List<Reminder> reminders() throws SQLException {
    Map<Long, List<Reminder.About>> about = about();
    Map<Long, List<Reminder.Said>> said = said();
    return tx.list(
        REMINDER.select("id"),
        row ->
            new Reminder(
                row.id("id"),
                row.text("key"),
                row.id("boat_id"),
                row.maybeId("party_id"),
                about.getOrDefault(row.number("id"), List.of()),
                said.getOrDefault(row.number("id"), List.of())));
  }

  private Map<Long, List<Reminder.About>> about() throws SQLException {
    return Placed.gather(
        tx.list(
            ABOUT.select("reminder_id, place"),
            row ->
                new Placed<Reminder, Reminder.About>(
                    row.id("reminder_id"),
                    row.whole("place"),
                    new Reminder.About(
                        row.maybeId("coat_id"),
                        row.maybeId("duty_id"),
                        row.maybeId("care_plan_id"),
                        row.day("due_on")))));
  }

  private Map<Long, List<Reminder.Said>> said() throws SQLException {
    return Placed.gather(
        tx.list(
            SAID.select("reminder_id, place"),
            row ->
                new Placed<Reminder, Reminder.Said>(
                    row.id("reminder_id"),
                    row.whole("place"),
                    new Reminder.Said(
                        row.day("day"),
                        row.coded(ReminderEvent.class, "what"),
                        row.maybeCoded(Reminder.Way.class, "way"),
                        row.maybeDay("ask_after"),
                        row.text("words")))));
  }

  void putReminders(List<Reminder> reminders) throws SQLException {
    tx.each(
        REMINDER.put(),
        reminders,
        (to, r) ->
            to.set("id", r.id())
                .set("key", r.key())
                .set("boat_id", r.boat())
                .set("party_id", r.party()));
    tx.each(
        ABOUT.cut(),
        reminders,
        (to, r) -> to.set("reminder_id", r.id()).set("place", r.about().size()));
    tx.each(
        ABOUT.put(),
        reminders.stream().flatMap(r -> Placed.place(r.id(), r.about()).stream()).toList(),
        (to, a) ->
            to.set("reminder_id", a.owner())
                .set("place", a.place())
                .set("coat_id", a.item().coat())
                .set("duty_id", a.item().duty())
                .set("care_plan_id", a.item().plan())
                .set("due_on", a.item().by()));
    tx.each(
        SAID.cut(),
        reminders,
        (to, r) -> to.set("reminder_id", r.id()).set("place", r.log().size()));
    tx.each(
        SAID.put(),
        reminders.stream().flatMap(r -> Placed.place(r.id(), r.log()).stream()).toList(),
        (to, s) ->
            to.set("reminder_id", s.owner())
                .set("place", s.place())
                .set("day", s.item().day())
                .set("what", s.item().what())
                .set("way", s.item().way())
                .set("ask_after", s.item().askAfter())
                .set("words", s.item().words()));
  }
}
