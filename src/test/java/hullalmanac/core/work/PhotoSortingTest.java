package hullalmanac.core.work;

import static hullalmanac.core.record.Moment.AFTER;
import static hullalmanac.core.record.Moment.BEFORE;
import static hullalmanac.core.record.Moment.OTHER;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.work.PhotoSorting.Proposal;
import hullalmanac.core.work.PhotoSorting.Reason;
import hullalmanac.core.work.PhotoSorting.Sorted;
import hullalmanac.core.work.PhotoSorting.Unsorted;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;

class PhotoSortingTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  private final Visit first = visit(1, DAY, VisitStatus.DONE);
  private final Visit second = visit(2, DAY, VisitStatus.DONE);

  private static List<Optional<LocalDateTime>> at(String... times) {
    return Arrays.stream(times).map(t -> Optional.of(LocalDateTime.parse(DAY + "T" + t))).toList();
  }

  private static Proposal to(Visit visit, Moment moment) {
    return new Sorted(visit.id(), moment);
  }

  private static Proposal not(Reason reason) {
    return new Unsorted(reason);
  }

  @Test
  void withOneVisitAllPhotosOfTheDayGoThere() {
    assertThat(PhotoSorting.propose(DAY, List.of(first), at("08:00", "16:00", "12:00")))
        .containsExactly(to(first, OTHER), to(first, OTHER), to(first, OTHER));
  }

  @Test
  void withSeveralTheLongestPausesPartTheDayInTheOrderOfTheVisits() {
    assertThat(
            PhotoSorting.propose(
                DAY, List.of(second, first), at("14:30", "08:00", "08:20", "14:00", "11:00")))
        .containsExactly(
            to(first, OTHER),
            to(second, OTHER),
            to(second, OTHER),
            to(first, OTHER),
            to(second, OTHER));
  }

  @Test
  void fourPhotosShowBeforeAndAfterAroundTheirLongestPause() {
    assertThat(PhotoSorting.propose(DAY, List.of(first), at("08:00", "08:05", "08:10", "15:00")))
        .containsExactly(to(first, BEFORE), to(first, BEFORE), to(first, BEFORE), to(first, AFTER));
  }

  @Test
  void eachRunShowsBeforeAndAfterByItself() {
    assertThat(
            PhotoSorting.propose(
                DAY,
                List.of(first, second),
                at("08:00", "08:01", "10:00", "10:01", "15:00", "15:10", "15:11")))
        .containsExactly(
            to(first, BEFORE),
            to(first, BEFORE),
            to(first, AFTER),
            to(first, AFTER),
            to(second, OTHER),
            to(second, OTHER),
            to(second, OTHER));
  }

  @Test
  void ofEqualPausesTheEarlierCountsAsLonger() {
    assertThat(PhotoSorting.propose(DAY, List.of(first, second), at("08:00", "09:00", "10:00")))
        .containsExactly(to(first, OTHER), to(second, OTHER), to(second, OTHER));
  }

  @Test
  void photosOfOneSecondHaveNoPause() {
    assertThat(PhotoSorting.propose(DAY, List.of(first), at("08:00", "08:00", "08:00", "08:00")))
        .containsOnly(to(first, OTHER));
    assertThat(PhotoSorting.propose(DAY, List.of(first, second), at("08:00", "08:00")))
        .containsExactly(not(Reason.TOO_FEW), not(Reason.TOO_FEW));
  }

  @Test
  void photosOfAnotherDayOrWithoutATimeStayUnsortedWithAReason() {
    List<Optional<LocalDateTime>> taken = new ArrayList<>(at("08:00"));
    taken.add(Optional.empty());
    taken.add(Optional.of(DAY.plusDays(1).atStartOfDay()));
    taken.add(Optional.of(DAY.atTime(23, 59, 59)));
    assertThat(PhotoSorting.propose(DAY, List.of(first), taken))
        .containsExactly(
            to(first, OTHER), not(Reason.NO_TIME), not(Reason.OTHER_DAY), to(first, OTHER));
    assertThat(PhotoSorting.propose(DAY, List.of(), taken))
        .containsExactly(
            not(Reason.NO_VISIT), not(Reason.NO_TIME), not(Reason.OTHER_DAY), not(Reason.NO_VISIT));
  }

  @Test
  void fewerPhotosThanVisitsCannotTellThemApart() {
    assertThat(PhotoSorting.propose(DAY, List.of(first, second), at("08:00")))
        .containsExactly(not(Reason.TOO_FEW));
    assertThat(PhotoSorting.propose(DAY, List.of(first, second), List.of())).isEmpty();
  }

  @Property
  void theOrderInWhichPhotosAreGivenDoesNotMatter(
      @ForAll @Size(max = 12) @UniqueElements List<@IntRange(max = 86_399) Integer> seconds,
      @ForAll @IntRange(min = 1, max = 2) int visits,
      @ForAll Random random) {
    List<Visit> ofDay = List.of(first, second).subList(0, visits);
    List<Integer> shuffled = new ArrayList<>(seconds);
    Collections.shuffle(shuffled, random);
    assertThat(bySecond(ofDay, shuffled)).isEqualTo(bySecond(ofDay, seconds));
  }

  private static Map<Integer, Proposal> bySecond(List<Visit> visits, List<Integer> seconds) {
    List<Proposal> proposals =
        PhotoSorting.propose(
            DAY,
            visits,
            seconds.stream().map(s -> Optional.of(DAY.atStartOfDay().plusSeconds(s))).toList());
    assertThat(proposals).hasSameSizeAs(seconds);
    Map<Integer, Proposal> by = new HashMap<>();
    for (int i = 0; i < seconds.size(); i++) {
      by.put(seconds.get(i), proposals.get(i));
    }
    return by;
  }

  /** No pause inside a run is longer than the one that parts two visits. */
  @Property
  void thePauseBetweenVisitsIsTheLongest(
      @ForAll @Size(min = 2, max = 12) @UniqueElements
          List<@IntRange(max = 86_399) Integer> seconds) {
    List<LocalDateTime> times =
        seconds.stream().sorted().map(s -> DAY.atStartOfDay().plusSeconds(s)).toList();
    List<Proposal> proposals =
        PhotoSorting.propose(
            DAY, List.of(first, second), times.stream().map(Optional::of).toList());
    List<Id<Visit>> visits = proposals.stream().map(p -> ((Sorted) p).visit()).toList();
    assertThat(visits).startsWith(first.id()).endsWith(second.id());
    int cut = visits.indexOf(second.id());
    assertThat(visits.subList(cut, visits.size())).containsOnly(second.id());
    Duration between = Duration.between(times.get(cut - 1), times.get(cut));
    for (int i = 1; i < times.size(); i++) {
      assertThat(Duration.between(times.get(i - 1), times.get(i))).isLessThanOrEqualTo(between);
    }
  }

  private static Visit visit(int id, LocalDate day, VisitStatus status, LocalDate... doneOn) {
    return new Visit(
        new Id<>(id),
        "v" + id,
        new Id<>(100 + id),
        day,
        status,
        VisitWhy.PLAN,
        Optional.empty(),
        status == VisitStatus.CANCELLED ? Optional.of(MoveReason.WEATHER) : Optional.empty(),
        Handover.NOT_YET,
        Arrays.stream(doneOn)
            .map(d -> new Visit.Part(new Id<>(id), WorkState.DONE, Optional.of(d), ""))
            .toList(),
        List.of(),
        "");
  }

  private static Step step(Visit visit, LocalDate day) {
    return new Step(
        new Id<>(visit.id().value()),
        "st",
        visit.id(),
        1,
        StepKind.WASH,
        day,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  @Test
  void theVisitsOfADayAreThoseBegunOrWorkedOnThen() {
    Visit planned = visit(1, DAY, VisitStatus.PLANNED);
    Visit surfaceToday = visit(2, DAY.minusDays(1), VisitStatus.DONE, DAY.minusDays(1), DAY);
    Visit stepToday = visit(3, DAY.minusDays(2), VisitStatus.DONE);
    Visit cancelled = visit(4, DAY, VisitStatus.CANCELLED);
    Visit elsewhen = visit(5, DAY.minusDays(1), VisitStatus.DONE, DAY.minusDays(1));
    Almanac almanac =
        new Almanac(
            Business.unnamed(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(planned, surfaceToday, stepToday, cancelled, elsewhen),
            List.of(step(stepToday, DAY), step(elsewhen, DAY.minusDays(1))),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    assertThat(PhotoSorting.visitsOn(almanac, DAY))
        .containsExactly(stepToday, surfaceToday, planned);
  }
}
