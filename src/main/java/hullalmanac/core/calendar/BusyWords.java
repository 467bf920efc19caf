package hullalmanac.core.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What another calendar says of a day, in words. */
public final class BusyWords {
  private static final int MINUTES_AN_HOUR = 60;

  private BusyWords() {}

  /**
   * How busy one is on a day: "busy then by your calendar: 3 h", "busy all day by your calendar".
   * Entries do not say at what time they are, so several are "up to" their sum.
   *
   * @return nothing on a day that is free
   */
  public static Optional<String> of(List<BusyDay> days, LocalDate day) {
    List<BusyDay> then = days.stream().filter(b -> b.day().equals(day)).toList();
    if (then.isEmpty()) {
      return Optional.empty();
    }
    int minutes = then.stream().mapToInt(BusyDay::minutes).sum();
    boolean whole = then.stream().anyMatch(b -> b.minutes() == BusyDay.WHOLE_DAY);
    String several = then.size() == 1 ? "" : "up to ";
    return Optional.of(
        whole
            ? "busy all day by your calendar"
            : "busy then by your calendar: "
                + several
                + hours(Math.min(minutes, BusyDay.WHOLE_DAY)));
  }

  private static String hours(int minutes) {
    int hours = minutes / MINUTES_AN_HOUR;
    int rest = minutes % MINUTES_AN_HOUR;
    return hours == 0 ? rest + " min" : rest == 0 ? hours + " h" : hours + " h " + rest + " min";
  }
}
