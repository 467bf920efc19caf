package hullalmanac.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import hullalmanac.core.calendar.CalendarEvent;
import hullalmanac.core.calendar.EventKind;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Uid;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import hullalmanac.core.work.VisitMove;
import hullalmanac.exchange.ical.OwnCalendar;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Trigger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalendarServiceTest {
  private static final Instant MORNING = Instant.parse("2026-05-01T08:00:00.250Z");
  private static final LocalDate PLANNED = LocalDate.of(2026, 5, 12);

  @TempDir Path folder;

  private final SetClock clock = new SetClock();
  private final Made made = new Made(48.4);
  private RecordService record;
  private EditService edits;
  private Path file;
  private Id<Visit> visit;

  /** A clock that a test sets. */
  private static final class SetClock extends Clock {
    private Instant now = MORNING;

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  @BeforeEach
  void open() {
    RecordService.Surroundings desk =
        new RecordService.Surroundings(clock, new Random(3)::nextLong, "desk", 1);
    RecordService.create(folder.resolve("record"), desk);
    record = RecordService.open(folder.resolve("record"), desk);
    edits = new EditService(record);
    file = folder.resolve("almanac.ics");
    Berth home = made.open(LocalDate.of(2024, 3, 1));
    made.berth(
        Cover.SHRINK_WRAP,
        Water.ASHORE,
        LocalDate.of(2024, 11, 8),
        Optional.of(LocalDate.of(2025, 3, 20)),
        true);
    Surface topsides = made.topsides();
    Product sealant = made.product(ProductKind.POLYMER_SEALANT, Optional.of(12.0));
    made.coat(topsides, sealant, LocalDate.of(2026, 4, 20));
    Visit planned = made.visit(PLANNED, VisitWhy.DUE);
    visit = planned.id();
    made.step(planned, StepKind.WASH, Optional.empty());
    made.step(planned, StepKind.PROTECT, Optional.of(sealant));
    Almanac all = made.almanac();
    record.change("all", Edit.all(all));
    record.change(
        "as planned",
        Edit.put(
            With.component(planned, "status", VisitStatus.PLANNED),
            With.component(sealant, "handling.cureHours", Optional.of(36)),
            With.component(
                home,
                "secrets",
                new Berth.Private("under the locker lid", "2690", "away all of June"))));
  }

  @AfterEach
  void close() {
    record.close();
  }

  private CalendarService.Written write(Path to, boolean withPrivate) {
    Fleet fleet = Fleet.of(record.almanac(), record.today());
    return new CalendarService(record).write(fleet, to, withPrivate);
  }

  private CalendarService.Written write() {
    return write(file, false);
  }

  private static String text(Path file) throws Exception {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }

  private List<CalendarEvent> events() throws Exception {
    return OwnCalendar.read(text(file)).orElseThrow();
  }

  private CalendarEvent event(Uid.Of what, Id<?> id) throws Exception {
    return events().stream()
        .filter(e -> e.uid().equals(Uid.of(what, id)))
        .findFirst()
        .orElseThrow();
  }

  private CalendarEvent event(EventKind kind) throws Exception {
    return events().stream().filter(e -> e.kind() == kind).findFirst().orElseThrow();
  }

  private Visit now() {
    return record.almanac().visits().stream()
        .filter(v -> v.id().equals(visit))
        .findFirst()
        .orElseThrow();
  }

  private Instant later(String what, Change change) {
    clock.now = clock.now.plus(Duration.ofHours(3));
    record.change(what, ((Change.Ready) change).edit());
    return clock.now.truncatedTo(ChronoUnit.SECONDS);
  }

  private Instant move(int days) {
    Visit v = now();
    return later(
        "moved", VisitMove.move(record.almanac(), v, v.day().plusDays(days), MoveReason.WEATHER));
  }

  @Test
  void aDateMovedTwiceIsTheSameEventChangedTwice() throws Exception {
    write();
    CalendarEvent before = event(Uid.Of.VISIT, visit);
    int sequence = before.revision().sequence();
    move(2);
    Instant moved = move(3);
    write();
    CalendarEvent after = event(Uid.Of.VISIT, visit);
    assertThat(after.first()).isEqualTo(PLANNED.plusDays(5));
    assertThat(after.revision().sequence()).isEqualTo(sequence + 2);
    assertThat(after.revision().at()).isEqualTo(moved);
    Path fresh = folder.resolve("fresh.ics");
    write(fresh, false);
    assertThat(OwnCalendar.read(text(fresh)).orElseThrow()).contains(after);
  }

  /** Plan, move, move, and nothing else: SEQUENCE 2. */
  @Test
  void sequenceBeginsAtNoughtAndCountsTheMovesOfAVisit() throws Exception {
    Visit fresh = With.component(With.component(now(), "id", new Id<Visit>(77)), "key", "another");
    later("planned", new Change.Ready(Edit.put(fresh)));
    visit = fresh.id();
    write();
    assertThat(event(Uid.Of.VISIT, visit).revision().sequence()).isZero();
    move(1);
    write();
    assertThat(event(Uid.Of.VISIT, visit).revision().sequence()).isEqualTo(1);
    move(1);
    write();
    assertThat(event(Uid.Of.VISIT, visit).revision().sequence()).isEqualTo(2);
  }

  @Test
  void twoRunsWithoutAChangeGiveTheSameBytesOnAnyDay() throws Exception {
    assertThat(write().changed()).isTrue();
    byte[] first = Files.readAllBytes(file);
    clock.now = clock.now.plus(Duration.ofDays(40));
    assertThat(write().changed()).isFalse();
    write(folder.resolve("other.ics"), false);
    assertThat(Files.readAllBytes(file)).isEqualTo(first);
    assertThat(Files.readAllBytes(folder.resolve("other.ics"))).isEqualTo(first);
  }

  @Test
  void whatConcernsNoEventChangesNoByte() throws Exception {
    write();
    byte[] first = Files.readAllBytes(file);
    later("a note", new Change.Ready(Edit.put(With.component(now(), "note", "gate 4711"))));
    assertThat(write().changed()).isFalse();
    assertThat(Files.readAllBytes(file)).isEqualTo(first);
  }

  @Test
  void undoRaisesTheSequenceOnceMore() throws Exception {
    move(2);
    write();
    int moved = event(Uid.Of.VISIT, visit).revision().sequence();
    clock.now = clock.now.plus(Duration.ofHours(1));
    edits.undo();
    write();
    CalendarEvent back = event(Uid.Of.VISIT, visit);
    assertThat(back.first()).isEqualTo(PLANNED);
    assertThat(back.revision().sequence()).isEqualTo(moved + 1);
    assertThat(back.revision().at()).isEqualTo(Instant.parse("2026-05-01T12:00:00Z"));
  }

  @Test
  void whatIsCancelledStaysAsCancelled() throws Exception {
    write();
    Instant cancelled =
        later("cancelled", VisitMove.cancel(record.almanac(), now(), MoveReason.OWNER));
    write();
    CalendarEvent event = event(Uid.Of.VISIT, visit);
    assertThat(event.cancelled()).isTrue();
    assertThat(event.revision().at()).isEqualTo(cancelled);
    assertThat(event.words().summary()).startsWith("Cancelled: Arctic Tern");
    assertThat(event(EventKind.CURE).cancelled()).isTrue();
    assertThat(event(EventKind.CURE).revision().at()).isEqualTo(cancelled);
  }

  @Test
  void whatIsTakenOutOfTheRecordIsToldAsCancelledAndComesBack() throws Exception {
    write();
    int told = event(Uid.Of.VISIT, visit).revision().sequence();
    Instant out = later("out", Removal.of(record.almanac(), now()));
    write();
    CalendarEvent gone = event(Uid.Of.VISIT, visit);
    assertThat(gone.cancelled()).isTrue();
    assertThat(gone.revision().sequence()).isEqualTo(told + 1);
    assertThat(gone.revision().at()).isEqualTo(out);
    assertThat(write().changed()).isFalse();
    clock.now = clock.now.plus(Duration.ofHours(1));
    edits.undo();
    write();
    CalendarEvent back = event(Uid.Of.VISIT, visit);
    assertThat(back.cancelled()).isFalse();
    assertThat(back.revision().sequence()).isEqualTo(told + 2);
  }

  @Test
  void aNewNameOfTheBoatRaisesWhatShowsIt() throws Exception {
    write();
    CalendarEvent before = event(Uid.Of.VISIT, visit);
    Boat boat = record.almanac().boats().get(0);
    Instant named =
        later("named", new Change.Ready(Edit.put(With.component(boat, "name", "Little Tern"))));
    write();
    CalendarEvent after = event(Uid.Of.VISIT, visit);
    assertThat(after.words().summary()).isEqualTo("Little Tern: wash, protect");
    assertThat(after.revision().sequence()).isEqualTo(before.revision().sequence() + 1);
    assertThat(after.revision().at()).isEqualTo(named);
    Instant moved = move(1);
    write();
    assertThat(event(Uid.Of.VISIT, visit).revision().sequence())
        .isEqualTo(before.revision().sequence() + 2);
    assertThat(event(Uid.Of.VISIT, visit).revision().at()).isEqualTo(moved);
  }

  @Test
  void aReminderKeepsItsNameWhenItsDayMoves() throws Exception {
    write();
    CalendarEvent before = event(EventKind.REMINDER);
    Product sealant = record.almanac().products().get(0);
    Instant read =
        later(
            "the label read again",
            new Change.Ready(Edit.put(With.component(sealant, "labelMonths", Optional.of(24.0)))));
    write();
    CalendarEvent after = event(EventKind.REMINDER);
    assertThat(after.uid()).isEqualTo(before.uid());
    assertThat(after.first()).isAfter(before.first());
    assertThat(after.revision().sequence()).isEqualTo(before.revision().sequence() + 1);
    assertThat(after.revision().at()).isEqualTo(read);
  }

  @Test
  void keysGateCodesAndAbsencesStayOutUnlessChosen() throws Exception {
    assertThat(write().privateLeftOut()).isEqualTo(1);
    assertThat(text(file)).doesNotContain("2690", "locker lid", "June");
    assertThat(write(file, true).privateLeftOut()).isZero();
    assertThat(text(file).replace("\r\n ", ""))
        .contains("Keys: under the locker lid\\nGate code: 2690\\nAway: away all of June");
  }

  @Test
  void theSecondReaderFindsEveryEvent() throws Exception {
    CalendarService.Written written = write();
    var calendar = new CalendarBuilder().build(new StringReader(text(file)));
    assertThat(calendar.validate().hasErrors()).isFalse();
    assertThat(calendar.getComponents(Component.VEVENT)).hasSize(written.events()).hasSize(5);
    assertThat(events()).extracting(CalendarEvent::kind).contains(EventKind.values());
  }

  /**
   * RFC 5545, sections 3.6.6 and 3.8.6.3: an alarm on the screen has an action, a description and a
   * trigger, which counts from midnight where the event takes whole days. Nine in the morning of
   * the day before is 15 hours before; of 14 days before, 327; of 7 days before, 159.
   */
  @Test
  void plannedVisitsRemindersAndLayUpsRingAndNothingElseDoes() throws Exception {
    write();
    var calendar = new CalendarBuilder().build(new StringReader(text(file)));
    List<VEvent> all = calendar.getComponents(Component.VEVENT);
    assertThat(all)
        .extracting(
            e -> e.getProperty(Property.CATEGORIES).map(Property::getValue).orElse(""),
            CalendarServiceTest::rings)
        .contains(tuple("visit", "PT-15H"), tuple("reminder", "PT-327H"), tuple("cure", "silent"))
        .filteredOn(t -> t.toList().get(0).equals("lay-up"))
        .hasSize(2)
        .allMatch(t -> t.toList().get(1).equals("PT-159H"));
    later("cancelled", VisitMove.cancel(record.almanac(), now(), MoveReason.OWNER));
    write();
    assertThat(event(Uid.Of.VISIT, visit).alarmHours()).isEmpty();
  }

  private static String rings(VEvent event) {
    List<VAlarm> alarms = event.getComponents(Component.VALARM);
    if (alarms.isEmpty()) {
      return "silent";
    }
    VAlarm alarm = alarms.get(0);
    List<Property> said = alarm.getProperties();
    assertThat(said)
        .extracting(Property::getName)
        .containsExactlyInAnyOrder("ACTION", "DESCRIPTION", "TRIGGER");
    assertThat(alarm.getProperty(Property.ACTION).map(Property::getValue)).contains("DISPLAY");
    return Duration.from(alarm.<Trigger>getProperty("TRIGGER").orElseThrow().getDuration())
        .toString();
  }

  @Test
  void neverWritesOverSomethingElse() throws Exception {
    String other = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nEND:VCALENDAR\r\n";
    Files.writeString(file, other);
    assertThatThrownBy(this::write)
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("Choose another name");
    assertThat(text(file)).isEqualTo(other);
    assertThatThrownBy(() -> write(folder.resolve("nowhere").resolve("a.ics"), false))
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("cannot be written");
    assertThatThrownBy(() -> write(folder, false)).isInstanceOf(RecordException.class);
  }

  @Test
  void readsTheBusyDaysOfAnotherCalendar() throws Exception {
    write();
    var read =
        new CalendarService(record).busyDays(file, LocalDate.of(2026, 1, 1), PLANNED.plusDays(9));
    assertThat(read.problems()).isEmpty();
    assertThat(read.days())
        .as("reminders, curing and lay-ups take no time")
        .singleElement()
        .satisfies(d -> assertThat(d.day()).isEqualTo(PLANNED));
    assertThatThrownBy(
            () ->
                new CalendarService(record)
                    .busyDays(folder.resolve("none.ics"), PLANNED, PLANNED.plusDays(1)))
        .isInstanceOf(RecordException.class);
  }
}
