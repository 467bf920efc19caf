package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static hullalmanac.core.work.Slip.ready;
import static hullalmanac.core.work.Slip.refused;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.RecordRules;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StopwatchTest {
  private static final Instant TWO = Instant.parse("2026-05-06T14:02:00Z");

  private final Slip slip = new Slip();
  private final Surface topsides = slip.surface(SurfaceKind.TOPSIDES);
  private final Visit visit = slip.planned(DAY, topsides);
  private final Step wash = slip.step(visit, StepKind.WASH);
  private final Step inspect = slip.step(visit, StepKind.INSPECT);

  private void start(Step step, Instant at) {
    slip.apply(Stopwatch.start(slip.almanac(), step.id(), at));
  }

  private void stop(Step step, Instant at) {
    slip.apply(Stopwatch.stop(slip.almanac(), step.id(), at));
  }

  private static Instant after(long minutes) {
    return TWO.plus(Duration.ofMinutes(minutes));
  }

  private void minutes(Step step, Integer minutes) {
    slip.put(With.component(slip.now(step), "minutes", Optional.ofNullable(minutes)));
  }

  private void helper(Step step, int minutes) {
    slip.put(With.component(slip.now(step), "helperMinutes", Optional.of(minutes)));
  }

  @Test
  void addsMinutesToThoseThatAreThereAndLeavesTheHelpers() {
    minutes(wash, 20);
    helper(wash, 15);
    start(wash, TWO);
    assertThat(Stopwatch.running(slip.almanac())).contains(slip.now(wash));
    assertThat(slip.now(wash).minutes()).contains(20);
    stop(wash, after(37));
    assertThat(slip.now(wash).minutes()).contains(57);
    assertThat(slip.now(wash).helperMinutes()).contains(15);
    assertThat(slip.now(wash).timedSince()).isEmpty();
    assertThat(Stopwatch.running(slip.almanac())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"29, ", "30, 1", "89, 1", "90, 2", "57600, 960"})
  void roundsToTheWholeMinuteAndCountsNothingWhereNothingWasDone(int seconds, Integer minutes) {
    start(wash, TWO);
    stop(wash, TWO.plusSeconds(seconds));
    assertThat(slip.now(wash).minutes()).isEqualTo(Optional.ofNullable(minutes));
  }

  @Test
  void minutesThatWereWrittenAsNoneStayNone() {
    minutes(wash, 0);
    start(wash, TWO);
    stop(wash, TWO.plusSeconds(5));
    assertThat(slip.now(wash).minutes()).contains(0);
  }

  @Test
  void startingAnotherStopsTheFirstAlsoOfAnotherVisit() {
    Step other = slip.step(slip.planned(DAY, topsides), StepKind.WASH);
    start(wash, TWO);
    start(inspect, after(10));
    assertThat(slip.now(wash).minutes()).contains(10);
    start(other, after(15));
    assertThat(slip.now(inspect).minutes()).contains(5);
    assertThat(Stopwatch.running(slip.almanac())).contains(slip.now(other));
    assertThat(slip.almanac().steps().stream().filter(s -> s.timedSince().isPresent())).hasSize(1);
  }

  @Test
  void startingWhatRunsAndStoppingWhatDoesNotChangesNothing() {
    assertThat(ready(Stopwatch.stop(slip.almanac(), wash.id(), TWO)).isEmpty()).isTrue();
    start(wash, TWO);
    assertThat(ready(Stopwatch.start(slip.almanac(), wash.id(), after(5))).isEmpty()).isTrue();
  }

  @Test
  void aClockThatWasSetBackGivesNoMinutesAndItRunsOn() {
    start(wash, TWO);
    Instant before = TWO.minusSeconds(1);
    assertThat(Stopwatch.elapsed(slip.now(wash), before)).contains(new Stopwatch.SetBack());
    for (Change refused :
        List.of(
            Stopwatch.stop(slip.almanac(), wash.id(), before),
            Stopwatch.start(slip.almanac(), inspect.id(), before))) {
      assertThat(refused(refused))
          .extracting(Problem::sentence)
          .containsExactly(
              "The clock shows a time before the step wash was started. Set the clock, or write"
                  + " the minutes of the step.");
    }
    stop(wash, after(3));
    assertThat(slip.now(wash).minutes()).contains(3);
  }

  @Test
  void moreThanSixteenHoursAreNotBelieved() {
    start(wash, TWO);
    Instant late = TWO.plus(Stopwatch.LONGEST).plusSeconds(1);
    assertThat(Stopwatch.elapsed(slip.now(wash), late)).contains(new Stopwatch.TooLong());
    assertThat(refused(Stopwatch.stop(slip.almanac(), wash.id(), late)))
        .extracting(Problem::sentence)
        .containsExactly(
            "The step wash has run for more than 16 hours, which is not believed. Write the minutes"
                + " that it took; that stops it.");
    Step typed = With.component(slip.now(wash), "minutes", Optional.of(90));
    Step written = Stopwatch.written(slip.now(wash), typed, late);
    assertThat(written.timedSince()).isEmpty();
    assertThat(written.minutes()).contains(90);
  }

  @Test
  void writingWhileItRunsKeepsItRunning() {
    start(wash, TWO);
    Step typed = With.component(slip.now(wash), "minutes", Optional.of(90));
    assertThat(Stopwatch.written(slip.now(wash), typed, after(10))).isEqualTo(typed);
    Step noted = With.component(slip.now(wash), "note", "salt crust");
    Instant late = after(6000);
    assertThat(Stopwatch.written(slip.now(wash), noted, late)).isEqualTo(noted);
    assertThat(Stopwatch.written(inspect, With.component(inspect, "minutes", Optional.of(5)), late))
        .isEqualTo(With.component(inspect, "minutes", Optional.of(5)));
  }

  @Test
  void noStepGetsMoreMinutesThanAStepCanHave() {
    minutes(wash, Step.MOST_MINUTES - 10);
    start(wash, TWO);
    assertThat(refused(Stopwatch.stop(slip.almanac(), wash.id(), after(11)))).hasSize(1);
    stop(wash, after(10));
    assertThat(slip.now(wash).minutes()).contains(Step.MOST_MINUTES);
  }

  @Test
  void nothingIsTimedInAVisitThatIsOver() {
    slip.finish(visit, DAY);
    assertThat(refused(Stopwatch.start(slip.almanac(), wash.id(), TWO)))
        .extracting(Problem::sentence)
        .containsExactly(
            "The visit was done, so nothing is timed in it. Write the minutes of the step.");
    Visit off = slip.planned(DAY.plusDays(1), topsides);
    Step step = slip.step(off, StepKind.WASH);
    slip.apply(VisitMove.cancel(slip.almanac(), off, MoveReason.WEATHER));
    assertThat(refused(Stopwatch.start(slip.almanac(), step.id(), TWO))).hasSize(1);
  }

  @Test
  void finishingAVisitStopsWhatIsTimedInItInTheSameEdit() {
    Product sealant = slip.product(ProductKind.POLYMER_SEALANT);
    Step protect = slip.step(visit, StepKind.PROTECT, sealant, topsides);
    start(protect, TWO);
    Change finish = slip.finishing(visit, DAY.plusDays(2));
    Edit edit = ready(Stopwatch.ending(slip.almanac(), finish, after(45)));
    assertThat(edit.put().stream().filter(r -> r.id().equals(protect.id()))).hasSize(1);
    slip.apply(edit);
    assertThat(slip.now(visit).status()).isEqualTo(VisitStatus.DONE);
    assertThat(slip.now(protect).minutes()).contains(45);
    assertThat(slip.now(protect).timedSince()).isEmpty();
    assertThat(slip.now(protect).day()).isEqualTo(DAY.plusDays(2));
    assertThat(slip.laid(visit, topsides)).hasSize(1);
  }

  @Test
  void finishingAnotherVisitOrChangingOneThatWasDoneStopsNothing() {
    Visit other = slip.planned(DAY, topsides);
    slip.step(other, StepKind.WASH);
    start(wash, TWO);
    Change finish = slip.finishing(other, DAY);
    assertThat(Stopwatch.ending(slip.almanac(), finish, after(5))).isEqualTo(finish);
    slip.apply(finish);
    Change again = slip.finishing(other, DAY);
    assertThat(Stopwatch.ending(slip.almanac(), again, after(5))).isEqualTo(again);
    assertThat(Stopwatch.running(slip.almanac())).contains(slip.now(wash));
  }

  @Test
  void whatCannotBeToldKeepsAVisitFromItsEnd() {
    start(wash, TWO);
    Change finish = slip.finishing(visit, DAY);
    assertThat(refused(Stopwatch.ending(slip.almanac(), finish, after(961)))).hasSize(1);
    Change refusal = Change.refused(new Problem(null, "", "", "no", "never"));
    assertThat(Stopwatch.ending(slip.almanac(), refusal, after(1))).isEqualTo(refusal);
  }

  @Test
  void cancellingAVisitStopsItToo() {
    start(wash, TWO);
    Change cancel = VisitMove.cancel(slip.almanac(), visit, MoveReason.WEATHER);
    slip.apply(Stopwatch.ending(slip.almanac(), cancel, after(12)));
    assertThat(slip.now(wash).minutes()).contains(12);
    assertThat(Stopwatch.running(slip.almanac())).isEmpty();
  }

  /** As after a step that ran was put back from the bin. */
  @Test
  void shouldTwoRunTheNextStartStopsBoth() {
    slip.put(With.component(wash, "timedSince", Optional.of(TWO)));
    slip.put(With.component(inspect, "timedSince", Optional.of(after(5))));
    assertThat(Stopwatch.running(slip.almanac())).contains(slip.now(inspect));
    Step third = slip.step(visit, StepKind.OTHER);
    start(third, after(10));
    assertThat(slip.now(wash).minutes()).contains(10);
    assertThat(slip.now(inspect).minutes()).contains(5);
  }

  @Test
  void aSecondTimedStepIsNotBroughtInButWhatRunsCanBeWrittenOn() {
    start(wash, TWO);
    Step second = With.component(inspect, "timedSince", Optional.of(TWO));
    assertThat(refused(Change.checked(slip.almanac(), Edit.put(second))))
        .extracting(Problem::field)
        .containsExactly("timed_since");
    Step noted = With.component(slip.now(wash), "note", "salt crust");
    assertThat(ready(Change.checked(slip.almanac(), Edit.put(noted))).put()).containsExactly(noted);
  }

  @Test
  void ofTwoTimedStepsOfAListNeitherIsBroughtIn() {
    Almanac list = slip.almanac().with(Edit.put(timed(wash), timed(inspect)));
    assertThat(RecordRules.problems(Almanac.empty(Business.unnamed()), list))
        .extracting(Problem::key)
        .containsExactlyInAnyOrder(wash.key(), inspect.key());
    Almanac one = slip.almanac().with(Edit.put(timed(wash)));
    assertThat(RecordRules.problems(Almanac.empty(Business.unnamed()), one)).isEmpty();
  }

  private static Step timed(Step step) {
    return With.component(step, "timedSince", Optional.of(TWO));
  }

  @Test
  void aCopyOfAVisitIsNotTimed() {
    start(wash, TWO);
    slip.apply(Stopwatch.ending(slip.almanac(), slip.finishing(visit, DAY), after(30)));
    slip.put(With.component(slip.now(wash), "timedSince", Optional.of(TWO)));
    Edit copy = VisitCopy.of(slip.almanac(), slip.ids, slip.boat.id(), DAY.plusDays(30));
    assertThat(copy.put().stream().filter(Step.class::isInstance).map(Step.class::cast))
        .hasSize(2)
        .allMatch(s -> s.timedSince().isEmpty() && s.minutes().isEmpty());
  }
}
