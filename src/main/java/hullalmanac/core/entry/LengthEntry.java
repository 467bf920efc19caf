package hullalmanac.core.entry;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads a length in feet and inches, metres, centimetres or millimetres, to the whole millimetre. 1
 * ft = 0.3048 m and 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
 */
public final class LengthEntry {
  private static final BigDecimal LONGEST_MM = BigDecimal.valueOf(200_000);
  private static final BigDecimal INCHES_PER_FOOT = BigDecimal.valueOf(12);

  /** Number, sign of feet, number, and the sign of inches, which many leave out. */
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "([^a-z'\"]+?) *(?:'|(?:ft|foot|feet)\\.?)(?:-|, +| *)"
              + "(\\d[^a-z'\"]*?) *(?:\"|(?:in|inch|inches)\\.?)?");

  private static final Pattern ONE_UNIT = Pattern.compile("([^a-z'\"]+?) *(?:('|\"|[a-z]+)\\.?)?");

  /** A proper fraction, as rulers have them, alone or after a whole number. */
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d{1,6}) +)?(\\d{1,2}) ?/ ?(2|4|8|16|32|64)");

  private LengthEntry() {}

  private enum Unit {
    FEET("304.8", "ft", "'|ft|foot|feet"),
    INCHES("25.4", "in", "\"|in|inch|inches"),
    METRES("1000", "m", "m|metres?|meters?"),
    CENTIMETRES("10", "cm", "cm"),
    MILLIMETRES("1", "mm", "mm");

    private final BigDecimal millimetres;
    private final String sign;
    private final Pattern words;

    Unit(String millimetres, String sign, String words) {
      this.millimetres = new BigDecimal(millimetres);
      this.sign = sign;
      this.words = Pattern.compile(words);
    }

    static Optional<Unit> of(String word) {
      return Arrays.stream(values()).filter(unit -> unit.words.matcher(word).matches()).findFirst();
    }

    static Unit of(Business.Units usual) {
      return usual == Business.Units.FEET ? FEET : METRES;
    }
  }

  /**
   * Reads a length.
   *
   * @param usual the unit of a bare number, and the one that the echo says first
   */
  public static Entry<Length> read(String text, Business.Units usual) {
    String typed = Typed.fold(text);
    if (typed.isEmpty()) {
      return new Entry.Empty<>();
    }
    String plain = withPlainMarks(typed).toLowerCase(Locale.ROOT);
    Matcher two = FEET_AND_INCHES.matcher(plain);
    if (two.matches()) {
      return feetAndInches(typed, two.group(1), two.group(2), usual);
    }
    Matcher one = ONE_UNIT.matcher(plain);
    if (!one.matches()) {
      return notALength(typed, usual);
    }
    Optional<Unit> unit =
        one.group(2) == null ? Optional.of(Unit.of(usual)) : Unit.of(one.group(2));
    return unit.map(u -> inOneUnit(typed, one.group(1), u, usual))
        .orElseGet(() -> notALength(typed, usual));
  }

  /** Primes and quotation marks as ' and ", fractions of one character as three. */
  private static String withPlainMarks(String typed) {
    return typed
        .replaceAll("[\u2032\u02B9\u00B4`]", "'")
        .replaceAll("''|[\u2033\u02BA\u201C\u201D]", "\"")
        .replace("\u00BD", " 1/2 ")
        .replace("\u00BC", " 1/4 ")
        .replace("\u00BE", " 3/4 ")
        .strip();
  }

  private static Entry<Length> inOneUnit(
      String typed, String number, Unit unit, Business.Units usual) {
    if (NumberEntry.isTwoWays(number)) {
      return twoWays(typed, number, unit);
    }
    return quantity(number)
        .map(value -> length(value.multiply(unit.millimetres), usual))
        .orElseGet(() -> notALength(typed, usual));
  }

  private static Entry<Length> feetAndInches(
      String typed, String feetText, String inchesText, Business.Units usual) {
    if (NumberEntry.isTwoWays(inchesText)) {
      return new Entry.Refused<>(
          Typed.quoted(typed)
              + " can be read two ways; write "
              + feetText
              + " ft "
              + NumberEntry.asDecimals(inchesText)
              + " in");
    }
    Optional<BigDecimal> feet = quantity(feetText);
    Optional<BigDecimal> inches = quantity(inchesText);
    if (feet.isEmpty() || inches.isEmpty()) {
      return notALength(typed, usual);
    }
    if (feetText.startsWith("-")) {
      return outOfRange();
    }
    if (feet.get().scale() > 0) {
      return new Entry.Refused<>(
          Typed.quoted(typed) + " has a part of a foot twice; write 32.5 ft or 32 ft 6 in");
    }
    if (inches.get().compareTo(INCHES_PER_FOOT) >= 0) {
      return new Entry.Refused<>(
          "A foot has 12 inches, so after feet they are under 12, not "
              + inchesText
              + "; write 32 ft 6 in");
    }
    return length(
        feet.get()
            .multiply(Unit.FEET.millimetres)
            .add(inches.get().multiply(Unit.INCHES.millimetres)),
        usual);
  }

  /** A number or a fraction, without zeros at the end of its decimals. */
  private static Optional<BigDecimal> quantity(String text) {
    Matcher fraction = FRACTION.matcher(text);
    if (!fraction.matches()) {
      return NumberEntry.value(text);
    }
    BigDecimal over = new BigDecimal(fraction.group(2));
    BigDecimal under = new BigDecimal(fraction.group(3));
    BigDecimal whole =
        fraction.group(1) == null ? BigDecimal.ZERO : new BigDecimal(fraction.group(1));
    return over.signum() > 0 && over.compareTo(under) < 0
        ? Optional.of(whole.add(over.divide(under)))
        : Optional.empty();
  }

  private static Entry<Length> length(BigDecimal millimetres, Business.Units usual) {
    if (!isInRange(millimetres)) {
      return outOfRange();
    }
    Length length = new Length(rounded(millimetres).intValueExact());
    return new Entry.Read<>(length, echo(length, usual));
  }

  private static boolean isInRange(BigDecimal millimetres) {
    BigDecimal rounded = rounded(millimetres);
    return rounded.signum() > 0 && rounded.compareTo(LONGEST_MM) <= 0;
  }

  private static BigDecimal rounded(BigDecimal millimetres) {
    return millimetres.setScale(0, RoundingMode.HALF_UP);
  }

  /** A length in both units, in which it is usual first: "32 ft 6 in · 9.90 m". */
  public static String echo(Length length, Business.Units usual) {
    String said = length.feetAndInches();
    String feet = said.startsWith("0 ft ") ? said.substring("0 ft ".length()) : said;
    return usual == Business.Units.FEET
        ? feet + " \u00B7 " + length.metresText()
        : length.metresText() + " \u00B7 " + feet;
  }

  /** Refuses a length with such a number, and names those of its readings that a boat can have. */
  private static Entry<Length> twoWays(String typed, String number, Unit unit) {
    String decimals = NumberEntry.asDecimals(number);
    String whole = NumberEntry.asWhole(number);
    Unit ofWhole = unit == Unit.METRES ? Unit.MILLIMETRES : unit;
    String choice =
        Stream.of(proposal(decimals, unit), proposal(whole, ofWhole))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(" or "));
    return choice.isEmpty()
        ? outOfRange()
        : new Entry.Refused<>(Typed.quoted(typed) + " can be read two ways; write " + choice);
  }

  private static Optional<String> proposal(String number, Unit unit) {
    return isInRange(new BigDecimal(number).multiply(unit.millimetres))
        ? Optional.of(number + " " + unit.sign)
        : Optional.empty();
  }

  private static Entry<Length> outOfRange() {
    return new Entry.Refused<>("A length is over 0 and at most 200 m (656 ft 2 in)");
  }

  private static Entry<Length> notALength(String typed, Business.Units usual) {
    return new Entry.Refused<>(
        Typed.quoted(typed)
            + " is not a length; write it as "
            + (usual == Business.Units.FEET ? "32 ft 6 in or 9.91 m" : "9.91 m or 32 ft 6 in"));
  }
}
