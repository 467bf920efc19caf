package hullalmanac.core.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Uid;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.With;
import hullalmanac.fixture.OpenSample;
import hullalmanac.service.Fleet;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CalendarEventsTest {
  private static final Instant AT = Instant.parse("2026-05-01T08:00:00Z");
  private static final Revisions NONE = new Revisions(Map.of(), Map.of(), new Revision(0, AT), AT);
  private static final LocalDate DAY = LocalDate.of(2026, 5, 12);

  private final Made made = new Made(48.4);

  private static List<CalendarEvent> events(Almanac almanac) {
    return CalendarEvents.of(almanac, List.of(), NONE, false);
  }

  private List<CalendarEvent> events(Row... put) {
    return events(made.almanac().with(Edit.put(put)));
  }

  private static CalendarEvent event(List<CalendarEvent> events, Uid.Of what, Id<?> id) {
    return events.stream().filter(e -> e.uid().equals(Uid.of(what, id))).findFirst().orElseThrow();
  }

  @Test
  void aVisitLastsFromItsDayToItsLastStep() {
    Visit visit = made.visit(DAY, VisitWhy.DUE);
    Step polish = made.step(visit, StepKind.POLISH, Optional.empty());
    CalendarEvent one = event(events(), Uid.Of.VISIT, visit.id());
    assertThat(one.first()).isEqualTo(DAY);
    assertThat(one.until()).isEqualTo(DAY.plusDays(1));
    assertThat(one.alarmHours()).as("it is done").isEmpty();
    CalendarEvent two =
        event(events(With.component(polish, "day", DAY.plusDays(2))), Uid.Of.VISIT, visit.id());
    assertThat(two.first()).isEqualTo(DAY);
    assertThat(two.until()).isEqualTo(DAY.plusDays(3));
    CalendarEvent planned =
        event(
            events(With.component(visit, "status", VisitStatus.PLANNED)), Uid.Of.VISIT, visit.id());
    assertThat(planned.alarmHours()).contains(-15);
  }

  /** Begun days count whole, as the visit's own page says it: 36 hours from the 12th, the 14th. */
  @Test
  void curingLastsUntilTheEndOfItsLastDay() {
    Visit visit = made.visit(DAY, VisitWhy.DUE);
    Product coating = made.product(ProductKind.SILICA_COATING, Optional.empty());
    made.step(visit, StepKind.PROTECT, Optional.of(coating));
    assertThat(events()).noneMatch(e -> e.kind() == EventKind.CURE);
    for (List<Integer> cure : List.of(List.of(1, 1), List.of(24, 1), List.of(36, 2))) {
      CalendarEvent event =
          event(
              events(With.component(coating, "handling.cureHours", Optional.of(cure.get(0)))),
              Uid.Of.CURE,
              visit.id());
      assertThat(event.first()).isEqualTo(DAY);
      assertThat(event.until()).isEqualTo(DAY.plusDays(cure.get(1)).plusDays(1));
      assertThat(event.busy()).isFalse();
      assertThat(event.words().text()).contains("label and data sheet come first");
    }
  }

  @Test
  void aSoapThatIsLeftToDryCuresNothing() {
    Visit visit = made.visit(DAY, VisitWhy.DUE);
    Product soap = made.product(ProductKind.SOAP, Optional.empty());
    made.step(visit, StepKind.WASH, Optional.of(soap));
    assertThat(events(With.component(soap, "handling.cureHours", Optional.of(2))))
        .noneMatch(e -> e.kind() == EventKind.CURE);
  }

  @Test
  void aLayUpIsADayAtItsBeginningAndADayAtItsEnd() {
    LocalDate from = LocalDate.of(2024, 11, 8);
    Berth once = made.berth(Cover.SHED, Water.ASHORE, from, Optional.of(from.plusDays(9)), false);
    List<CalendarEvent> events = events();
    CalendarEvent begins = event(events, Uid.Of.LAY_UP_BEGINS, once.id());
    CalendarEvent ends = event(events, Uid.Of.LAY_UP_ENDS, once.id());
    assertThat(begins.first()).isEqualTo(from);
    assertThat(begins.until()).isEqualTo(from.plusDays(1));
    assertThat(begins.again()).isEmpty();
    assertThat(ends.first()).isEqualTo(from.plusDays(9));
    Berth yearly = With.component(once, "yearly", true);
    assertThat(event(events(yearly), Uid.Of.LAY_UP_ENDS, once.id()).again())
        .contains(new CalendarEvent.Yearly(Optional.empty()));
    Berth lasting = With.component(yearly, "lastYear", Optional.of(2027));
    assertThat(event(events(lasting), Uid.Of.LAY_UP_ENDS, once.id()).again())
        .contains(new CalendarEvent.Yearly(Optional.of(LocalDate.of(2027, 11, 17))));
    assertThat(events(With.component(yearly, "lastYear", Optional.of(2023)))).isEmpty();
    assertThat(events(With.component(once, "water", Water.SALT))).isEmpty();
    assertThat(events(With.component(made.boat(), "status", BoatStatus.SOLD))).isEmpty();
  }

  @Test
  void oneReminderForWhatFallsDueTogetherAndNoneWithoutADay() {
    Fleet fleet = OpenSample.fleet();
    List<CalendarEvent> reminders =
        CalendarEvents.of(fleet.almanac(), fleet.due(), NONE, false).stream()
            .filter(e -> e.kind() == EventKind.REMINDER)
            .toList();
    List<BoatDue> dated = fleet.due().stream().filter(d -> d.workBy().isPresent()).toList();
    assertThat(reminders).hasSameSizeAs(dated).hasSizeGreaterThan(50);
    assertThat(fleet.due()).hasSizeGreaterThan(dated.size());
    for (BoatDue due : dated) {
      assertThat(reminders)
          .filteredOn(e -> e.first().equals(due.workBy().orElseThrow()))
          .anySatisfy(
              e -> {
                assertThat(e.words().summary()).startsWith(due.boat().name() + ": renew ");
                assertThat(e.words().text()).contains("not a guarantee");
                assertThat(e.words().text().lines()).hasSize(due.coats().size() + 2);
              });
    }
  }

  @Test
  void theSampleTellsNoNameKeyCodeOrNoteAndNoEventTwice() {
    Fleet fleet = OpenSample.fleet();
    Almanac a = fleet.almanac();
    Visit noted = With.component(a.visits().get(0), "note", "gate 4711, ask for Finn");
    List<CalendarEvent> events =
        CalendarEvents.of(a.with(Edit.put(noted)), fleet.due(), NONE, false);
    assertThat(events).extracting(CalendarEvent::uid).doesNotHaveDuplicates();
    String all = events.stream().map(e -> e.words().toString()).reduce("", String::concat);
    assertThat(all).doesNotContain("4711");
    for (Party party : a.parties()) {
      assertThat(all).doesNotContain(party.name());
    }
    assertThat(a.berths()).anyMatch(b -> !b.secrets().gateCode().isBlank());
    for (Berth berth : a.berths()) {
      for (String secret :
          List.of(berth.secrets().keys(), berth.secrets().gateCode(), berth.secrets().absence())) {
        assertThat(secret.isBlank() || !all.contains(secret)).as(secret).isTrue();
      }
    }
  }
}
