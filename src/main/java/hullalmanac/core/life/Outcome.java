package hullalmanac.core.life;

import java.time.LocalDate;
import java.util.Optional;

/** When a coat is best renewed: one of four answers. */
public sealed interface Outcome {
  /**
   * Dates can be given. The renew-by day may lie in the past: then the coat may have lapsed
   * already.
   *
   * @param renewBy the day on which the chance of a bare coat reaches the risk
   * @param workBy the last day up to {@code renewBy} on which the work can be done; {@code renewBy}
   *     itself when nothing hinders
   * @param early the day on which 1 in 10 such coats are bare, or the last of 15 years when that
   *     comes first (which takes a risk under 0.10)
   * @param middle the day on which half of them are; absent when it lies over 15 years ahead
   * @param late the day on which 9 in 10 are; absent when it lies over 15 years ahead
   */
  record Dated(
      LocalDate renewBy,
      LocalDate workBy,
      LocalDate early,
      Optional<LocalDate> middle,
      Optional<LocalDate> late)
      implements Outcome {}

  /**
   * Seen bare, on a washed or cleaner surface, with at least 9 chances in 10.
   *
   * @param seenOn the day it was seen
   */
  record AlreadyLapsed(
      LocalDate seenOn, LocalDate early, LocalDate middle, Optional<LocalDate> late)
      implements Outcome {}

  /**
   * Not forecast from weather.
   *
   * @param byInterval the day after the plain interval set for such a surface, where there is one
   */
  record NotForecast(Reason reason, Optional<LocalDate> byInterval) implements Outcome {
    /** Why there is no forecast. */
    public enum Reason {
      PLAIN_INTERVAL("this finish goes by a plain interval, not by weather"),
      NO_INTERVAL("this finish is not forecast, and no interval is set"),
      NO_BERTH("it is not known where the boat lay since the coat was laid"),
      DATE_UNKNOWN("the day it was laid is not known"),
      NOT_A_COAT("the product is not one that protects");

      private final String words;

      Reason(String words) {
        this.words = words;
      }

      /** The reason in words, to stand after "not forecast:". */
      public String words() {
        return words;
      }
    }
  }

  /**
   * The renew-by day lies over 15 years ahead.
   *
   * @param early the day on which 1 in 10 such coats are bare, when within 15 years
   */
  record TooFarAhead(Optional<LocalDate> early) implements Outcome {}
}
