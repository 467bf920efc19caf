package hullalmanac.core.entry;

import hullalmanac.core.record.Business.DayOrder;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToLongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Reads the dates that name a day and a month, in numbers or with the month in words.
 *
 * @param today what dates without a year are nearest to
 * @param order how {@code 12/5} is read
 */
record WrittenDate(LocalDate today, DayOrder order) {
  private static final DateTimeFormatter FULL =
      DateTimeFormatter.ofPattern("EEEE, d MMMM uuuu", Locale.ENGLISH);
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  /** From 2100, which is none, to 2096 or 2104. */
  private static final int LONGEST_WAY_TO_A_LEAP_YEAR = 4;

  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4}) *([-./]) *(\\d{1,2}) *\\2 *(\\d{1,2})");
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,2}) *([-./]) *(\\d{1,2})(?: *\\2 *(\\d{4}|\\d{2}))?\\.?");
  private static final Pattern DAY_THEN_NAME =
      Pattern.compile(
          "(\\d{1,2})(?:st|nd|rd|th)?[ ./-]*([a-z]{3,9})\\.?(?:[ ,./-]*(\\d{4}|\\d{2}))?");
  private static final Pattern NAME_THEN_DAY =
      Pattern.compile("([a-z]{3,9})[ ./-]*(\\d{1,2})(?:st|nd|rd|th)?(?:[ ,./-]+(\\d{4}|\\d{2}))?");

  static boolean isInRange(int year) {
    return year >= FIRST_YEAR && year <= LAST_YEAR;
  }

  /** A day, or a refusal when it is outside the years that can be written. */
  static Entry<LocalDate> inRange(LocalDate day) {
    return isInRange(day.getYear()) ? new Entry.Read<>(day, FULL.format(day)) : outOfRange();
  }

  /** The one of some days or months whose English name begins with three or more letters. */
  static <E extends Enum<E>> Optional<E> named(E[] all, String letters) {
    return Arrays.stream(all)
        .filter(one -> one.name().toLowerCase(Locale.ROOT).startsWith(letters))
        .findFirst();
  }

  /**
   * Reads a date.
   *
   * @param plain folded, in small letters
   * @return absent when it has no form of a date
   */
  Optional<Entry<LocalDate>> read(String plain) {
    Matcher yearFirst = YEAR_FIRST.matcher(plain);
    if (yearFirst.matches()) {
      return Optional.of(
          numbered(yearFirst.group(4), yearFirst.group(3), yearFirst.group(1), "2026-05-14"));
    }
    Matcher numbers = NUMBERS.matcher(plain);
    if (numbers.matches()) {
      return Optional.of(inOrder(numbers.group(1), numbers.group(3), numbers.group(4)));
    }
    Matcher dayFirst = DAY_THEN_NAME.matcher(plain);
    if (dayFirst.matches()) {
      return inWords(dayFirst.group(1), dayFirst.group(2), dayFirst.group(3));
    }
    Matcher nameFirst = NAME_THEN_DAY.matcher(plain);
    return nameFirst.matches()
        ? inWords(nameFirst.group(2), nameFirst.group(1), nameFirst.group(3))
        : Optional.empty();
  }

  private Optional<Entry<LocalDate>> inWords(String day, String name, String year) {
    return named(Month.values(), name)
        .map(month -> day(Integer.parseInt(day), month, yearOf(year)));
  }

  private Entry<LocalDate> inOrder(String first, String second, String year) {
    boolean dayFirst = order == DayOrder.DAY_FIRST;
    String day = dayFirst ? first : second;
    String month = dayFirst ? second : first;
    String turned = second + "/" + first + (year == null ? "" : "/" + year);
    boolean isTurned =
        isMonth(day)
            && day(Integer.parseInt(month), Month.of(Integer.parseInt(day)), yearOf(year))
                instanceof Entry.Read<LocalDate>;
    String advice =
        isTurned
            ? turned
                + " or "
                + Integer.parseInt(month)
                + " "
                + Month.of(Integer.parseInt(day)).getDisplayName(TextStyle.SHORT, Locale.ENGLISH)
                + (year == null ? "" : " " + year)
            : (dayFirst ? "14/5" : "5/14") + " or 14 May";
    return numbered(day, month, year, advice);
  }

  private Entry<LocalDate> numbered(String day, String month, String year, String advice) {
    return isMonth(month)
        ? day(Integer.parseInt(day), Month.of(Integer.parseInt(month)), yearOf(year))
        : new Entry.Refused<>("There is no month " + month + "; write " + advice);
  }

  private static boolean isMonth(String digits) {
    int number = Integer.parseInt(digits);
    return number >= 1 && number <= 12;
  }

  private OptionalInt yearOf(String digits) {
    if (digits == null) {
      return OptionalInt.empty();
    }
    int year = Integer.parseInt(digits);
    return digits.length() == 4
        ? OptionalInt.of(year)
        : OptionalInt.of(
            nearest(
                IntStream.rangeClosed(FIRST_YEAR, LAST_YEAR).filter(y -> y % 100 == year),
                y -> Math.abs(y - today.getYear())));
  }

  private Entry<LocalDate> day(int day, Month month, OptionalInt year) {
    if (year.isPresent() && !isInRange(year.getAsInt())) {
      return outOfRange();
    }
    int longest =
        year.isPresent() ? YearMonth.of(year.getAsInt(), month).lengthOfMonth() : month.maxLength();
    if (day < 1 || day > longest) {
      return noSuchDay(day, month, year, longest);
    }
    int found =
        year.isPresent()
            ? year.getAsInt()
            : nearest(
                IntStream.rangeClosed(
                        today.getYear() - LONGEST_WAY_TO_A_LEAP_YEAR,
                        today.getYear() + LONGEST_WAY_TO_A_LEAP_YEAR)
                    .filter(WrittenDate::isInRange)
                    .filter(y -> day <= YearMonth.of(y, month).lengthOfMonth()),
                y -> Math.abs(today.until(LocalDate.of(y, month, day), ChronoUnit.DAYS)));
    return inRange(LocalDate.of(found, month, day));
  }

  /** The nearest of some years, the later of two equally near. */
  private static int nearest(IntStream years, ToLongFunction<Integer> distance) {
    return years
        .boxed()
        .min(Comparator.comparingLong(distance).thenComparing(Comparator.reverseOrder()))
        .orElseThrow();
  }

  private static Entry<LocalDate> outOfRange() {
    return new Entry.Refused<>("Dates run from 1900 to 2199; write a year between them");
  }

  private static Entry<LocalDate> noSuchDay(int day, Month month, OptionalInt year, int longest) {
    String name =
        month.getDisplayName(TextStyle.FULL, Locale.ENGLISH)
            + (year.isPresent() ? " " + year.getAsInt() : "");
    return new Entry.Refused<>(
        "There is no " + day + " " + name + "; write a day from 1 to " + longest);
  }
}
