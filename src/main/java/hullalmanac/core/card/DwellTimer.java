package hullalmanac.core.card;

import java.time.Duration;
import java.time.Instant;

/** A dwell that began at a moment. What it says follows from the time alone. */
public record DwellTimer(Dwell dwell, Instant began) {
  /** How far it has come; each later one is told by a sound when it comes. */
  public enum Phase {
    WORKING,
    RINSE,
    OVER
  }

  /** For how long it has been on; nothing under zero where the clock was set back. */
  public Duration on(Instant now) {
    Duration on = Duration.between(began, now);
    return on.isNegative() ? Duration.ZERO : on;
  }

  /** How far it has come. */
  public Phase phase(Instant now) {
    Duration on = on(now);
    if (on.compareTo(dwell.longest()) >= 0) {
      return Phase.OVER;
    }
    return on.compareTo(dwell.shortest()) >= 0 ? Phase.RINSE : Phase.WORKING;
  }

  /** Until the next phase begins; for how long it is over in the last. */
  public Duration left(Instant now) {
    return switch (phase(now)) {
      case WORKING -> dwell.shortest().minus(on(now));
      case RINSE -> dwell.longest().minus(on(now));
      case OVER -> on(now).minus(dwell.longest());
    };
  }
}
