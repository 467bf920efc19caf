package hullalmanac.core.record;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The practice values of a business: the standards, but for those it has set itself.
 *
 * @param own what it has set
 */
public record Practice(Map<PracticeValue, Double> own) {
  /** The standards throughout. */
  public static final Practice STANDARD = new Practice(Map.of());

  public Practice {
    Map<PracticeValue, Double> copy = new EnumMap<>(PracticeValue.class);
    own.forEach((value, number) -> copy.put(value, within(value, number)));
    own = Collections.unmodifiableMap(copy);
  }

  private static double within(PracticeValue value, double number) {
    if (!(number >= value.lowest() && number <= value.highest())) {
      throw new IllegalArgumentException(
          "this runs from "
              + Numbers.plain(value.lowest())
              + " to "
              + Numbers.plain(value.highest())
              + ", not "
              + Numbers.plain(number));
    }
    return number;
  }

  /** A value as it is to be reckoned with. */
  public double of(PracticeValue value) {
    return own.getOrDefault(value, value.standard());
  }

  /** The same with one value set, or back at its standard. */
  public Practice with(PracticeValue value, Optional<Double> number) {
    Map<PracticeValue, Double> changed = new EnumMap<>(PracticeValue.class);
    changed.putAll(own);
    number.ifPresentOrElse(n -> changed.put(value, n), () -> changed.remove(value));
    return new Practice(changed);
  }

  /** As one line: {@code risk-dark=0.25 shed=0.1}; empty for the standards. */
  public String text() {
    return own.entrySet().stream()
        .map(e -> e.getKey().code() + "=" + Numbers.plain(e.getValue()))
        .collect(Collectors.joining(" "));
  }

  /**
   * Reads such a line.
   *
   * @throws IllegalArgumentException when a part is not a known value and a number within its range
   */
  public static Practice parse(String text) {
    Map<PracticeValue, Double> own = new EnumMap<>(PracticeValue.class);
    for (String part : text.strip().split("\\s+")) {
      if (!part.isEmpty()) {
        String[] sides = part.split("=", 2);
        PracticeValue value =
            Coded.parse(PracticeValue.class, sides[0])
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "there is no practice value \"" + sides[0] + "\""));
        own.put(value, number(sides));
      }
    }
    return new Practice(own);
  }

  private static double number(String[] sides) {
    try {
      return Double.parseDouble(sides.length == 2 ? sides[1] : "");
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(sides[0] + " needs a number, such as 0.3", e);
    }
  }
}
