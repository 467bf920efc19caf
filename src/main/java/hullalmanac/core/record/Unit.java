package hullalmanac.core.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A unit, with the exact factor that leads to the base unit of what it measures: m, m², l, m²/l, °C
 * and bar.
 *
 * <p>References: international yard and pound agreement, 1959 (1 in = 25.4 mm); NIST Handbook 44,
 * appendix C (1 US gallon = 231 in³); Weights and Measures Act 1985, UK (1 gallon = 4.54609 l);
 * NIST SP 811, appendix B (temperature, pound-force per square inch).
 */
public enum Unit {
  METRE(Measure.LENGTH, "m", "1", "m|metres?|meters?"),
  CENTIMETRE(Measure.LENGTH, "cm", "0.01", "cm"),
  MILLIMETRE(Measure.LENGTH, "mm", "0.001", "mm"),
  MICROMETRE(Measure.LENGTH, "µm", "0.000001", "[µμu]m|microns?"),
  FOOT(Measure.LENGTH, "ft", "0.3048", "'|ft|foot|feet"),
  INCH(Measure.LENGTH, "in", "0.0254", "\"|in|inch|inches"),
  YARD(Measure.LENGTH, "yd", "0.9144", "yd|yards?"),
  MIL(Measure.LENGTH, "mil", "0.0000254", "mils?|thou"),

  SQUARE_METRE(Measure.AREA, "m²", "1", "m²|m2|sq m|square (metres?|meters?)"),
  SQUARE_FOOT(Measure.AREA, "ft²", "0.09290304", "ft²|ft2|sq ft|square (feet|foot)"),
  SQUARE_INCH(Measure.AREA, "in²", "0.00064516", "in²|in2|sq in|square (inch|inches)"),
  SQUARE_YARD(Measure.AREA, "yd²", "0.83612736", "yd²|yd2|sq yd|square yards?"),

  LITRE(Measure.VOLUME, "l", "1", "l|litres?|liters?"),
  MILLILITRE(Measure.VOLUME, "ml", "0.001", "ml|cc"),
  US_GALLON(Measure.VOLUME, "us gal", "3.785411784", "(us )?(gal|gallons?)"),
  US_QUART(Measure.VOLUME, "us qt", "0.946352946", "(us )?(qt|quarts?)"),
  US_PINT(Measure.VOLUME, "us pt", "0.473176473", "(us )?(pt|pints?)"),
  US_FLUID_OUNCE(Measure.VOLUME, "us fl oz", "0.0295735295625", "(us )?(fl )?oz"),
  IMPERIAL_GALLON(Measure.VOLUME, "imp gal", "4.54609", "((imp|uk) )?(gal|gallons?)"),
  IMPERIAL_QUART(Measure.VOLUME, "imp qt", "1.1365225", "((imp|uk) )?(qt|quarts?)"),
  IMPERIAL_PINT(Measure.VOLUME, "imp pt", "0.56826125", "((imp|uk) )?(pt|pints?)"),
  IMPERIAL_FLUID_OUNCE(Measure.VOLUME, "imp fl oz", "0.0284130625", "((imp|uk) )?(fl )?oz"),

  SQUARE_METRE_A_LITRE(Measure.SPREAD, "m²/l", "1", "(m²|m2|sq m)( ?/ ?| per )(l|litre|liter)"),
  SQUARE_FOOT_A_US_GALLON(
      Measure.SPREAD,
      "ft²/us gal",
      "0.09290304",
      "3.785411784",
      Count.FROM_ZERO,
      "(ft²|ft2|sq ft)( ?/ ?| per )(us )?(gal|gallon)"),
  SQUARE_FOOT_AN_IMPERIAL_GALLON(
      Measure.SPREAD,
      "ft²/imp gal",
      "0.09290304",
      "4.54609",
      Count.FROM_ZERO,
      "(ft²|ft2|sq ft)( ?/ ?| per )((imp|uk) )?(gal|gallon)"),
  MILLILITRE_A_SQUARE_METRE(
      Measure.SPREAD, "ml/m²", "1000", "1", Count.INVERSE, "ml( ?/ ?| per )(m²|m2|sq m)"),

  CELSIUS(Measure.TEMPERATURE, "°C", "1", "° ?c|c|celsius"),
  FAHRENHEIT(Measure.TEMPERATURE, "°F", "5", "9", Count.FROM_32, "° ?f|f|fahrenheit"),

