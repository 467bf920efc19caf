package hullalmanac.present.house;

import hullalmanac.core.calendar.BusyWords;
import hullalmanac.core.calendar.Revisions;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.report.DateWords;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.service.CalendarService.Busy;
import hullalmanac.service.CalendarService.Written;
import hullalmanac.service.EditService;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Keeps the calendar of this computer as the record is shown, and reads the busy days of another.
 * Both are done beside the work, one writing at a time and the newest record only; what does not go
 * is said and tried again with the next change or minute.
 */
public final class CalendarFollower {
  private static final int DAYS_BACK = 31;
  private static final int YEARS_AHEAD = 2;

  private final TaskRunner tasks;
  private final EditService edits;
  private final Supplier<House> house;
  private Runnable told = () -> {};
  private Optional<Fleet> newest = Optional.empty();
  private boolean writing;
  private boolean again;
  private Optional<Written> written = Optional.empty();
  private Optional<String> trouble = Optional.empty();

  /** Asked of on other threads, too, when a day is entered. */
  private volatile Busy busy = Busy.NONE;

  /**
   * @param house knows the calendars of this computer
   */
  public CalendarFollower(TaskRunner tasks, EditService edits, Supplier<House> house) {
    this.tasks = tasks;
    this.edits = edits;
    this.house = house;
  }

  /** Tells who wants to know that something else is to be said of the calendars. */
  public void onTold(Runnable told) {
    this.told = told;
  }

  /** The calendars of this computer. */
  public Calendars calendars() {
    return house.get().calendars();
  }

  /** Sets the calendars of this computer; both are seen to at once. */
  public void calendars(Calendars now) {
    house.get().calendars(now);
    written = Optional.empty();
    trouble = Optional.empty();
    busy = Busy.NONE;
    told.run();
    write();
    read();
  }

  /** Follows the record to what is shown of it now. */
  public void show(Fleet fleet) {
    boolean otherDay = !newest.map(Fleet::asOf).equals(Optional.of(fleet.asOf()));
    newest = Optional.of(fleet);
    write();
    if (otherDay) {
      read();
    }
  }

  /** Reads again what has changed, and tries again what did not go; to be called every minute. */
  public void tick() {
    if (trouble.isPresent()) {
      write();
    }
    read();
  }

  /** Why the calendar could not be written; nothing while it can. */
  public Optional<String> trouble() {
    return trouble;
  }

  private Optional<String> file() {
    return calendars().written().filter(f -> !house.get().isSample());
  }

  private void write() {
    if (newest.isEmpty() || file().isEmpty()) {
      return;
    }
    if (writing) {
      again = true;
      return;
    }
    writing = true;
    Fleet fleet = newest.get();
    tasks.run(
        Lane.DATABASE,
        () -> edits.calendar().revisionsOf(fleet.almanac()),
        revisions -> revisions.ifPresentOrElse(r -> write(fleet, r), this::next),
        e -> failed(file(), e));
  }

  private void write(Fleet fleet, Revisions revisions) {
    Optional<String> file = file();
    if (file.isEmpty()) {
      next();
      return;
    }
    boolean withPrivate = calendars().withPrivate();
    tasks.run(
        Lane.FILES,
        () -> edits.calendar().write(fleet, revisions, file.get(), withPrivate),
        now -> {
          if (file().equals(file)) {
            arrived(now);
          }
          next();
        },
        e -> failed(file, e));
  }

  private void arrived(Written now) {
    boolean news = trouble.isPresent() || !written.equals(Optional.of(now));
    written = Optional.of(now);
    trouble = Optional.empty();
    if (news) {
      told.run();
    }
  }

  /**
   * @param of the file that was being written; what is said of another one counts no more
   */
  private void failed(Optional<String> of, RuntimeException e) {
    if (!(e instanceof RecordException)) {
      writing = false;
      throw e;
    }
    if (file().equals(of)) {
      written = Optional.empty();
      trouble = Optional.of(e.getMessage());
      told.run();
    }
    next();
  }

  /** Goes on with what came while it wrote. */
  private void next() {
    writing = false;
    if (again) {
      again = false;
      write();
    }
  }

  private void read() {
    Optional<String> file = calendars().read();
    if (newest.isEmpty() || file.isEmpty()) {
      return;
    }
    String mark = busy.mark();
    LocalDate day = newest.get().asOf();
    tasks.run(
        Lane.FILES,
        () ->
            edits
                .calendar()
                .busyDays(file.get(), mark, day.minusDays(DAYS_BACK), day.plusYears(YEARS_AHEAD)),
        found -> {
          if (calendars().read().equals(file)) {
            found.ifPresent(this::found);
          }
        },
        e -> {
          throw e;
        });
  }

  /** A file that cannot be read for a moment, while it is replaced, takes no day away. */
  private void found(Busy now) {
    boolean gone = now.mark().isEmpty() && now.days().isEmpty();
    Busy then = gone ? new Busy("", busy.days(), now.problems()) : now;
    if (!then.equals(busy)) {
      busy = then;
      told.run();
    }
  }

  /** How busy one is on a day by the other calendar, in words; nothing on a day that is free. */
  public Optional<String> busyOn(LocalDate day) {
    return BusyWords.of(busy.days(), day);
  }

  /** What there is to say of the calendar that is written; empty where none is. */
  public String saysOfWritten() {
    if (calendars().written().isEmpty()) {
      return "";
    }
    if (house.get().isSample()) {
      return "The sample is not written into a calendar; your own record is, when it is opened.";
    }
    return trouble
        .or(() -> written.map(this::words))
        .orElse(newest.isEmpty() ? "" : "The calendar is being written …");
  }

  private String words(Written w) {
    ZonedDateTime at = w.at().atZone(edits.zone());
    String left =
        w.privateLeftOut() == 0
            ? ""
            : " Keys, gate codes and absences of "
                + (w.privateLeftOut() == 1 ? "1 berth" : w.privateLeftOut() + " berths")
                + " are left out.";
    return String.format(
            Locale.ROOT,
            "Written last on %s at %tR: %s.",
            DateWords.full(at.toLocalDate()),
            at,
            w.events() == 1 ? "1 event" : w.events() + " events")
        + left;
  }

  /** What there is to say of the calendar that is read; empty where none is. */
  public String saysOfRead() {
    if (calendars().read().isEmpty()) {
      return "";
    }
    if (busy.mark().isEmpty() && busy.problems().isEmpty()) {
      return newest.isEmpty() ? "" : "The calendar is being read …";
    }
    String problems = String.join(" ", busy.problems());
    long days = busy.days().stream().map(b -> b.day()).distinct().count();
    return busy.mark().isEmpty()
        ? problems
        : ("You are busy on "
                + (days == 1 ? "1 day" : days + " days")
                + " from a month ago to two years ahead; a visit’s day says so beside it. "
                + problems)
            .strip();
  }
}
