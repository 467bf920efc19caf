package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PlannedVisitsTest {
  private static final List<Month> ALL = List.of(Month.values());

  private final Slip slip = new Slip();

  private List<LocalDate> make(LocalDate today, LocalDate until) {
    slip.apply(PlannedVisits.edit(slip.almanac(), slip.ids, today, until));
    return days();
  }

  private List<LocalDate> days() {
    return slip.almanac().visits().stream().map(Visit::day).sorted().toList();
  }

  private CarePlan weekly(int weeks) {
    return slip.plan(weeks, ALL, DAY, Optional.empty());
  }

  @Test
  void everySoManyWeeksFromItsFirstDayUpToTheLastDayAskedFor() {
    CarePlan plan = weekly(3);
    assertThat(make(DAY, DAY.plusWeeks(6))).containsExactly(DAY, DAY.plusWeeks(3));
    assertThat(slip.almanac().visits())
        .allSatisfy(
            v -> {
              assertThat(v.status()).isEqualTo(VisitStatus.PLANNED);
              assertThat(v.why()).isEqualTo(VisitWhy.PLAN);
              assertThat(v.plan()).contains(plan.id());
              assertThat(v.boat()).isEqualTo(slip.boat.id());
              assertThat(v.note()).isEmpty();
            });
  }

  @Test
  void noneBeforeToday() {
    weekly(3);
    assertThat(make(DAY.plusDays(1), DAY.plusWeeks(7)))
        .containsExactly(DAY.plusWeeks(3), DAY.plusWeeks(6));
  }

  @Test
  void onlyInItsMonthsWithoutLosingCount() {
    slip.plan(4, List.of(Month.MAY, Month.AUGUST), DAY, Optional.empty());
    assertThat(make(DAY, DAY.plusWeeks(20)))
        .containsExactly(DAY, DAY.plusWeeks(16))
        .allMatch(d -> d.getMonth() == Month.MAY || d.getMonth() == Month.AUGUST);
  }

  @Test
  void notOnADayThatWasAgreedToFallOut() {
    slip.put(Altered.skipping(weekly(1), List.of(DAY.plusWeeks(1))));
    assertThat(make(DAY, DAY.plusWeeks(3))).containsExactly(DAY, DAY.plusWeeks(2));
  }

  @Test
  void noneOnceThePlanHasEnded() {
    slip.plan(1, ALL, DAY, Optional.of(DAY.plusWeeks(2)));
    assertThat(make(DAY, DAY.plusWeeks(9))).containsExactly(DAY, DAY.plusWeeks(1));
  }

  @Test
  void noneForABoatThatIsNotLookedAfter() {
    weekly(1);
    for (BoatStatus status : List.of(BoatStatus.SOLD, BoatStatus.RETIRED)) {
      Boat b = slip.boat("other", status);
      slip.put(
          new Boat(
              slip.boat.id(),
              slip.boat.key(),
              b.name(),
              b.type(),
              b.loa(),
              b.beam(),
              b.freeboard(),
              "",
              b.built(),
              b.use(),
              status,
              b.knownFrom(),
              ""));
      assertThat(make(DAY, DAY.plusWeeks(9))).isEmpty();
    }
  }

  @Test
  void aDayIsCoveredByAVisitOfThatPlanWhateverBecameOfIt() {
    CarePlan plan = weekly(1);
    make(DAY, DAY.plusWeeks(3));
    List<Visit> visits = new ArrayList<>(slip.almanac().visits());
    visits.sort(Comparator.comparing(Visit::day));
    slip.apply(VisitMove.cancel(slip.almanac(), visits.get(0), MoveReason.OWNER));
    slip.apply(VisitMove.move(slip.almanac(), visits.get(1), DAY.plusDays(9), MoveReason.WEATHER));
    slip.finish(visits.get(2), DAY.plusWeeks(2).minusDays(1));
    assertThat(make(DAY, DAY.plusWeeks(3))).hasSize(3);
    slip.visit(DAY.plusWeeks(3), VisitStatus.PLANNED, Optional.empty(), List.of());
    assertThat(make(DAY, DAY.plusWeeks(4))).hasSize(5);
    assertThat(slip.almanac().visits())
        .filteredOn(v -> v.plan().equals(Optional.of(plan.id())))
        .hasSize(4);
  }

  @Property(tries = 40)
  void askedForAgainItAddsNothing(
      @ForAll @IntRange(min = 1, max = 9) int weeks,
      @ForAll @Size(min = 1, max = 12) Set<Month> months,
      @ForAll @IntRange(min = -400, max = 400) int from) {
    Slip fresh = new Slip();
    fresh.plan(weeks, List.copyOf(months), DAY.plusDays(from), Optional.empty());
    LocalDate until = DAY.plusMonths(10);
    fresh.apply(PlannedVisits.edit(fresh.almanac(), fresh.ids, DAY, until));
    assertThat(PlannedVisits.edit(fresh.almanac(), fresh.ids, DAY, until).isEmpty()).isTrue();
    assertThat(fresh.almanac().visits())
        .extracting(Visit::day)
        .allMatch(d -> !d.isBefore(DAY) && d.isBefore(until) && months.contains(d.getMonth()));
  }

  @Property(tries = 12)
  void aYearLivedDayByDayHasTheDaysOfThePlanAndNoOthers(
      @ForAll @IntRange(min = 1, max = 9) int weeks,
      @ForAll @Size(min = 1, max = 12) Set<Month> months,
      @ForAll @IntRange(min = -400, max = 100) int from,
      @ForAll @IntRange(min = 1, max = 60) int ahead) {
    Slip fresh = new Slip();
    LocalDate begin = DAY.plusDays(from);
    fresh.plan(weeks, List.copyOf(months), begin, Optional.empty());
    for (LocalDate today = DAY; today.isBefore(DAY.plusYears(1)); today = today.plusDays(1)) {
      fresh.apply(PlannedVisits.edit(fresh.almanac(), fresh.ids, today, today.plusDays(ahead)));
    }
    List<LocalDate> expected = new ArrayList<>();
    LocalDate end = DAY.plusYears(1).plusDays(ahead - 1);
    for (LocalDate d = begin; d.isBefore(end); d = d.plusWeeks(weeks)) {
      if (!d.isBefore(DAY) && months.contains(d.getMonth())) {
        expected.add(d);
      }
    }
    assertThat(fresh.almanac().visits())
        .extracting(Visit::day)
        .containsExactlyInAnyOrderElementsOf(expected);
  }
}
