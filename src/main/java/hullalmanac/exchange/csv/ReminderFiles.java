package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What owners were told, what it was about, and what was said when. */
final class ReminderFiles {
  private ReminderFiles() {}

  /**
   * A reminder without its lists.
   *
   * @param in the line it came from; absent where it comes from a record
   */
  record Head(
      Id<Reminder> id, String key, Id<Boat> boat, Optional<Id<Party>> party, Optional<In> in) {
    /** The reminder with its lists; absent where that cannot be, which is then noted. */
    Optional<Reminder> whole(List<Reminder.About> about, List<SaidRow> said) {
      List<Reminder.Said> log = said.stream().map(SaidRow::said).toList();
      return in.orElseThrow().made(() -> new Reminder(id, key, boat, party, about, log));
    }
  }

  /** One thing that a reminder is about. */
  record AboutRow(Id<Reminder> reminder, Reminder.About about) {}

  /** One thing that was said. */
  record SaidRow(Id<Reminder> reminder, Reminder.Said said) {}

  private static List<Reminder> inOrder(Almanac almanac) {
    return almanac.reminders().stream().sorted(Comparator.comparing(Reminder::key)).toList();
  }

  static final CsvKind<Head> REMINDERS =
      new CsvKind<>(
          "reminders.csv",
          Kind.REMINDER,
          List.of(needText("id"), needText("boat"), text("party"))) {
        @Override
        List<Head> rows(Almanac almanac, Keys keys) {
          return inOrder(almanac).stream()
              .map(r -> new Head(r.id(), r.key(), r.boat(), r.party(), Optional.empty()))
              .toList();
        }

        @Override
        void write(Head r, Out out) {
          out.put("id", r.key())
              .ref("boat", Kind.BOAT, r.boat())
              .ref("party", Kind.PARTY, r.party());
        }

        @Override
        Optional<Head> read(In in) {
          Id<Reminder> id = in.ref(Kind.REMINDER, "id");
          Id<Boat> boat = in.ref(Kind.BOAT, "boat");
          Optional<Id<Party>> party = in.maybeRef(Kind.PARTY, "party");
          return in.made(() -> new Head(id, in.key("id"), boat, party, Optional.of(in)));
        }
      };

  static final CsvKind<AboutRow> ABOUT =
      new CsvKind<>(
          "reminder-about.csv",
          Kind.REMINDER,
          List.of(
              needText("reminder"),
              text("coat"),
              text("duty"),
              text("care_plan"),
              need("due_on"))) {
        @Override
        List<AboutRow> rows(Almanac almanac, Keys keys) {
          return inOrder(almanac).stream()
              .flatMap(r -> r.about().stream().map(a -> new AboutRow(r.id(), a)))
              .toList();
        }

        @Override
        void write(AboutRow row, Out out) {
          out.ref("reminder", Kind.REMINDER, row.reminder())
              .ref("coat", Kind.COAT, row.about().coat())
              .ref("duty", Kind.DUTY, row.about().duty())
              .ref("care_plan", Kind.CARE_PLAN, row.about().plan())
              .put("due_on", row.about().by());
        }

        @Override
        Optional<AboutRow> read(In in) {
          Id<Reminder> reminder = in.ref(Kind.REMINDER, "reminder");
          Optional<Id<Coat>> coat = in.maybeRef(Kind.COAT, "coat");
          Optional<Id<Duty>> duty = in.maybeRef(Kind.DUTY, "duty");
          Optional<Id<CarePlan>> plan = in.maybeRef(Kind.CARE_PLAN, "care_plan");
          LocalDate by = in.day("due_on");
          return in.made(() -> new AboutRow(reminder, new Reminder.About(coat, duty, plan, by)));
        }
      };

  static final CsvKind<SaidRow> SAID =
      new CsvKind<>(
          "reminder-said.csv",
          Kind.REMINDER,
          List.of(
              needText("reminder"),
              need("day"),
              need("what"),
              value("way"),
              value("ask_after"),
              text("words"))) {
        @Override
        List<SaidRow> rows(Almanac almanac, Keys keys) {
          return inOrder(almanac).stream()
              .flatMap(r -> r.log().stream().map(s -> new SaidRow(r.id(), s)))
              .toList();
        }

        @Override
        void write(SaidRow row, Out out) {
          out.ref("reminder", Kind.REMINDER, row.reminder())
              .put("day", row.said().day())
              .put("what", row.said().what())
              .put("way", row.said().way())
              .put("ask_after", row.said().askAfter())
              .put("words", row.said().words());
        }

        @Override
        Optional<SaidRow> read(In in) {
          Id<Reminder> reminder = in.ref(Kind.REMINDER, "reminder");
          LocalDate day = in.day("day");
          ReminderEvent what = in.coded(ReminderEvent.class, "what", ReminderEvent.TOLD);
          Optional<Reminder.Way> way = in.maybeCoded(Reminder.Way.class, "way");
          Optional<LocalDate> after = in.maybeDay("ask_after");
          return in.made(
              () ->
                  new SaidRow(
                      reminder, new Reminder.Said(day, what, way, after, in.text("words"))));
        }
      };
}
