package hullalmanac.core.calendar;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * How often what is told was changed since it was first there, and when last.
 *
 * @param sequence 0 for what was never changed
 * @param at time of the act that changed it last, or made it; whole seconds
 */
public record Revision(int sequence, Instant at) {
  public Revision {
    at = at.truncatedTo(ChronoUnit.SECONDS);
    if (sequence < 0) {
      throw new IllegalArgumentException("nothing was changed " + sequence + " times");
    }
  }
}
