package hullalmanac.core.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Days in words, no finer than a forecast carries: the week under three months, the half month
 * under nine, the month beyond.
 *
 * @param today the day from which it is seen
 */
public record DateWords(LocalDate today) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter FULL =
      DateTimeFormatter.ofPattern("EEEE, d MMMM yyyy", Locale.ENGLISH);
  private static final int WEEK_UP_TO_DAYS = 92;
  private static final int HALF_MONTH_UP_TO_DAYS = 275;

  /** A day to the day: "14 May", with the year when it is another. */
  public String exact(LocalDate day) {
    return DAY.format(day) + year(day);
  }

  /** A day with its year: "14 May 2026". */
  public static String dated(LocalDate day) {
    return DAY.format(day) + " " + day.getYear();
  }

  /** Days of work with their year: "14 May 2026", "30 April to 2 May 2026". */
  public static String span(LocalDate first, LocalDate last) {
    if (first.equals(last)) {
      return dated(first);
    }
    String and = first.plusDays(1).equals(last) ? " and " : " to ";
    String from =
        first.getYear() != last.getYear()
            ? dated(first)
            : first.getMonth() == last.getMonth()
                ? Integer.toString(first.getDayOfMonth())
                : DAY.format(first);
    return from + and + dated(last);
  }

  /** A day with its weekday and year: "Friday, 1 May 2026". */
  public static String full(LocalDate day) {
    return FULL.format(day);
  }

  /** When a coat is best renewed: "by 14 May", "in the second half of July", "in October". */
  public String bestWhen(LocalDate day) {
    long ahead = today.until(day, java.time.temporal.ChronoUnit.DAYS);
    if (ahead < WEEK_UP_TO_DAYS) {
      return "by " + exact(day);
    }
    if (ahead < HALF_MONTH_UP_TO_DAYS) {
      return "in the "
          + (day.getDayOfMonth() <= 15 ? "first" : "second")
          + " half of "
          + MONTH.format(day)
          + year(day);
    }
    return "in " + MONTH.format(day) + year(day);
  }

  /** A rough day, to stand after "by": "mid-June", "the end of October". */
  public String rough(LocalDate day) {
    long ahead = Math.abs(today.until(day, java.time.temporal.ChronoUnit.DAYS));
    if (ahead >= HALF_MONTH_UP_TO_DAYS) {
      return MONTH.format(day) + year(day);
    }
    int d = day.getDayOfMonth();
    String part = d <= 10 ? "early " : d <= 20 ? "mid-" : "late ";
    return part + MONTH.format(day) + year(day);
  }

  private String year(LocalDate day) {
    return day.getYear() == today.getYear() ? "" : " " + day.getYear();
  }
}
