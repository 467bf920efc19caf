package hullalmanac.present.words;

import hullalmanac.core.record.Step;
import hullalmanac.core.work.Stopwatch;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * How long a step has been timed, in words.
 *
 * @param now by the clock on the wall
 */
public record TimedWords(ZonedDateTime now) {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

  private String since(Instant since) {
    ZonedDateTime then = since.atZone(now.getZone());
    boolean today = then.toLocalDate().equals(now.toLocalDate());
    return (today ? TIME : DAY_AND_TIME).format(then);
  }

  /**
   * "running since 14:02, 37 min so far", or why nobody can tell for how long; nothing for a step
   * that is not timed.
   */
  public Optional<String> running(Step step) {
    return Stopwatch.elapsed(step, now.toInstant())
        .map(
            elapsed -> {
              String since = "running since " + since(step.timedSince().orElseThrow());
              if (elapsed instanceof Stopwatch.Minutes minutes) {
                return since + ", " + minutes.count() + " min so far";
              }
              return elapsed instanceof Stopwatch.TooLong
                  ? since
                      + ": more than "
                      + Stopwatch.LONGEST.toHours()
                      + " hours are not believed, so write its minutes, and that stops it"
                  : since
                      + ", which the clock has not reached again: set it, or write the minutes of"
                      + " the step, and that stops it";
            });
  }

  /** What a touch does to the time of a step: "Start", or "Stop · 37 min". */
  public String press(Step step) {
    return Stopwatch.elapsed(step, now.toInstant())
        .map(e -> e instanceof Stopwatch.Minutes m ? "Stop · " + m.count() + " min" : "Stop · ?")
        .orElse("Start");
  }
}
