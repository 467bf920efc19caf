package hullalmanac.core.remind;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.DutyKind;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Reminder.Said;
import hullalmanac.core.record.Reminder.Way;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.ReminderState;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** Reminders of one boat, with dates that are given and not forecast. */
class RemindingTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private final AtomicLong next = new AtomicLong(1_000_000);
  private final IdSource ids = new IdSource(() -> next.addAndGet(2));
  private final Made made = new Made(48.4);
  private final Surface topsides = made.topsides();
  private final Product sealant = made.product(ProductKind.POLYMER_SEALANT, Optional.of(12.0));
  private final Coat coat = made.coat(topsides, sealant, DAY.minusDays(200));
  private final Map<Id<Coat>, LocalDate> dates = new TreeMap<>(Map.of(coat.id(), DAY.plusDays(60)));
  private Almanac almanac = made.almanac();
  private LocalDate today = DAY;

  private Boat boat() {
    return made.boat();
  }

  private Party owner(String name, LocalDate from, Optional<LocalDate> until) {
    Party party =
        new Party(
            ids.next(),
            name.toLowerCase(java.util.Locale.ROOT),
            PartyKind.PERSON,
            name,
            "",
            "",
            "",
            "",
            Optional.empty(),
            "");
    put(
        party,
        new Role(ids.next(), "role-" + name, boat().id(), party.id(), RoleKind.OWNS, from, until));
    return party;
  }

  private void put(Row... rows) {
    almanac = almanac.with(Edit.put(rows));
  }

  private List<Standing> standings() {
    List<CoatForecast> coats = new ArrayList<>();
    for (Coat c : almanac.coats()) {
      if (dates.containsKey(c.id())) {
        coats.add(forecast(c, dates.get(c.id())));
      }
    }
    List<BoatDue> due =
        coats.isEmpty()
            ? List.of()
            : List.of(
                new BoatDue(
                    boat(),
                    coats,
                    Optional.of(DAY),
                    coats.stream().flatMap(f -> f.bestBy().stream()).min(LocalDate::compareTo)));
    return Reminding.on(almanac, coats, due, today);
  }

  private CoatForecast forecast(Coat c, LocalDate by) {
    return new CoatForecast(
        topsides,
        c,
        sealant,
        new Outcome.Dated(by, by, by.minusDays(30), Optional.of(by), Optional.empty()),
        Optional.of(0.1),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        0.3);
  }

  private Standing only() {
    assertThat(standings()).hasSize(1);
    return standings().get(0);
  }

  private void say(Said said) {
    Change change = Telling.change(almanac, ids, only(), said);
    assertThat(change).isInstanceOf(Change.Ready.class);
    almanac = almanac.with(((Change.Ready) change).edit());
  }

  private String refused(Said said) {
    Change change = Telling.change(almanac, ids, only(), said);
    assertThat(change).isInstanceOf(Change.Refused.class);
    return ((Change.Refused) change).problems().get(0).sentence();
  }

  @Test
  void aBoatIsToldWithinTheLeadAndNoEarlier() {
    dates.put(coat.id(), DAY.plusWeeks(10));
    assertThat(only().toTell()).isTrue();
    assertThat(only().by()).isEqualTo(DAY.plusWeeks(10));
    dates.put(coat.id(), DAY.plusWeeks(10).plusDays(1));
    assertThat(standings()).isEmpty();
  }

  @Test
  void whatWasToldIsNotToldAgainHoweverItsDateMoves() {
    say(Said.told(today, Way.PHONE, "left a message"));
    today = DAY.plusDays(20);
    for (int days : new int[] {-40, -13, -1, 0, 1, 13, 40, 300}) {
      dates.put(coat.id(), DAY.plusDays(60 + days));
      assertThat(only().state()).as(days + " days").isEqualTo(ReminderState.TOLD);
      assertThat(only().moved()).as(days + " days").hasSize(Math.abs(days) >= 14 ? 1 : 0);
    }
  }

  @Test
  void aDateThatMovedByWeeksNamesTheFindingThatCameAfter() {
    say(Said.told(today, Way.PHONE, ""));
    dates.put(coat.id(), DAY.plusDays(10));
    today = DAY.plusDays(5);
    assertThat(only().moved().get(0).after()).isEmpty();
    put(made.water(topsides, DAY.plusDays(3), SurfaceState.WASHED, WaterBehaviour.FLAT));
    Standing.Moved moved = only().moved().get(0);
    assertThat(moved.told().by()).isEqualTo(DAY.plusDays(60));
    assertThat(moved.now()).isEqualTo(DAY.plusDays(10));
    assertThat(moved.after()).hasValueSatisfying(f -> assertThat(f.day()).isAfter(DAY));
  }

  @Test
  void anOwnerWhoWantsToBeAskedAgainIsToldAgainFromThatDayOn() {
    say(Said.told(today, Way.PHONE, ""));
    say(Said.askAgain(today, DAY.plusDays(30), "is away"));
    assertThat(refused(Said.told(today, Way.MAIL, ""))).contains("wants to be asked later");
    today = DAY.plusDays(29);
    assertThat(only().toTell()).isFalse();
    today = DAY.plusDays(30);
    assertThat(only().toTell()).isTrue();
    dates.put(coat.id(), DAY.plusDays(75));
    say(Said.told(today, Way.MAIL, ""));
    assertThat(almanac.reminders())
        .singleElement()
        .satisfies(
            r -> {
              assertThat(r.log()).hasSize(3);
              assertThat(r.about().get(0).by()).isEqualTo(DAY.plusDays(75));
            });
  }

  @Test
  void whatWasDeclinedStaysDeclinedUntilTheCoatIsRenewed() {
    say(Said.told(today, Way.PHONE, ""));
    say(Said.of(today, ReminderEvent.DECLINED, ""));
    today = DAY.plusDays(300);
    assertThat(only().state()).isEqualTo(ReminderState.DECLINED);
    assertThat(refused(Said.of(today, ReminderEvent.DECLINED, ""))).contains("declined already");
    renew(DAY.plusDays(200), Optional.empty());
    assertThat(standings()).isEmpty();
  }

  private Coat renew(LocalDate day, Optional<Id<Visit>> visit) {
    Coat again =
        new Coat(
            ids.next(),
            "again",
            topsides.id(),
            sealant.id(),
            Optional.of(day),
            Optional.empty(),
            visit,
            Optional.empty(),
            "",
            1,
            Optional.empty(),
            Optional.empty(),
            "");
    put(again);
    dates.remove(coat.id());
    return again;
  }

  @Test
  void aRenewalMakesSomethingNewToTell() {
    say(Said.told(today, Way.PHONE, ""));
    Coat again = renew(DAY.plusDays(10), Optional.empty());
    today = DAY.plusDays(11);
    assertThat(standings()).isEmpty();
    dates.put(again.id(), DAY.plusDays(70));
    assertThat(only().written()).isEmpty();
    assertThat(only().about()).containsExactly(Reminder.About.coat(again.id(), DAY.plusDays(70)));
  }

  private Visit visit(LocalDate day, VisitStatus status) {
    boolean done = status == VisitStatus.DONE;
    Visit visit =
        new Visit(
            new Id<>(77),
            "visit",
            boat().id(),
            day,
            status,
            VisitWhy.DUE,
            Optional.empty(),
            Optional.empty(),
            hullalmanac.core.record.Handover.NOT_YET,
            List.of(
                new Visit.Part(
                    topsides.id(),
                    done ? WorkState.DONE : WorkState.PLANNED,
                    done ? Optional.of(day) : Optional.empty(),
                    "")),
            List.of(),
            "");
    put(visit);
    return visit;
  }

  @Test
  void aPlannedVisitBooksAndADoneOneEndsItUntilItsDateWasPutOff() {
    Standing before = only();
    visit(DAY.plusDays(12), VisitStatus.PLANNED);
    assertThat(only().state()).isEqualTo(ReminderState.BOOKED);
    assertThat(only().visit()).contains(DAY.plusDays(12));
    almanac = almanac.with(Edit.remove(almanac.visits()));
    assertThat(only()).isEqualTo(before);
    say(Said.told(today, Way.PHONE, ""));
    visit(DAY.plusDays(12), VisitStatus.PLANNED);
    assertThat(only().state()).isEqualTo(ReminderState.BOOKED);
    assertThat(refused(Said.told(today, Way.MAIL, ""))).contains("booked");
    assertThat(refused(Said.of(today, ReminderEvent.CALLED_OFF, ""))).contains("Nothing is booked");
    visit(DAY.plusDays(12), VisitStatus.DONE);
    today = DAY.plusDays(12);
    assertThat(standings()).isEmpty();
    dates.put(coat.id(), DAY.plusDays(73));
    assertThat(standings()).as("13 days later").isEmpty();
    dates.put(coat.id(), DAY.plusDays(74));
    assertThat(only().toTell()).as("put off by two weeks").isFalse();
    assertThat(only().state()).isEqualTo(ReminderState.OPEN);
    assertThat(only().notBefore()).as("left in peace").contains(DAY.plusDays(28));
  }

  @Test
  void anotherOwnerIsToldAnew() {
    Party first = owner("Wren", DAY.minusYears(3), Optional.of(DAY.plusDays(20)));
    say(Said.told(today, Way.PHONE, ""));
    assertThat(only().whom()).contains(first);
    Party second = owner("Finch", DAY.plusDays(20), Optional.empty());
    assertThat(only().state()).isEqualTo(ReminderState.TOLD);
    today = DAY.plusDays(20);
    assertThat(only().toTell()).isTrue();
    assertThat(only().whom()).contains(second);
  }

  @Test
  void afterAWordTheOwnerIsLeftInPeaceWhileThereIsTime() {
    owner("Wren", DAY.minusYears(3), Optional.empty());
    say(Said.told(today, Way.PHONE, ""));
    Coat other = made.coat(topsides, sealant, DAY.minusDays(100));
    put(With.component(other, "over", Optional.of(coat.id())));
    today = DAY.plusDays(3);
    dates.put(other.id(), DAY.plusDays(70));
    dates.remove(coat.id());
    Standing open =
        standings().stream().filter(s -> s.state() == ReminderState.OPEN).findFirst().orElseThrow();
    assertThat(open.notBefore()).contains(DAY.plusDays(28));
    dates.put(other.id(), DAY.plusDays(30));
    open =
        standings().stream().filter(s -> s.state() == ReminderState.OPEN).findFirst().orElseThrow();
    assertThat(open.notBefore()).as("two weeks before").contains(DAY.plusDays(16));
    dates.put(other.id(), DAY.plusDays(16));
    assertThat(standings()).anyMatch(Standing::toTell);
  }

  @Test
  void aMakersDutyIsToldByItsOwnDateAndEndsWhenItIsDone() {
    dates.put(coat.id(), DAY.plusDays(400));
    Duty duty =
        new Duty(
            ids.next(),
            "d",
            coat.id(),
            DutyKind.INSPECTION,
            DAY.plusDays(50),
            Optional.empty(),
            "");
    put(duty);
    assertThat(only().about()).containsExactly(Reminder.About.duty(duty.id(), DAY.plusDays(50)));
    say(Said.told(today, Way.LETTER, ""));
    assertThat(only().state()).isEqualTo(ReminderState.TOLD);
    put(With.component(duty, "doneOn", Optional.of(DAY.plusDays(9))));
    assertThat(only().state()).as("not done yet").isEqualTo(ReminderState.TOLD);
    today = DAY.plusDays(9);
    assertThat(standings()).isEmpty();
  }

  @Test
  void aCarePlanIsToldWhenItBeginsAgainAndNotAtEachTurn() {
    dates.put(coat.id(), DAY.plusDays(400));
    CarePlan plan =
        new CarePlan(
            ids.next(),
            "wash",
            boat().id(),
            "wash",
            4,
            List.of(Month.APRIL, Month.MAY, Month.JUNE),
            Optional.empty(),
            LocalDate.of(2025, 4, 7),
            Optional.empty(),
            List.of());
    put(plan);
    LocalDate first = LocalDate.of(2026, 4, 6);
    today = first.minusDays(22);
    assertThat(standings()).isEmpty();
    today = first.minusDays(21);
    assertThat(only().about()).containsExactly(Reminder.About.plan(plan.id(), first));
    say(Said.told(today, Way.MESSAGE, ""));
    today = first.plusDays(10);
    assertThat(only().state()).as("the next turn is not told").isEqualTo(ReminderState.TOLD);
    Change removed = Removal.of(almanac, plan);
    Almanac without = almanac.with(((Change.Ready) removed).edit());
    assertThat(without.reminders()).singleElement().satisfies(r -> assertThat(r.about()).isEmpty());
    almanac = without;
    assertThat(standings()).isEmpty();
  }

  @Test
  void nothingIsWrittenBeforeWhatWasSaidLater() {
    say(Said.told(today, Way.PHONE, ""));
    assertThat(refused(Said.of(DAY.minusDays(1), ReminderEvent.BOOKED, "")))
        .contains("omething was said");
  }
}
