package hullalmanac.core.entry;

import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads air, humidity, surface and time as one text: {@code 18.5 62 21 10:30}. Temperatures are °C
 * unless an {@code f} stands after them; without a time it is taken now.
 */
public final class ClimateEntry {
  private static final String EXAMPLE = "write air, humidity, surface and time as 18.5 62 21 10:30";

  private ClimateEntry() {}

  /**
   * Reads a reading.
   *
   * @param day the day of a time before which none stands
   * @param now when it is typed; the time of one without, if that is on the day
   */
  public static Entry<Climate> read(String text, LocalDate day, LocalDateTime now) {
    String typed = Typed.fold(text);
    if (typed.isEmpty()) {
      return new Entry.Empty<>();
    }
    String joined = typed.toLowerCase(Locale.ROOT).replaceAll(" +(°? ?[cf]|%)(?= |;|$)", "$1");
    List<String> parts =
        Arrays.stream(joined.split(", +|[ ;]+")).filter(p -> !p.isEmpty()).toList();
    if (parts.size() < 3) {
      return new Entry.Refused<>(Typed.quoted(typed) + " is too short; " + EXAMPLE);
    }
    String time = String.join(" ", parts.subList(3, parts.size()));
    if (time.isEmpty() && !now.toLocalDate().equals(day)) {
      return new Entry.Refused<>("Say when it was taken; " + EXAMPLE);
    }
    Entry<LocalDateTime> at =
        time.isEmpty()
            ? new Entry.Read<>(now.withSecond(0).withNano(0), "")
            : TimeEntry.read(time, day);
    if (at instanceof Entry.Refused<LocalDateTime> refused) {
      return new Entry.Refused<>(refused.sentence());
    }
    return at(typed, parts, ((Entry.Read<LocalDateTime>) at).value(), day);
  }

  private static Entry<Climate> at(
      String typed, List<String> parts, LocalDateTime at, LocalDate day) {
    Entry<Quantity> air = QuantityEntry.read(parts.get(0), Unit.CELSIUS);
    Entry<Quantity> surface = QuantityEntry.read(parts.get(2), Unit.CELSIUS);
    Optional<BigDecimal> humidity = NumberEntry.value(parts.get(1).replace("%", ""));
    if (humidity.isEmpty()) {
      return new Entry.Refused<>(
          Typed.quoted(parts.get(1)) + " is not a humidity in %; " + EXAMPLE);
    }
    if (!(air instanceof Entry.Read<Quantity> a && surface instanceof Entry.Read<Quantity> s)) {
      return new Entry.Refused<>(Typed.quoted(typed) + " has no two temperatures; " + EXAMPLE);
    }
    try {
      Climate climate =
          new Climate(celsius(a.value()), humidity.get().doubleValue(), celsius(s.value()), at);
      return new Entry.Read<>(climate, words(climate, day));
    } catch (IllegalArgumentException e) {
      return new Entry.Refused<>(Texts.capital(e.getMessage()));
    }
  }

  /** In °C, to the tenth of a degree that a thermometer shows where it was read in °F. */
  public static double celsius(Quantity temperature) {
    return temperature.unit() == Unit.CELSIUS
        ? temperature.amount().doubleValue()
        : temperature.in(Unit.CELSIUS).setScale(1, RoundingMode.HALF_UP).doubleValue();
  }

  /** A reading in words, with temperatures in both units. */
  private static String words(Climate climate, LocalDate day) {
    return "air "
        + Quantity.of(climate.air(), Unit.CELSIUS).both()
        + ", humidity "
        + Numbers.plain(climate.humidity())
        + " %, surface "
        + Quantity.of(climate.surface(), Unit.CELSIUS).both()
        + ", at "
        + TimeEntry.write(climate.takenAt(), day);
  }

  /**
   * A reading in the form in which it is read back.
   *
   * @param day the day that need not be written
   */
  public static String write(Climate climate, LocalDate day) {
    return Numbers.plain(climate.air())
        + " "
        + Numbers.plain(climate.humidity())
        + " "
        + Numbers.plain(climate.surface())
        + " "
        + TimeEntry.write(climate.takenAt(), day);
  }
}
