package hullalmanac.core.list;

import hullalmanac.core.entry.DateEntry;
import hullalmanac.core.entry.Entry;
import hullalmanac.core.find.Folding;
import hullalmanac.core.record.Business.DayOrder;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the days of one column.
 *
 * @param today the day on which the list is read; days of work done lie before it
 * @param order how {@code 4/5/2025} is read in this column
 * @param bothWays whether the column has days written in both orders, so that 4/5 cannot be read
 */
record ListDays(LocalDate today, DayOrder order, boolean bothWays) {
  private static final DateTimeFormatter WORDS =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
  private static final Pattern TWO_NUMBERS =
      Pattern.compile("(\\d{1,2}) ?[-./] ?(\\d{1,2})(?: ?[-./] ?(?:\\d{4}|\\d{2}))?\\.?");
  private static final Pattern TIME =
      Pattern.compile("[T ]+\\d{1,2}:\\d{2}(:\\d{2}(\\.\\d+)?)?Z?$");
  private static final Pattern SERIAL = Pattern.compile("[2-6]\\d{4}(\\.0+)?");
  private static final Pattern NO_DAY =
      Pattern.compile(
          "(?i)(\\d{4}|\\d{1,2} ?[-./] ?\\d{4}|\\d{4} ?[-./] ?\\d{1,2}|\\p{L}+\\.? *'?\\d{2,4})");
  private static final int FIRST_YEAR = 1950;

  /** Day 0 of spreadsheets whose day 1 is 1 January 1900 and that count a 29 February 1900. */
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  /** Names of months besides the English ones, folded, in order of the months. */
  private static final List<String> MONTHS =
      List.of(
          "januar janvier janv enero ene gennaio gen januari",
          "februar fevrier fevr febrero febbraio februari",
          "marz maerz mrz mars marzo maart mrt",
          "avril avr abril abr aprile",
          "mai mayo maggio mag mei",
          "juni juin junio giugno giu",
          "juli juillet juil julio luglio lug",
          "aout agosto ago augustus",
          "septembre septiembre setiembre settembre set",
          "oktober okt octobre octubre ottobre ott",
          "novembre noviembre",
          "dezember dez decembre diciembre dicembre dic");

  private static final Map<String, String> ENGLISH = english();

  private static Map<String, String> english() {
    Map<String, String> english = new HashMap<>();
    for (Month month : Month.values()) {
      Arrays.stream(MONTHS.get(month.getValue() - 1).split(" "))
          .forEach(word -> english.put(word, month.name().toLowerCase(Locale.ROOT)));
    }
    return english;
  }

  /** What the days of a column have in common. */
  static ListDays of(List<Cell> cells, LocalDate today, DayOrder business) {
    boolean dayFirst = false;
    boolean monthFirst = false;
    for (Cell cell : cells) {
      Matcher m = TWO_NUMBERS.matcher(withoutTime(cell.text()));
      if (cell.kind() == Cell.Kind.TEXT && m.matches()) {
        dayFirst |= Integer.parseInt(m.group(1)) > 12;
        monthFirst |= Integer.parseInt(m.group(2)) > 12;
      }
    }
    DayOrder order =
        dayFirst == monthFirst ? business : dayFirst ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST;
    return new ListDays(today, order, dayFirst && monthFirst);
  }

  /** Whether a column has days that could be read both ways, and none that says which. */
  static boolean isOpen(List<Cell> cells) {
    boolean open = false;
    for (Cell cell : cells) {
      Matcher m = TWO_NUMBERS.matcher(withoutTime(cell.text()));
      if (cell.kind() == Cell.Kind.TEXT && m.matches()) {
        int first = Integer.parseInt(m.group(1));
        int second = Integer.parseInt(m.group(2));
        if (first > 12 || second > 12) {
          return false;
        }
        open |= first != second;
      }
    }
    return open;
  }

  private static String withoutTime(String text) {
    return TIME.matcher(text.strip()).replaceFirst("");
  }

  /** Reads a day on which something was done. */
  Understood<LocalDate> read(Cell cell) {
    String text = withoutTime(cell.text());
    if (cell.kind() == Cell.Kind.DAY) {
      return past(cell, LocalDate.parse(text), Optional.empty());
    }
    if (SERIAL.matcher(text).matches()) {
      LocalDate day = DAY_ZERO.plusDays((long) Double.parseDouble(text));
      return past(
          cell,
          day,
          Optional.of("It is a spreadsheet’s number of a day, read as " + WORDS.format(day) + "."));
    }
    if (!text.matches(".*\\d.*") || NO_DAY.matcher(text).matches()) {
      return Understood.refused(cell, "It names no single day; it is kept as a note.");
    }
    if (text.startsWith("+") || text.startsWith("-")) {
      return Understood.refused(cell, "It is not a day; it is kept as a note.");
    }
    Matcher two = TWO_NUMBERS.matcher(text);
    if (two.matches() && bothWays && isEitherWay(two)) {
      return Understood.refused(
          cell,
          "Day and month could stand either way, for the column has both; write the month in words.");
    }
    Entry<LocalDate> entry =
        DateEntry.read(inEnglish(text), today, bothWays ? orderOf(two) : order);
    if (entry instanceof Entry.Read<LocalDate> read) {
      return hasYear(text)
          ? past(cell, read.value(), Optional.empty())
          : withoutYear(cell, read.value());
    }
    return Understood.refused(
        cell,
        entry instanceof Entry.Refused<LocalDate> refused
            ? refused.sentence() + "."
            : "It is not a day; it is kept as a note.");
  }

  /** The order of one date of a column that has both: the one in which it is a date. */
  private DayOrder orderOf(Matcher two) {
    return two.matches() && Integer.parseInt(two.group(2)) > 12
        ? DayOrder.MONTH_FIRST
        : DayOrder.DAY_FIRST;
  }

  /** Whether a date has as many numbers as one with a year. */
  private static boolean hasYear(String text) {
    long numbers = Pattern.compile("\\d+").matcher(text).results().count();
    return numbers >= (Shape.hasLetter(text) ? 2 : 3);
  }

  private static boolean isEitherWay(Matcher two) {
    int first = Integer.parseInt(two.group(1));
    int second = Integer.parseInt(two.group(2));
    return first <= 12 && second <= 12 && first != second;
  }

  private Understood<LocalDate> withoutYear(Cell cell, LocalDate nearest) {
    LocalDate day = nearest.isAfter(today) ? nearest.minusYears(1) : nearest;
    return past(cell, day, Optional.of("No year is written; read as " + WORDS.format(day) + "."));
  }

  private Understood<LocalDate> past(Cell cell, LocalDate day, Optional<String> said) {
    if (day.isAfter(today)) {
      return Understood.refused(
          cell, WORDS.format(day) + " lies ahead of today; it is kept as a note.");
    }
    if (day.getYear() < FIRST_YEAR) {
      return Understood.refused(
          cell, WORDS.format(day) + " lies too far back; it is kept as a note.");
    }
    return new Understood<>(Optional.of(day), WORDS.format(day), said);
  }

  /** A date with its month in English. */
  private static String inEnglish(String text) {
    StringBuilder english = new StringBuilder();
    Matcher words = Pattern.compile("\\p{L}+").matcher(text);
    int from = 0;
    while (words.find()) {
      String word = Folding.name(words.group());
      english.append(text, from, words.start());
      english.append(word.equals("de") ? "" : ENGLISH.getOrDefault(word, words.group()));
      from = words.end();
    }
    return english.append(text.substring(from)).toString().replaceAll("\\s+", " ");
  }
}
