package hullalmanac.core.reckon;

import java.time.Month;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads hull identification numbers. There is no digit that proves one: a good form does not make a
 * number genuine.
 *
 * <p>References: 33 CFR part 181 subpart C, sections 181.23 to 181.27 (present form, since 1 August
 * 1984); the two older forms, 1 November 1972 to 31 July 1984, from agreeing secondary sources; ISO
 * 10087 for the country code before it.
 */
public final class HullNumber {
  /** How it is read. */
  public static final Formula FORMULA =
      new Formula(
          "Characters 1 to 3 maker, 4 to 8 serial (no I, O or Q), 9 month A to L, 10 year built, 11 and 12"
              + " model year. Older: 9 to 12 month and year in digits, or M, model year and a month"
              + " counted from August. No digit proves a number: a good form does not make it genuine.",
          "33 CFR part 181 subpart C; the two older forms (1972 to 1984) from agreeing secondary sources;"
              + " ISO 10087 for the country code.");

  private static final int LENGTH = 12;
  private static final String MONTHS = "ABCDEFGHIJKL";
  private static final Pattern COUNTRY = Pattern.compile("^[A-Z]{2}-");

  private HullNumber() {}

  /** What a text turned out to be. */
  public sealed interface Reading {}

  /**
   * A hull number.
   *
   * @param body its twelve characters
   * @param country country code before it, where there is one
   * @param built year built
   * @param warning what is odd about it
   */
  public record Valid(
      String body,
      Optional<String> country,
      Form form,
      Month month,
      int built,
      int modelYear,
      Optional<String> warning)
      implements Reading {
    /** Code of the maker or importer. */
    public String maker() {
      return body.substring(0, 3);
    }

    /** The maker's serial. */
    public String serial() {
      return body.substring(3, 8);
    }
  }

  /**
   * Not a hull number, and why.
   *
   * @param position the first character that is wrong, counted from 1 without the country code;
   *     absent when only the length is wrong
   */
  public record Invalid(String reason, Optional<Integer> position) implements Reading {}

  /** The three forms, which character 9 tells apart. */
  public enum Form {
    CURRENT("present form, since August 1984"),
    STRAIGHT_YEAR("straight-year form, 1972 to 1984"),
    MODEL_YEAR("model-year form, 1972 to 1984");

    private final String words;

    Form(String words) {
      this.words = words;
    }

    /** The form in words. */
    public String words() {
      return words;
    }
  }

  /** Reads a text as typed; small letters and blanks around it do not matter. */
  public static Reading read(String text) {
    String typed = text.strip().toUpperCase(Locale.ROOT);
    Optional<String> country = Optional.empty();
    if (COUNTRY.matcher(typed).find()) {
      country = Optional.of(typed.substring(0, 2));
      typed = typed.substring(3);
    }
    String body = typed;
    Optional<Reading> wrong = wrongCharacter(body);
    if (wrong.isPresent()) {
      return wrong.get();
    }
    if (body.length() != LENGTH) {
      return new Invalid(
          "it has " + body.length() + " characters; a hull number has 12", Optional.empty());
    }
    for (int i = 3; i < 8; i++) {
      char c = body.charAt(i);
      if (c == 'I' || c == 'O' || c == 'Q') {
        return invalid(i + 1, "character " + (i + 1) + " is " + c + "; a serial has no I, O or Q");
      }
    }
    char ninth = body.charAt(8);
    if (isDigit(ninth)) {
      return straightYear(body, country);
    }
    return ninth == 'M' ? modelYear(body, country) : current(body, country);
  }

  /** The first character that can be in no hull number, whatever its length. */
  private static Optional<Reading> wrongCharacter(String body) {
    for (int i = 0; i < body.length(); i++) {
      char c = body.charAt(i);
      if (!isLetter(c) && !isDigit(c)) {
        return Optional.of(
            invalid(
                i + 1,
                "character " + (i + 1) + " is \"" + c + "\"; only letters and digits, unbroken"));
      }
    }
    return Optional.empty();
  }

