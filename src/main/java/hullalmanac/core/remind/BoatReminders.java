package hullalmanac.core.remind;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.ReminderState;
import hullalmanac.core.work.PlannedVisits;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The reminders of one boat. */
final class BoatReminders {
  private final BoatRows rows;
  private final RemindPractice practice;
  private final Boat boat;
  private final List<BoatDue> due;
  private final LocalDate today;
  private final LocalDate soon;
  private final Fate fate;
  private final List<Reminder> reminders;

  BoatReminders(
      BoatRows rows, RemindPractice practice, Boat boat, List<BoatDue> due, LocalDate today) {
    this.rows = rows;
    this.practice = practice;
    this.boat = boat;
    this.due = due;
    this.today = today;
    soon = today.plusWeeks(practice.leadWeeks());
    fate = new Fate(rows, today);
    reminders = rows.reminders(boat.id(), today);
  }

  List<Standing> standings() {
    List<Standing> standings = new ArrayList<>();
    List<Standing> askAgain = new ArrayList<>();
    for (Reminder reminder : reminders) {
      written(reminder)
          .ifPresent(s -> (s.state() == ReminderState.OPEN ? askAgain : standings).add(s));
    }
    List<Reminder.About> fresh = fresh();
    List<Reminder.About> booked = fresh.stream().filter(a -> fate.visit(a).isPresent()).toList();
    List<Reminder.About> open = fresh.stream().filter(a -> !booked.contains(a)).toList();
    if (!booked.isEmpty()) {
      standings.add(standing(ReminderState.BOOKED, booked, List.of(), Optional.empty()));
    }
    if (!askAgain.isEmpty()) {
      standings.add(together(askAgain, open));
    } else if (!open.isEmpty()) {
      standings.add(standing(ReminderState.OPEN, open, List.of(), notBefore(open)));
    }
    return standings;
  }

  private Standing standing(
      ReminderState state,
      List<Reminder.About> about,
      List<Reminder> written,
      Optional<LocalDate> notBefore) {
    return new Standing(
        boat,
        rows.whom(boat.id(), today),
        state,
        about,
        written,
        notBefore,
        state == ReminderState.BOOKED ? visit(about) : Optional.empty(),
        moved(written));
  }

  /** All that is to be told of the boat is one thing. */
  private Standing together(List<Standing> askAgain, List<Reminder.About> fresh) {
    List<Reminder.About> about = new ArrayList<>();
    Stream.concat(askAgain.stream().flatMap(s -> s.about().stream()), fresh.stream())
        .filter(a -> about.stream().noneMatch(b -> b.what().equals(a.what())))
        .forEach(about::add);
    return standing(
        ReminderState.OPEN,
        about,
        askAgain.stream().flatMap(s -> s.written().stream()).toList(),
        Optional.empty());
  }

  /** Where a reminder stands that was written down; nothing where it is over. */
  private Optional<Standing> written(Reminder reminder) {
    List<Reminder.About> live = live(reminder);
    ReminderState said = reminder.stateOn(today);
    ReminderState now = said;
    if (ofAnother(reminder)) {
      now = said.after(ReminderEvent.OVERTAKEN).orElse(said);
    } else if (live.isEmpty()) {
      now = said.after(ending(reminder)).orElse(said);
    } else if (live.stream().allMatch(a -> fate.visit(a).isPresent())) {
      now = said.after(ReminderEvent.BOOKED).orElse(said);
    }
    return now.over()
        ? Optional.empty()
        : Optional.of(
            new Standing(
                boat,
                rows.party(reminder.party()).or(() -> rows.whom(boat.id(), today)),
                now,
                live.stream().map(this::asOfNow).toList(),
                List.of(reminder),
                Optional.empty(),
                now == ReminderState.BOOKED ? visit(live) : Optional.empty(),
                moved(List.of(reminder))));
  }

  private ReminderEvent ending(Reminder reminder) {
    boolean done =
        reminder.about().stream()
            .anyMatch(a -> is(fate.of(a, reminder.since()), ReminderEvent.WORK_DONE));
    return done ? ReminderEvent.WORK_DONE : ReminderEvent.OVERTAKEN;
  }

  private static boolean is(Optional<ReminderEvent> event, ReminderEvent wanted) {
    return event.equals(Optional.of(wanted));
  }

  /** What was told to somebody who has nothing to do with the boat any more is over. */
  private boolean ofAnother(Reminder reminder) {
    return reminder.party().filter(p -> !rows.hasToDo(p, boat.id(), today)).isPresent();
  }

  private List<Reminder.About> live(Reminder reminder) {
    return reminder.about().stream().filter(a -> fate.of(a, reminder.since()).isEmpty()).toList();
  }

  private Optional<LocalDate> visit(List<Reminder.About> about) {
    return about.stream().flatMap(a -> fate.visit(a).stream()).max(Comparator.naturalOrder());
  }

