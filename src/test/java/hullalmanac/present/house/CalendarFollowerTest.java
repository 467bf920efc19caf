package hullalmanac.present.house;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.calendar.CalendarEvent;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Uid;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.exchange.ical.OwnCalendar;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Cards;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.edit.VisitSheet;
import hullalmanac.present.settings.SettingsState;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.shell.Notice;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calendar goes after the record, and busy days come beside the days of visits. */
@Tag("slow")
class CalendarFollowerTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 12);

  @TempDir Path home;
  private final House house = House.still();
  private Path file;
  private Bench bench;
  private Visit visit;

  @BeforeEach
  void open() {
    file = home.resolve("almanac.ics");
    bench = Bench.open(home.resolve("record"));
    bench.presenter().livesIn(house);
    Visit some = bench.almanac().visits().get(0);
    visit =
        With.component(
            With.component(With.component(some, "status", VisitStatus.PLANNED), "day", DAY),
            "surfaces",
            List.of());
    bench.presenter().edit("planned", a -> Edit.put(visit));
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private Sheet page() {
    AtomicReference<SettingsState> settings = new AtomicReference<>();
    bench.presenter().settings().onChange(settings::set);
    SettingsState.Page page =
        settings.get().list().stream()
            .filter(p -> p.name().equals("Calendars"))
            .findFirst()
            .orElseThrow();
    bench.presenter().settings().choose(page);
    return settings.get().sheet().orElseThrow();
  }

  private String says() {
    AtomicReference<SheetState> state = new AtomicReference<>();
    page().onChange(state::set);
    return Cards.words(state.get());
  }

  private void set(String field, String text) {
    page().enter(new At("", "", field), text);
  }

  private void writeTo(Path to) {
    set("written", to.toString());
  }

  private void move(LocalDate day) {
    bench.presenter().edit("moved", a -> Edit.put(With.component(visit, "day", day)));
  }

  private CalendarEvent told() throws Exception {
    return OwnCalendar.read(Files.readString(file)).orElseThrow().stream()
        .filter(e -> e.uid().equals(Uid.of(Uid.Of.VISIT, visit.id())))
        .findFirst()
        .orElseThrow();
  }

  private List<String> notices() {
    return bench.shell().notices().stream().map(Notice::words).toList();
  }

  @Test
  void isWrittenAtOnceAndAfterEachChangeAndUndo() throws Exception {
    move(DAY.plusDays(1));
    assertThat(home.toFile().list()).as("no file is named yet").hasSize(1);
    assertThat(says()).doesNotContain("Written last");
    writeTo(file);
    assertThat(told().first()).isEqualTo(DAY.plusDays(1));
    int sequence = told().revision().sequence();
    move(DAY.plusDays(2));
    assertThat(told().first()).isEqualTo(DAY.plusDays(2));
    assertThat(told().revision().sequence()).isEqualTo(sequence + 1);
    bench.presenter().undo();
    assertThat(told().first()).isEqualTo(DAY.plusDays(1));
    int events = OwnCalendar.read(Files.readString(file)).orElseThrow().size();
    assertThat(says())
        .contains("Written last on Friday, 1 May 2026 at 09:00: " + events + " events.");
  }

  @Test
  void isWrittenWhenTheRecordIsOpened() throws Exception {
    house.calendars(new Calendars(Optional.of(file.toString()), false, Optional.empty()));
    bench.close();
    bench = Bench.open(home.resolve("record"));
    assertThat(file).doesNotExist();
    bench.presenter().livesIn(house);
    bench.presenter().load();
    assertThat(told().first()).isEqualTo(DAY);
  }

  @Test
  void aBurstOfChangesIsWrittenOnceMoreAndNeverTwiceAtOnce() throws Exception {
    writeTo(file);
    bench.tasks().hold(Lane.FILES);
    for (int day = 1; day <= 5; day++) {
      move(DAY.plusDays(day));
      assertThat(bench.tasks().waiting(Lane.FILES)).isEqualTo(1);
    }
    bench.tasks().step(Lane.FILES);
    assertThat(told().first()).isEqualTo(DAY.plusDays(1));
    assertThat(bench.tasks().waiting(Lane.FILES)).isEqualTo(1);
    bench.tasks().step(Lane.FILES);
    assertThat(told().first()).isEqualTo(DAY.plusDays(5));
    assertThat(bench.tasks().waiting(Lane.FILES)).isZero();
  }

  /** A record that was changed again is not told with the change log of the later one. */
  @Test
  void whatIsOvertakenBeforeItIsWrittenIsNotWritten() throws Exception {
    writeTo(file);
    bench.tasks().hold(Lane.DATABASE);
    bench.tasks().hold(Lane.FILES);
    move(DAY.plusDays(1));
    move(DAY.plusDays(2));
    bench.tasks().step(Lane.DATABASE);
    bench.tasks().step(Lane.DATABASE);
    assertThat(bench.tasks().waiting(Lane.DATABASE)).as("the log is asked for the first").isOne();
    bench.tasks().step(Lane.DATABASE);
    assertThat(bench.tasks().waiting(Lane.FILES)).isZero();
    bench.tasks().release(Lane.DATABASE);
    assertThat(bench.tasks().waiting(Lane.FILES)).isOne();
    bench.tasks().release(Lane.FILES);
    assertThat(told().first()).isEqualTo(DAY.plusDays(2));
  }

  @Test
  void whatConcernsNoEventWritesNoByte() throws Exception {
    writeTo(file);
    FileTime longAgo = FileTime.from(Instant.parse("2026-04-02T07:30:00Z"));
    Files.setLastModifiedTime(file, longAgo);
    bench
        .presenter()
        .edit("a note", a -> Edit.put(With.component(visit, "note", "the gate sticks")));
    assertThat(Files.getLastModifiedTime(file)).isEqualTo(longAgo);
    assertThat(says()).contains("Written last on Thursday, 2 April 2026 at 07:30");
  }

  @Test
  void aFileThatCannotBeWrittenIsSaidHoldsNothingUpAndIsTriedAgain() throws Exception {
    Path stick = home.resolve("stick");
    file = stick.resolve("almanac.ics");
    writeTo(file);
    assertThat(notices()).singleElement().asString().contains("cannot be written to " + file);
    assertThat(says()).contains("cannot be written to " + file);
    move(DAY.plusDays(1));
    assertThat(bench.almanac().visits()).extracting(Visit::day).contains(DAY.plusDays(1));
    assertThat(notices()).hasSize(1);
    Files.createDirectories(stick);
    bench.presenter().press(bench.shell().notices().get(0));
    assertThat(notices()).isEmpty();
    assertThat(told().first()).isEqualTo(DAY.plusDays(1));
    Files.delete(file);
    Files.delete(stick);
    move(DAY.plusDays(2));
    assertThat(notices()).hasSize(1);
    Files.createDirectories(stick);
    bench.presenter().lookAtTheClock();
    assertThat(notices()).as("the next minute tries again").isEmpty();
    assertThat(told().first()).isEqualTo(DAY.plusDays(2));
  }

  @Test
  void anothersCalendarIsNotWrittenOverAndClearingEndsIt() throws Exception {
    String other = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nEND:VCALENDAR\r\n";
    Files.writeString(file, other);
    writeTo(file);
    assertThat(notices()).singleElement().asString().contains("Choose another name");
    assertThat(Files.readString(file)).isEqualTo(other);
    set("written", "  ");
    assertThat(notices()).isEmpty();
    assertThat(house.calendars()).isEqualTo(Calendars.NONE);
    Files.delete(file);
    move(DAY.plusDays(1));
    assertThat(file).doesNotExist();
    set("written", "no\u0000such");
    assertThat(notices()).singleElement().asString().contains("No calendar can be called");
  }

  @Test
  void keysGateCodesAndAbsencesGoInOnlyWhenChosen() throws Exception {
    Berth.Private secrets = new Berth.Private("under the locker lid", "2690", "");
    bench
        .presenter()
        .edit(
            "a code",
            a ->
                Edit.put(
                    a.berths().stream()
                        .filter(b -> b.boat().equals(visit.boat()))
                        .map(b -> With.component(b, "secrets", secrets))
                        .toList()));
    writeTo(file);
    assertThat(Files.readString(file)).doesNotContain("2690");
    assertThat(says()).contains("Keys, gate codes and absences of ");
    set("withPrivate", "yes");
    assertThat(Files.readString(file)).contains("2690");
    assertThat(says()).doesNotContain("Keys, gate codes and absences of ");
    set("withPrivate", "no");
    assertThat(Files.readString(file)).doesNotContain("2690");
  }

  @Test
  void theSampleIsNeverWrittenIntoACalendar() {
    house.calendars(new Calendars(Optional.of(file.toString()), false, Optional.empty()));
    bench.presenter().livesIn(new SampleHouse(house));
    bench.presenter().load();
    assertThat(file).doesNotExist();
    assertThat(says()).contains("The sample is not written");
  }

  private String daySays(String text) {
    bench.presenter().open(new VisitSheet(bench.presenter(), visit.id()));
    return bench.sheet().say(new At("visit", "", "day"), text).words();
  }

  private static String busy(String... events) {
    StringBuilder text = new StringBuilder("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\n");
    for (int i = 0; i < events.length; i++) {
      text.append("BEGIN:VEVENT\r\nUID:").append(i).append("\r\nDTSTAMP:20260101T000000Z\r\n");
      text.append(events[i]).append("\r\nEND:VEVENT\r\n");
    }
    return text + "END:VCALENDAR\r\n";
  }

  @Test
  void theDayOfAPlannedVisitSaysHowBusyOneIsThen() throws Exception {
    Path mine = home.resolve("mine.ics");
    Files.writeString(
        mine,
        busy(
            "DTSTART:20260512T080000Z\r\nDURATION:PT3H",
            "DTSTART:20260513T080000Z\r\nDURATION:PT45M",
            "DTSTART:20260513T080000Z\r\nDURATION:PT1H45M",
            "DTSTART;VALUE=DATE:20260514"));
    assertThat(daySays("2026-05-12")).isEqualTo("Tuesday, 12 May 2026");
    set("read", mine.toString());
    assertThat(says()).contains("You are busy on 3 days");
    assertThat(daySays("2026-05-12"))
        .isEqualTo("Tuesday, 12 May 2026; busy then by your calendar: 3 h");
    assertThat(daySays("13/5/2026")).endsWith("; busy then by your calendar: up to 2 h 30 min");
    assertThat(daySays("14/5/2026")).endsWith("; busy all day by your calendar");
    assertThat(daySays("15/5/2026")).isEqualTo("Friday, 15 May 2026");
    assertThat(bench.almanac().visits()).contains(visit);
  }

  @Test
  void aCalendarThatChangesIsReadAgainWhileAVisitIsOpen() throws Exception {
    Path mine = home.resolve("mine.ics");
    Files.writeString(mine, busy());
    set("read", mine.toString());
    bench.presenter().open(new VisitSheet(bench.presenter(), visit.id()));
    assertThat(bench.state().toString()).doesNotContain("by your calendar");
    Files.writeString(mine, busy("DTSTART;VALUE=DATE:20260512"));
    bench.presenter().lookAtTheClock();
    assertThat(bench.state().toString()).contains("busy all day by your calendar");
    Files.delete(mine);
    bench.presenter().lookAtTheClock();
    assertThat(says()).contains("The calendar " + mine + " cannot be read");
    assertThat(daySays("2026-05-12")).endsWith("busy all day by your calendar");
  }

  @Test
  void whatIsSaidOfAFileThatIsNotMeantAnyMoreCountsNoMore() {
    bench.tasks().hold(Lane.FILES);
    writeTo(home.resolve("nowhere/all.ics"));
    set("written", "");
    bench.tasks().release(Lane.FILES);
    assertThat(notices()).noneMatch(n -> n.contains("calendar"));
  }

  @Test
  void whatIsWrongWithACalendarToReadIsSaidOnThePage() throws Exception {
    Path mine = home.resolve("mine.ics");
    set("read", mine.toString());
    assertThat(says()).contains("The calendar " + mine + " cannot be read");
    Files.writeString(mine, "a shopping list");
    bench.presenter().lookAtTheClock();
    assertThat(says()).contains("It is no calendar");
    writeTo(file);
    set("read", file.toString());
    assertThat(says()).contains("is a calendar that this program writes");
    set("read", "");
    assertThat(says()).doesNotContain("is a calendar that this program writes");
  }
}
