package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Times the steps of visits, one at a time. Stopping adds whole minutes, rounded, to those of the
 * person; a helper's are written by hand. Since when a step is timed stands in the record, so a
 * restart changes nothing.
 */
public final class Stopwatch {
  /** Longer than this nobody works at one thing: it was forgotten (common practice, no source). */
  public static final Duration LONGEST = Duration.ofHours(16);

  private static final int SECONDS = 60;

  private Stopwatch() {}

  /** For how long a step has been timed. */
  public sealed interface Elapsed {}

  /**
   * So many minutes.
   *
   * @param count whole minutes, rounded, 0 to 960
   */
  public record Minutes(int count) implements Elapsed {}

  /** It cannot be told: the clock shows a time before it was started. */
  public record SetBack() implements Elapsed {}

  /** Longer than is believed. */
  public record TooLong() implements Elapsed {}

  /** For how long a step has been timed; absent when it is not. */
  public static Optional<Elapsed> elapsed(Step step, Instant now) {
    return step.timedSince()
        .map(
            since -> {
              Duration time = Duration.between(since, now);
              if (time.isNegative()) {
                return new SetBack();
              }
              return time.compareTo(LONGEST) > 0
                  ? new TooLong()
                  : new Minutes((int) ((time.toSeconds() + SECONDS / 2) / SECONDS));
            });
  }

  /**
   * The step that is being timed. Should several be, because one was put back from the bin, it is
   * the one that was started last.
   */
  public static Optional<Step> running(Almanac almanac) {
    return almanac.steps().stream()
        .filter(s -> s.timedSince().isPresent())
        .max(
            Comparator.comparing((Step s) -> s.timedSince().orElseThrow()).thenComparing(Step::id));
  }

  /** Starts to time a step of a planned visit; what was timed before is stopped. */
  public static Change start(Almanac almanac, Id<Step> id, Instant now) {
    Step step = InRecord.row(almanac.steps(), id);
    Visit visit = InRecord.row(almanac.visits(), step.visit());
    if (step.timedSince().isPresent()) {
      return new Change.Ready(Edit.put(List.of()));
    }
    if (visit.status() != VisitStatus.PLANNED) {
      return Change.refused(
          problem(
              step,
              "the visit was " + visit.status().words() + ", so nothing is timed in it",
              "Write the minutes of the step"));
    }
    Change stopped = stop(almanac, s -> true, now);
    Step started =
        With.component(step, "timedSince", Optional.of(now.truncatedTo(ChronoUnit.SECONDS)));
    return stopped instanceof Change.Ready ready
        ? new Change.Ready(ready.edit().and(Edit.put(started)))
        : stopped;
  }

  /** Stops to time a step, and adds the minutes to those that it has. */
  public static Change stop(Almanac almanac, Id<Step> id, Instant now) {
    return stop(almanac, s -> s.id().equals(id), now);
  }

  private static Change stop(Almanac almanac, Predicate<Step> which, Instant now) {
    List<Row> put = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Step step : almanac.steps()) {
      Optional<Elapsed> elapsed = which.test(step) ? elapsed(step, now) : Optional.empty();
      if (elapsed.isPresent()) {
        wrong(step, elapsed.get())
            .ifPresentOrElse(problems::add, () -> put.add(stopped(step, elapsed.get())));
      }
    }
    return problems.isEmpty() ? new Change.Ready(Edit.put(put)) : new Change.Refused(problems);
  }

  private static Optional<Problem> wrong(Step step, Elapsed elapsed) {
    String name = "the step " + step.kind().words();
    if (elapsed instanceof SetBack) {
      return Optional.of(
          problem(
              step,
              "the clock shows a time before " + name + " was started",
              "Set the clock, or write the minutes of the step"));
    }
    if (elapsed instanceof TooLong) {
      return Optional.of(
          problem(
              step,
              name
                  + " has run for more than "
                  + LONGEST.toHours()
                  + " hours, which is not believed",
              "Write the minutes that it took; that stops it"));
    }
    return minutes(step, elapsed) <= Step.MOST_MINUTES
        ? Optional.empty()
        : Optional.of(
            problem(
                step,
                name + " would have more than " + Step.MOST_MINUTES + " minutes",
                "Write them as a step of its own"));
  }

  private static Problem problem(Step step, String message, String advice) {
    return new Problem(Kind.STEP, step.key(), "minutes", message, advice);
  }

  private static int minutes(Step step, Elapsed elapsed) {
    return step.minutes().orElse(0) + ((Minutes) elapsed).count();
  }

  /** A start that was taken back at once is no reading: then there still are no minutes. */
  private static Step stopped(Step step, Elapsed elapsed) {
    int minutes = minutes(step, elapsed);
    Optional<Integer> now =
        minutes == 0 && step.minutes().isEmpty() ? Optional.empty() : Optional.of(minutes);
    return With.component(
        With.component(step, "minutes", now), "timedSince", Optional.<Instant>empty());
  }

  /**
   * A step in which something was written. Where nobody can tell for how long it was timed, minutes
   * written by hand stand in for that, and stop it.
   *
   * @param before the step as it stands in the record
   */
  public static Step written(Step before, Step written, Instant now) {
    boolean told = elapsed(written, now).filter(e -> !(e instanceof Minutes)).isEmpty();
    return told || before.minutes().equals(written.minutes())
        ? written
        : With.component(written, "timedSince", Optional.<Instant>empty());
  }

  /**
   * A change by which a visit may come to its end: what is timed in a visit that was planned before
   * and is not any more is stopped in the same act.
   */
  public static Change ending(Almanac almanac, Change change, Instant now) {
    if (!(change instanceof Change.Ready ready)) {
      return change;
    }
    Map<Id<Visit>, VisitStatus> before = new HashMap<>();
    almanac.visits().forEach(v -> before.put(v.id(), v.status()));
    List<Id<Visit>> ended =
        ready.edit().put().stream()
            .filter(Visit.class::isInstance)
            .map(Visit.class::cast)
            .filter(v -> v.status() != VisitStatus.PLANNED)
            .filter(v -> before.get(v.id()) == VisitStatus.PLANNED)
            .map(Visit::id)
            .toList();
    Change stopped = stop(almanac.with(ready.edit()), s -> ended.contains(s.visit()), now);
    return stopped instanceof Change.Ready more
        ? new Change.Ready(replaced(ready.edit(), more.edit()).and(more.edit()))
        : stopped;
  }

  /** An edit without the rows that a later one puts in again. */
  private static Edit replaced(Edit edit, Edit later) {
    List<Id<?>> again =
        later.put().stream().filter(Step.class::isInstance).<Id<?>>map(Row::id).toList();
    List<Row> kept =
        edit.put().stream()
            .filter(r -> !(r instanceof Step step && again.contains(step.id())))
            .toList();
    return new Edit(edit.business(), kept, edit.gone());
  }
}
