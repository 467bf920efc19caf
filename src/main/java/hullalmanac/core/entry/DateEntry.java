package hullalmanac.core.entry;

import hullalmanac.core.record.Business.DayOrder;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a day of the years 1900 to 2199: as a date, as a weekday, or as seen from today.
 *
 * <p>Weekdays and months are English and may be cut to three letters or more. {@code fri} and
 * {@code next fri} are the first Friday after today, {@code last fri} the last before today, {@code
 * this fri} today or the first after. {@code +3m} from 31 January is the last day of April.
 */
public final class DateEntry {
  private static final Pattern OFFSET =
      Pattern.compile("([+-]) *(\\d{1,4}) *(d|days?|w|weeks?|m|months?|y|years?)");
  private static final Pattern WEEKDAY = Pattern.compile("(?:(this|next|last) +)?([a-z]{3,9})\\.?");
  private static final Pattern WEEKDAY_AND_DATE = Pattern.compile("([a-z]{3,9})[., ] *(.*\\d.*)");

  private DateEntry() {}

  /**
   * Reads a day. One without a year is the one nearest to today, the later of two equally near; two
   * digits of a year are the nearest such year in the same way.
   *
   * @param today of the years 1900 to 2199
   * @param order how {@code 12/5} is read
   */
  public static Entry<LocalDate> read(String text, LocalDate today, DayOrder order) {
    if (!WrittenDate.isInRange(today.getYear())) {
      throw new IllegalArgumentException("today is of the years 1900 to 2199, not " + today);
    }
    String typed = Typed.fold(text);
    if (typed.isEmpty()) {
      return new Entry.Empty<>();
    }
    String plain = typed.toLowerCase(Locale.ROOT);
    WrittenDate written = new WrittenDate(today, order);
    return seenFrom(today, plain)
        .map(WrittenDate::inRange)
        .or(() -> written.read(plain))
        .or(() -> afterWeekday(written, plain))
        .orElseGet(
            () ->
                new Entry.Refused<>(
                    Typed.quoted(typed)
                        + " is not a date; write it as 14 May, "
                        + (order == DayOrder.DAY_FIRST ? "14/5" : "5/14")
                        + "/2026, fri or +3m"));
  }

  private static Optional<LocalDate> seenFrom(LocalDate today, String plain) {
    return switch (plain) {
      case "today" -> Optional.of(today);
      case "tomorrow" -> Optional.of(today.plusDays(1));
      case "yesterday" -> Optional.of(today.minusDays(1));
      default -> offset(today, plain).or(() -> weekday(today, plain));
    };
  }

  private static Optional<LocalDate> offset(LocalDate today, String plain) {
    Matcher parts = OFFSET.matcher(plain);
    if (!parts.matches()) {
      return Optional.empty();
    }
    int count = Integer.parseInt(parts.group(1) + parts.group(2));
    return Optional.of(
        switch (parts.group(3).charAt(0)) {
          case 'd' -> today.plusDays(count);
          case 'w' -> today.plusWeeks(count);
          case 'm' -> today.plusMonths(count);
          default -> today.plusYears(count);
        });
  }

  private static Optional<LocalDate> weekday(LocalDate today, String plain) {
    Matcher parts = WEEKDAY.matcher(plain);
    if (!parts.matches()) {
      return Optional.empty();
    }
    String which = parts.group(1) == null ? "next" : parts.group(1);
    return WrittenDate.named(DayOfWeek.values(), parts.group(2))
        .map(
            day ->
                switch (which) {
                  case "this" -> TemporalAdjusters.nextOrSame(day);
                  case "last" -> TemporalAdjusters.previous(day);
                  default -> TemporalAdjusters.next(day);
                })
        .map(today::with);
  }

  /** A date after its weekday, as the echo has it; the two must agree. */
  private static Optional<Entry<LocalDate>> afterWeekday(WrittenDate written, String plain) {
    Matcher parts = WEEKDAY_AND_DATE.matcher(plain);
    if (!parts.matches()) {
      return Optional.empty();
    }
    return WrittenDate.named(DayOfWeek.values(), parts.group(1))
        .flatMap(
            day -> written.read(parts.group(2).strip()).map(entry -> checkWeekday(entry, day)));
  }

  private static Entry<LocalDate> checkWeekday(Entry<LocalDate> entry, DayOfWeek typed) {
    if (entry instanceof Entry.Read<LocalDate> read && read.value().getDayOfWeek() != typed) {
      return new Entry.Refused<>(
          "That day is "
              + read.echo()
              + ", not a "
              + typed.getDisplayName(TextStyle.FULL, Locale.ENGLISH)
              + "; write it without the weekday");
    }
    return entry;
  }
}
