package hullalmanac.core.entry;

import hullalmanac.core.record.Measure;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads a quantity with its unit: {@code 27.5 m2}, {@code 500 ml}, {@code 5 us gal}, {@code 65 f},
 * {@code 32 ft 6 in}. A word that means other things to other people, such as {@code gal}, is
 * refused with what can be written instead.
 */
public final class QuantityEntry {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([^a-zµμ°'\"]+?) *(['\"°µμa-z].*)?");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(\\d{1,3}) *(?:'|ft|feet|foot) *(\\d{1,2}(?:[.,]\\d{1,2})?) *(?:\"|in)?");
  private static final BigDecimal INCHES_PER_FOOT = BigDecimal.valueOf(12);
  private static final BigDecimal COLDEST = new BigDecimal("-273.15");

  private QuantityEntry() {}

  /**
   * Reads a quantity of what a unit measures.
   *
   * @param usual the unit of a bare number
   */
  public static Entry<Quantity> read(String text, Unit usual) {
    return read(text, Optional.of(usual));
  }

  /** Reads a quantity of anything; the unit is needed. */
  public static Entry<Quantity> readAny(String text) {
    return read(text, Optional.empty());
  }

  private static Entry<Quantity> read(String text, Optional<Unit> usual) {
    String typed = Typed.fold(text);
    if (typed.isEmpty()) {
      return new Entry.Empty<>();
    }
    String plain = plain(typed);
    boolean length = usual.map(u -> u.measure() == Measure.LENGTH).orElse(true);
    Matcher two = FEET_AND_INCHES.matcher(plain);
    if (length && two.matches()) {
      return feetAndInches(typed, two);
    }
    Matcher one = NUMBER_AND_UNIT.matcher(plain);
    if (!one.matches()) {
      return notOne(typed, usual);
    }
    String number = one.group(1);
    String word = one.group(2) == null ? usual.map(Unit::sign).orElse("") : one.group(2);
    return inUnit(typed, number, word, usual);
  }

  private static String plain(String typed) {
    return typed
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\u2032\u02B9\u00B4`]", "'")
        .replaceAll("''|[\u2033\u02BA\u201C\u201D]", "\"");
  }

  private static Entry<Quantity> inUnit(
      String typed, String number, String word, Optional<Unit> usual) {
    if (word.isEmpty()) {
      return refused(typed, "needs its unit; write it as 32 ft, 500 ml, 20 c or 35 psi");
    }
    List<Unit> could = Unit.named(word);
    List<Unit> units =
        could.stream()
            .filter(u -> usual.map(w -> w.measure() == u.measure()).orElse(true))
            .toList();
    if (units.isEmpty()) {
      return could.isEmpty() ? notOne(typed, usual) : another(typed, could.get(0), usual);
    }
    if (NumberEntry.isTwoWays(number)) {
      return twoWays(typed, number, units.get(0));
    }
    Optional<BigDecimal> value = NumberEntry.value(number);
    if (value.isEmpty()) {
      return notOne(typed, usual);
    }
    if (units.size() > 1) {
      return refused(
          typed,
          "can be US or imperial; write "
              + units.stream()
                  .map(u -> number + " " + u.sign())
                  .collect(Collectors.joining(" or ")));
    }
    return inRange(value.get(), units.get(0));
  }

  private static Entry<Quantity> inRange(BigDecimal value, Unit unit) {
    Quantity quantity = new Quantity(value, unit);
    if (unit.measure() == Measure.TEMPERATURE) {
      return quantity.in(Unit.CELSIUS).compareTo(COLDEST) < 0
          ? new Entry.Refused<>("Nothing is colder than -273.15 °C")
          : new Entry.Read<>(quantity, quantity.both());
    }
    return value.signum() > 0
        ? new Entry.Read<>(quantity, quantity.both())
        : new Entry.Refused<>("Write " + unit.measure().words() + " over 0");
  }

  private static Entry<Quantity> feetAndInches(String typed, Matcher two) {
    BigDecimal inches = new BigDecimal(two.group(2).replace(',', '.'));
    if (inches.compareTo(INCHES_PER_FOOT) >= 0) {
      return refused(typed, "has twelve inches or more beside its feet");
    }
    BigDecimal all = new BigDecimal(two.group(1)).multiply(INCHES_PER_FOOT).add(inches);
    if (all.signum() == 0) {
      return inRange(all, Unit.INCH);
    }
    Quantity quantity = new Quantity(all, Unit.INCH);
    String said = two.group(1) + " ft " + inches.stripTrailingZeros().toPlainString() + " in";
    return new Entry.Read<>(quantity, said + " · " + quantity.to(Unit.METRE).text());
  }

  private static Entry<Quantity> twoWays(String typed, String number, Unit unit) {
    return refused(
        typed,
        "can be read two ways; write "
            + NumberEntry.asWhole(number)
            + " "
            + unit.sign()
            + " or "
            + NumberEntry.asDecimals(number)
            + " "
            + unit.sign());
  }

  private static Entry<Quantity> another(String typed, Unit unit, Optional<Unit> usual) {
    Measure wanted = usual.orElseThrow().measure();
    return refused(
        typed,
        "is "
            + unit.measure().words()
            + ", and "
            + wanted.words()
            + " is needed; write it as "
            + wanted.example());
  }

  private static Entry<Quantity> notOne(String typed, Optional<Unit> usual) {
    return refused(
        typed,
        usual
            .map(Unit::measure)
            .map(m -> "is not " + m.words() + "; write it as " + m.example())
            .orElse("has no unit that is known; write it as 32 ft, 500 ml, 20 c or 35 psi"));
  }

  private static Entry<Quantity> refused(String typed, String why) {
    return new Entry.Refused<>(Typed.quoted(typed) + " " + why);
  }
}