  /** A thing with its day as it is reckoned now. */
  private Reminder.About asOfNow(Reminder.About about) {
    LocalDate by =
        about
            .coat()
            .flatMap(rows::forecast)
            .flatMap(CoatForecast::bestBy)
            .or(() -> about.duty().map(d -> rows.duty(d).dueOn()))
            .orElse(about.by());
    return new Reminder.About(about.coat(), about.duty(), about.plan(), by);
  }

  private List<Standing.Moved> moved(List<Reminder> written) {
    List<Standing.Moved> moved = new ArrayList<>();
    for (Reminder reminder : written) {
      LocalDate said = reminder.toldOn(today).orElse(reminder.since());
      for (Reminder.About told : live(reminder)) {
        LocalDate now = asOfNow(told).by();
        if (Math.abs(ChronoUnit.DAYS.between(told.by(), now)) >= practice.movedDays()) {
          moved.add(
              new Standing.Moved(
                  told,
                  now,
                  told.coat().flatMap(c -> rows.newest(rows.coat(c).surface(), said, today))));
        }
      }
    }
    return moved;
  }

  /** What falls due and was not told of yet. */
  private List<Reminder.About> fresh() {
    List<Reminder.About> first =
        Stream.concat(coats(), duties(soon))
            .filter(a -> !spokenFor(a))
            .sorted(Comparator.comparing(Reminder.About::by))
            .toList();
    if (first.isEmpty()) {
      return turns(today.plusDays(practice.planDays())).filter(a -> !spokenFor(a)).toList();
    }
    LocalDate near = first.get(0).by().plusDays(practice.togetherDays());
    LocalDate told = today.plusDays(practice.planDays());
    List<Reminder.About> all = new ArrayList<>(first);
    Stream.concat(duties(near), turns(near.isAfter(told) ? near : told))
        .filter(a -> !spokenFor(a))
        .filter(a -> all.stream().noneMatch(b -> b.what().equals(a.what())))
        .forEach(all::add);
    return all;
  }

  private Stream<Reminder.About> coats() {
    return due.stream()
        .filter(d -> d.workBy().filter(by -> !by.isAfter(soon)).isPresent())
        .flatMap(d -> d.coats().stream())
        .flatMap(f -> f.bestBy().map(by -> Reminder.About.coat(f.coat().id(), by)).stream());
  }

  private Stream<Reminder.About> duties(LocalDate until) {
    return rows.dutiesOf(boat.id()).stream()
        .filter(d -> d.doneOn().isEmpty() && !d.dueOn().isAfter(until))
        .filter(d -> rows.forecast(d.coat()).isPresent())
        .sorted(Comparator.comparing(Duty::dueOn).thenComparing(Duty::id))
        .map(d -> Reminder.About.duty(d.id(), d.dueOn()));
  }

  /** Turns from which a care plan runs, after it rested. */
  private Stream<Reminder.About> turns(LocalDate until) {
    return rows.plansOf(boat.id()).stream()
        .flatMap(
            p ->
                PlannedVisits.days(p, today, until.plusDays(1))
                    .filter(day -> begins(p, day))
                    .map(day -> Reminder.About.plan(p.id(), day)))
        .filter(a -> fate.of(a, today).isEmpty());
  }

  private static boolean begins(CarePlan plan, LocalDate day) {
    LocalDate run = day.minusDays(RemindPractice.ONE_RUN_DAYS);
    return PlannedVisits.days(plan, run, day).findAny().isEmpty();
  }

  /** Whether somebody was told of a thing, and nothing since makes it a thing to tell again. */
  private boolean spokenFor(Reminder.About about) {
    return reminders.stream()
        .filter(r -> !ofAnother(r))
        .anyMatch(
            r ->
                r.about().stream()
                    .filter(a -> a.what().equals(about.what()))
                    .anyMatch(a -> !putOff(a, r, about.by())));
  }

  /** Whether work was done since a thing was told, and its date was put off by it. */
  private boolean putOff(Reminder.About told, Reminder reminder, LocalDate now) {
    return is(fate.of(told, reminder.since()), ReminderEvent.WORK_DONE)
        && !now.isBefore(told.by().plusDays(practice.movedDays()));
  }

  /** Until when an owner is left in peace; never so long that there is no time to work. */
  private Optional<LocalDate> notBefore(List<Reminder.About> open) {
    Optional<Party> whom = rows.whom(boat.id(), today);
    LocalDate by =
        open.stream().map(Reminder.About::by).min(Comparator.naturalOrder()).orElseThrow();
    LocalDate last = by.minusDays(RemindPractice.LAST_CALL_DAYS);
    return reminders.stream()
        .filter(r -> r.party().equals(whom.map(Party::id)))
        .flatMap(r -> r.lastOn(today).stream())
        .map(s -> s.day().plusDays(practice.quietDays()))
        .max(Comparator.naturalOrder())
        .map(quiet -> quiet.isAfter(last) ? last : quiet)
        .filter(until -> until.isAfter(today));
  }
}
