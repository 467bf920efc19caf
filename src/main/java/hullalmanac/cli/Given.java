package hullalmanac.cli;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Locale;

/** Reads what was typed on the command line, and says what is wrong with it. */
final class Given {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);

  private Given() {}

  /** Returns the day of a text such as 2026-05-01. */
  static LocalDate day(String option, String text) {
    try {
      return LocalDate.parse(text, DAY);
    } catch (DateTimeParseException e) {
      throw new GivenWrong(option + ": there is no day \"" + text + "\"; write it as 2026-05-01");
    }
  }

  /** Returns a number within bounds. */
  static double number(String option, String text, double low, double high) {
    double value;
    try {
      value = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new GivenWrong(option + ": \"" + text + "\" is not a number; write it as 48.4");
    }
    if (!(value >= low && value <= high)) {
      throw new GivenWrong(
          option
              + ": "
              + text
              + " is out of range; it runs from "
              + plain(low)
              + " to "
              + plain(high));
    }
    return value;
  }

  /** Returns a whole number within bounds. */
  static int whole(String option, String text, int low, int high) {
    double value = number(option, text, low, high);
    if (value != Math.rint(value)) {
      throw new GivenWrong(option + ": " + text + " is not a whole number");
    }
    return (int) value;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
