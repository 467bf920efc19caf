package hullalmanac.core.entry;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a time of day: {@code 10:30}, {@code 10.30}, {@code 1030}, {@code 2:30 pm}, {@code 14}; a
 * day may stand before it, as {@code 2026-05-01 10:30}.
 */
public final class TimeEntry {
  private static final Pattern FORM =
      Pattern.compile(
          "(?:(\\d{4}-\\d{2}-\\d{2})(?: +|t))?"
              + "(?:(\\d{1,2})[:.h](\\d{2})(?::\\d{2}(?:\\.\\d+)?)?|(\\d{2})(\\d{2})|(\\d{1,2}))"
              + "(?: *([ap])\\.?m\\.?)?");
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private TimeEntry() {}

  /**
   * Reads a time, to the minute.
   *
   * @param day the day of a time before which none stands
   */
  public static Entry<LocalDateTime> read(String text, LocalDate day) {
    String typed = Typed.fold(text);
    if (typed.isEmpty()) {
      return new Entry.Empty<>();
    }
    Matcher form = FORM.matcher(typed.toLowerCase(Locale.ROOT));
    if (!form.matches()) {
      return refused(typed);
    }
    try {
      LocalDate on = form.group(1) == null ? day : LocalDate.parse(form.group(1));
      LocalDateTime read = on.atTime(time(form));
      return new Entry.Read<>(read, write(read, day));
    } catch (DateTimeException e) {
      return refused(typed);
    }
  }

  private static LocalTime time(Matcher form) {
    String hours = first(form.group(2), form.group(4), form.group(6));
    String minutes = first(form.group(3), form.group(5), "0");
    int hour = Integer.parseInt(hours);
    if (form.group(7) != null) {
      if (hour < 1 || hour > 12) {
        throw new DateTimeException("half a day has hours 1 to 12");
      }
      hour = hour % 12 + (form.group(7).equals("p") ? 12 : 0);
    }
    return LocalTime.of(hour, Integer.parseInt(minutes));
  }

  private static String first(String one, String other, String last) {
    return one != null ? one : other != null ? other : last;
  }

  /** A time in the form in which it is read back, with its day where that is another. */
  public static String write(LocalDateTime time, LocalDate day) {
    String of = TIME.format(time);
    return time.toLocalDate().equals(day) ? of : time.toLocalDate() + " " + of;
  }

  private static Entry<LocalDateTime> refused(String typed) {
    return new Entry.Refused<>(Typed.quoted(typed) + " is not a time; write it as 10:30");
  }
}
