package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.present.Desk;
import hullalmanac.present.house.CalendarFollower;
import hullalmanac.present.house.Calendars;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The calendar that this computer writes, and the one whose busy days it reads. */
public final class CalendarSheet extends ShownSheet {
  private static final String WRITTEN = "calendar";
  private static final String READ = "busy days";
  private static final Input.FileName TO_WRITE =
      new Input.FileName("Calendars (.ics)", List.of("ics"), true);
  private static final Input.FileName TO_READ =
      new Input.FileName("Calendars (.ics)", List.of("ics"), false);

  private final CalendarFollower calendar;

  public CalendarSheet(Desk desk, CalendarFollower calendar) {
    super(desk);
    this.calendar = calendar;
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    return new SheetState(
        "Calendars",
        "Of this computer; what is set here is not in the record.",
        List.of(
            new SheetState.Form(
                WRITTEN,
                "A calendar that follows the record",
                written(fleet).stream().map(f -> f.on(calendar.calendars())).toList()),
            new SheetState.Words(calendar.saysOfWritten()),
            new SheetState.Words(
                "Visits, reminders, curing and lay-ups, for a phone or another program to subscribe"
                    + " to; best in a folder that is kept in step. It is written after each change"
                    + " and when the record is opened, and left alone where nothing in it changed."
                    + " Names of people, notes and prices are never in it. Left empty, none is"
                    + " written."),
            new SheetState.Form(
                READ, "Busy days of another calendar", List.of(read().on(calendar.calendars()))),
            new SheetState.Words(calendar.saysOfRead()),
            new SheetState.Words(
                "A calendar of yours, saved or kept in step as a file. It is only read: the day of a"
                    + " planned visit says beside it how busy you are then. Nothing of it comes into"
                    + " the record.")),
        Optional.empty());
  }

  private static List<FieldOf<Calendars>> written(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    return List.of(
        file("written", "File to write", TO_WRITE, Calendars::written),
        make.yesNo(
            "withPrivate", "Keys, gate codes and absences in it, too", Calendars::withPrivate));
  }

  private static FieldOf<Calendars> read() {
    return file("read", "File to read", TO_READ, Calendars::read);
  }

  private static FieldOf<Calendars> file(
      String id, String label, Input.FileName input, Function<Calendars, Optional<String>> get) {
    return FieldMaker.file(
        id,
        label,
        input,
        c -> get.apply(c).orElse(""),
        name -> Optional.of(name).filter(n -> !n.isEmpty()));
  }

  private Optional<FieldOf<Calendars>> field(Fleet fleet, At at) {
    return at.field().equals("read")
        ? Optional.of(read())
        : written(fleet).stream().filter(f -> f.id().equals(at.field())).findFirst();
  }

  @Override
  public Said say(At at, String text) {
    return fleet()
        .flatMap(f -> field(f, at))
        .map(f -> f.say(calendar.calendars(), text))
        .orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    fleet()
        .flatMap(f -> field(f, at))
        .map(f -> f.enter().apply(calendar.calendars(), text))
        .ifPresent(
            entry -> {
              if (entry instanceof Entry.Read<Calendars> now
                  && !now.value().equals(calendar.calendars())) {
                calendar.calendars(now.value());
              }
            });
    publish();
  }

  /** What is said of the files comes later than what is written. */
  @Override
  public void tick() {
    publishIfOther();
  }

  @Override
  public Topic topic() {
    return Topic.CALENDARS;
  }
}
