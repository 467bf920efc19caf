package hullalmanac.core.calendar;

import java.time.LocalDate;

/**
 * A day on which another calendar says that one is busy.
 *
 * @param minutes of the day that are taken, 1 to 1440; 1440 for the whole day
 * @param what in the words of that calendar; empty when it does not say
 */
public record BusyDay(LocalDate day, int minutes, String what) {
  /** Minutes of a day, which here always has 24 hours. */
  public static final int WHOLE_DAY = 24 * 60;

  public BusyDay {
    if (minutes < 1 || minutes > WHOLE_DAY) {
      throw new IllegalArgumentException("a day is taken for 1 to 1440 minutes, not " + minutes);
    }
  }
}