  BAR(Measure.PRESSURE, "bar", "1", "bar"),
  HECTOPASCAL(Measure.PRESSURE, "hPa", "0.001", "hpa|mbar"),
  KILOPASCAL(Measure.PRESSURE, "kPa", "0.01", "kpa"),
  MEGAPASCAL(Measure.PRESSURE, "MPa", "10", "mpa"),
  PSI(Measure.PRESSURE, "psi", "4.4482216152605", "64.516", Count.FROM_ZERO, "psi");

  private static final MathContext EXACT = MathContext.DECIMAL128;
  private static final BigDecimal FREEZING = BigDecimal.valueOf(32);

  private final Measure measure;
  private final String sign;
  private final BigDecimal per;
  private final BigDecimal over;
  private final Count count;
  private final Pattern words;

  /** What a number x of a unit counts, in the base unit. */
  private enum Count {
    /** x · per / over. */
    FROM_ZERO,
    /** (x − 32) · per / over. */
    FROM_32,
    /** per / (x · over). */
    INVERSE
  }

  Unit(Measure measure, String sign, String factor, String words) {
    this(measure, sign, factor, "1", Count.FROM_ZERO, words);
  }

  Unit(Measure measure, String sign, String per, String over, Count count, String words) {
    this.measure = measure;
    this.sign = sign;
    this.per = new BigDecimal(per);
    this.over = new BigDecimal(over);
    this.count = count;
    this.words = Pattern.compile(words);
  }

  public Measure measure() {
    return measure;
  }

  /** How it is written: "us fl oz". */
  public String sign() {
    return sign;
  }

  /** The units that a word can mean; several where it means other things to other people. */
  public static List<Unit> named(String word) {
    String plain = word.strip().toLowerCase(Locale.ROOT).replace(".", "").replaceAll(" +", " ");
    return Arrays.stream(values()).filter(u -> u.words.matcher(plain).matches()).toList();
  }

  /** All units of a measure. */
  public static List<Unit> of(Measure measure) {
    return Arrays.stream(values()).filter(u -> u.measure == measure).toList();
  }

  /**
   * A number of this unit in the base unit, to 34 digits.
   *
   * @param number not 0 for a unit that counts the other way round
   */
  BigDecimal toBase(BigDecimal number) {
    return switch (count) {
      case FROM_ZERO -> number.multiply(per).divide(over, EXACT);
      case FROM_32 -> number.subtract(FREEZING).multiply(per).divide(over, EXACT);
      case INVERSE -> per.divide(number.multiply(over), EXACT);
    };
  }

  /** A number of the base unit in this unit, to 34 digits. */
  BigDecimal fromBase(BigDecimal number) {
    return switch (count) {
      case FROM_ZERO -> number.multiply(over).divide(per, EXACT);
      case FROM_32 -> number.multiply(over).divide(per, EXACT).add(FREEZING);
      case INVERSE -> per.divide(number.multiply(over), EXACT);
    };
  }

  /** The unit in which people elsewhere would say the same. */
  public Unit counterpart() {
    return switch (this) {
      case METRE -> FOOT;
      case CENTIMETRE, MILLIMETRE -> INCH;
      case MICROMETRE -> MIL;
      case FOOT, YARD -> METRE;
      case INCH -> MILLIMETRE;
      case MIL -> MICROMETRE;
      case SQUARE_METRE -> SQUARE_FOOT;
      case SQUARE_FOOT, SQUARE_INCH, SQUARE_YARD -> SQUARE_METRE;
      case LITRE -> US_GALLON;
      case MILLILITRE -> US_FLUID_OUNCE;
      case US_GALLON, US_QUART, IMPERIAL_GALLON, IMPERIAL_QUART -> LITRE;
      case US_PINT, US_FLUID_OUNCE, IMPERIAL_PINT, IMPERIAL_FLUID_OUNCE -> MILLILITRE;
      case SQUARE_METRE_A_LITRE, MILLILITRE_A_SQUARE_METRE -> SQUARE_FOOT_A_US_GALLON;
      case SQUARE_FOOT_A_US_GALLON, SQUARE_FOOT_AN_IMPERIAL_GALLON -> SQUARE_METRE_A_LITRE;
      case CELSIUS -> FAHRENHEIT;
      case FAHRENHEIT -> CELSIUS;
      case BAR, HECTOPASCAL, KILOPASCAL, MEGAPASCAL -> PSI;
      case PSI -> BAR;
    };
  }
}
