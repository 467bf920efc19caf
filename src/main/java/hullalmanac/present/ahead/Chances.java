package hullalmanac.present.ahead;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The twenty chances of a boat by month: before today, in each of twelve months from this one on,
 * and after them.
 *
 * @param days of the twenty chances, absent where beyond the horizon
 */
record Chances(List<Optional<LocalDate>> days, LocalDate today) {
  /** How many months are told one by one. */
  static final int MONTHS = 12;

  /** The months told one by one. */
  static List<YearMonth> months(LocalDate today) {
    return IntStream.range(0, MONTHS).mapToObj(YearMonth.from(today)::plusMonths).toList();
  }

  /** How many lie before today. */
  long before() {
    return days.stream().filter(d -> d.isPresent() && d.get().isBefore(today)).count();
  }

  /** How many lie in a month, from today on. */
  long in(YearMonth month) {
    return days.stream()
        .filter(d -> d.isPresent() && !d.get().isBefore(today))
        .filter(d -> YearMonth.from(d.get()).equals(month))
        .count();
  }

  /** How many lie after the months told one by one. */
  long after() {
    return days.size() - before() - months(today).stream().mapToLong(this::in).sum();
  }

  /** As a sentence: "3 in 20 before today, 2 in May, 4 in January 2027, 11 after April 2027". */
  String words() {
    List<String> parts = new ArrayList<>();
    add(parts, before(), "before today");
    months(today).forEach(m -> add(parts, in(m), "in " + name(m)));
    add(parts, after(), "after " + name(months(today).get(MONTHS - 1)));
    return String.join(", ", parts);
  }

  private static void add(List<String> parts, long count, String when) {
    if (count > 0) {
      parts.add(count + (parts.isEmpty() ? " in 20 " : " ") + when);
    }
  }

  private String name(YearMonth month) {
    String name = month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    return month.getYear() == today.getYear() ? name : name + " " + month.getYear();
  }
}