  private static Reading invalid(int position, String reason) {
    return new Invalid(reason, Optional.of(position));
  }

  private static Reading current(String body, Optional<String> country) {
    int month = MONTHS.indexOf(body.charAt(8));
    if (month < 0) {
      return invalid(9, "character 9 is " + body.charAt(8) + "; a month is A to L");
    }
    if (!isDigit(body.charAt(9))) {
      return invalid(10, "character 10 is " + body.charAt(9) + "; the year built is a digit");
    }
    if (!isDigit(body.charAt(10)) || !isDigit(body.charAt(11))) {
      return invalid(
          isDigit(body.charAt(10)) ? 12 : 11,
          "characters 11 and 12 are " + body.substring(10) + "; a model year is two digits");
    }
    int model = Integer.parseInt(body.substring(10));
    int modelYear = model >= 72 ? 1900 + model : 2000 + model;
    int built = nearestYear(modelYear, body.charAt(9) - '0');
    boolean odd = built > modelYear || built < modelYear - 1 || modelYear < 1984;
    return new Valid(
        body,
        country,
        Form.CURRENT,
        Month.of(month + 1),
        built,
        modelYear,
        odd
            ? Optional.of("built " + built + " for model year " + modelYear + " is unusual")
            : Optional.empty());
  }

  /** The year nearest a model year that ends in a digit; the earlier of two equally near. */
  private static int nearestYear(int modelYear, int digit) {
    for (int off = 0; ; off++) {
      if (Math.floorMod(modelYear - off, 10) == digit) {
        return modelYear - off;
      }
      if (Math.floorMod(modelYear + off, 10) == digit) {
        return modelYear + off;
      }
    }
  }

  private static Reading straightYear(String body, Optional<String> country) {
    String tail = body.substring(8);
    Optional<Integer> letter = firstNotDigit(body, 8);
    if (letter.isPresent()) {
      return invalid(
          letter.get(),
          "characters 9 to 12 are "
              + tail
              + "; after a digit they are a month and a year in digits");
    }
    int month = Integer.parseInt(tail.substring(0, 2));
    if (month < 1 || month > 12) {
      return invalid(
          9, "characters 9 and 10 are " + tail.substring(0, 2) + "; a month is 01 to 12");
    }
    int year = 1900 + Integer.parseInt(tail.substring(2));
    return new Valid(
        body, country, Form.STRAIGHT_YEAR, Month.of(month), year, year, outsideOldYears(year));
  }

  private static Reading modelYear(String body, Optional<String> country) {
    int place = MONTHS.indexOf(body.charAt(11));
    Optional<Integer> letter = firstNotDigit(body.substring(0, 11), 9);
    if (letter.isPresent() || place < 0) {
      return invalid(
          letter.orElse(12),
          "characters 9 to 12 are "
              + body.substring(8)
              + "; after M come a year in digits and a month A to L");
    }
    int model = 1900 + Integer.parseInt(body.substring(9, 11));
    Month month = Month.AUGUST.plus(place);
    int built = month.getValue() >= Month.AUGUST.getValue() ? model - 1 : model;
    return new Valid(body, country, Form.MODEL_YEAR, month, built, model, outsideOldYears(model));
  }

  /** The first character, counted from 1, that is no digit from a place on, counted from 0. */
  private static Optional<Integer> firstNotDigit(String text, int from) {
    for (int i = from; i < text.length(); i++) {
      if (!isDigit(text.charAt(i))) {
        return Optional.of(i + 1);
      }
    }
    return Optional.empty();
  }

  private static Optional<String> outsideOldYears(int year) {
    return year >= 1972 && year <= 1985
        ? Optional.empty()
        : Optional.of("this form was used from 1972 to 1984, not in " + year);
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
