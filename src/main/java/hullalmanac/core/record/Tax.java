package hullalmanac.core.record;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A tax on what is charged. Where several lie on one line each is taken of the price itself, never
 * of another tax.
 *
 * @param name as printed
 * @param percent 0 to 100, up to 4 decimals
 */
public record Tax(String name, BigDecimal percent) {
  public Tax {
    Texts.require(name, "the name of a tax");
    if (!name.equals(name.strip())
        || name.indexOf('|') >= 0
        || name.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException(
          "the name of a tax has no blanks around it and no | in it: " + name);
    }
    percent = Decimals.within(percent, 0, 100, 4, "a tax in %");
  }

  /** As people and files write it: {@code sales tax 7.25}. */
  public String text() {
    return name + " " + percent.toPlainString();
  }

  /** Several as one text: {@code sales tax 7.25|county tax 1}. */
  public static String text(List<Tax> taxes) {
    return taxes.stream().map(Tax::text).collect(Collectors.joining("|"));
  }

  /**
   * Reads such a text; a percent sign at the end is taken too.
   *
   * @throws IllegalArgumentException with a sentence for people
   */
  public static List<Tax> parse(String text) {
    return text.isBlank()
        ? List.of()
        : Arrays.stream(text.split("\\|")).map(String::strip).map(Tax::one).toList();
  }

  private static Tax one(String text) {
    String bare = text.endsWith("%") ? text.substring(0, text.length() - 1).strip() : text;
    int gap = bare.lastIndexOf(' ');
    if (gap < 0) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not a tax; write its name and percent, such as sales tax 7.25");
    }
    return new Tax(bare.substring(0, gap).strip(), Decimals.parse(bare.substring(gap + 1)));
  }

  /** Refuses two of one name, or taxes that together take more than the price itself. */
  static List<Tax> require(List<Tax> taxes) {
    if (taxes.stream().map(Tax::name).distinct().count() < taxes.size()) {
      throw new IllegalArgumentException("one tax lies on it twice: " + text(taxes));
    }
    BigDecimal all = taxes.stream().map(Tax::percent).reduce(BigDecimal.ZERO, BigDecimal::add);
    if (all.compareTo(Decimals.HUNDRED) > 0) {
      throw new IllegalArgumentException(
          "the taxes come to " + all.toPlainString() + " %, more than the price itself");
    }
    return List.copyOf(taxes);
  }
}
