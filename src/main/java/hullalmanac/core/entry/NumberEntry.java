package hullalmanac.core.entry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number with a point or a comma before the decimals, whatever the country. Groups of three
 * digits may be parted by blanks, by apostrophes, or by the mark that is not before the decimals.
 */
public final class NumberEntry {
  private static final int MOST_DIGITS = 12;
  private static final int MOST_WHOLE_DIGITS = 9;

  /** One mark and three digits after it: decimals to some, a group of a larger number to others. */
  private static final Pattern TWO_WAYS = Pattern.compile("[+-]?\\d{1,3}[.,]\\d{3}");

  private static final Pattern ALL_ZERO_BEFORE_MARK = Pattern.compile("[+-]?0+[.,].*");

  /** Each captures the sign, the whole part with its grouping, and the decimals. */
  private static final List<Pattern> FORMS =
      List.of(
          form("(\\d+)(?:[.,](\\d+))?"),
          form("()[.,](\\d+)"),
          form("([1-9]\\d{0,2}(?: \\d{3})+)(?:[.,](\\d+))?"),
          form("([1-9]\\d{0,2}(?:'\\d{3})+)(?:[.,](\\d+))?"),
          form("([1-9]\\d{0,2}(?:,\\d{3})+)\\.(\\d+)"),
          form("([1-9]\\d{0,2}(?:\\.\\d{3})+),(\\d+)"),
          form("([1-9]\\d{0,2}(?:,\\d{3}){2,})()"),
          form("([1-9]\\d{0,2}(?:\\.\\d{3}){2,})()"));

  private NumberEntry() {}

  /**
   * Reads a number of at most 12 digits before and 12 after the decimal mark.
   *
   * @return the number without zeros at the end of its decimals; its echo reads back as the same
   */
  public static Entry<BigDecimal> read(String text) {
    String typed = Typed.fold(text);
    if (typed.isEmpty()) {
      return new Entry.Empty<>();
    }
    if (isTwoWays(typed)) {
      return refused(
          typed, "can be read two ways; write " + asWhole(typed) + " or " + asDecimals(typed));
    }
    Optional<BigDecimal> value = value(typed);
    if (value.isEmpty()) {
      return refused(typed, "is not a number; write it as 85.5");
    }
    return wholeDigits(value.get()) <= MOST_DIGITS && value.get().scale() <= MOST_DIGITS
        ? new Entry.Read<>(value.get(), echo(value.get()))
        : refused(typed, "is too long; write at most 12 digits before the mark and 12 after it");
  }

  /** Reads a whole number of at most 9 digits; decimals that are all 0 do not matter. */
  public static Entry<Integer> readWhole(String text) {
    String typed = Typed.fold(text);
    if (typed.isEmpty()) {
      return new Entry.Empty<>();
    }
    if (isTwoWays(typed)) {
      return refused(typed, "can be read two ways; write " + asWhole(typed) + " without a mark");
    }
    Optional<BigDecimal> value = value(typed).filter(x -> x.scale() == 0);
    if (value.isEmpty()) {
      return refused(typed, "is not a whole number; write it as 12");
    }
    return wholeDigits(value.get()) <= MOST_WHOLE_DIGITS
        ? new Entry.Read<>(value.get().intValueExact(), value.get().toPlainString())
        : refused(typed, "is too long; write at most 9 digits");
  }

  /** Whether a folded text is a number to people of two countries, and not the same. */
  static boolean isTwoWays(String folded) {
    return TWO_WAYS.matcher(folded).matches() && !ALL_ZERO_BEFORE_MARK.matcher(folded).matches();
  }

  /** The number taken as one whole, without its mark. */
  static String asWhole(String twoWays) {
    return twoWays.replaceAll("[.,+]", "");
  }

  /** The number taken as one with decimals, cut to two of them so that it is clear. */
  static String asDecimals(String twoWays) {
    return twoWays.substring(0, twoWays.length() - 1).replace(',', '.').replace("+", "");
  }

  /** The number of a folded text, without zeros at the end of its decimals; never read two ways. */
  static Optional<BigDecimal> value(String folded) {
    if (isTwoWays(folded)) {
      return Optional.empty();
    }
    return FORMS.stream()
        .map(form -> form.matcher(folded))
        .filter(Matcher::matches)
        .findFirst()
        .map(NumberEntry::number);
  }

  private static Pattern form(String afterSign) {
    return Pattern.compile("([+-]?)" + afterSign);
  }

  private static BigDecimal number(Matcher parts) {
    String whole = parts.group(2).replaceAll("[., ']", "");
    String decimals = parts.group(3) == null ? "" : parts.group(3);
    BigDecimal value =
        new BigDecimal(parts.group(1) + "0" + whole + "." + decimals + "0").stripTrailingZeros();
    return value.scale() < 0 ? value.setScale(0) : value;
  }

  private static int wholeDigits(BigDecimal value) {
    return value.precision() - value.scale();
  }

  /** A fourth decimal keeps an echo from being one that can be read two ways. */
  private static String echo(BigDecimal value) {
    String plain = value.toPlainString();
    return isTwoWays(plain) ? plain + "0" : plain;
  }

  private static <T> Entry<T> refused(String typed, String why) {
    return new Entry.Refused<>(Typed.quoted(typed) + " " + why);
  }
}
