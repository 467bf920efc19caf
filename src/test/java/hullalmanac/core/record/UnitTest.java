package hullalmanac.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.reference.Reference;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitTest {
  private static BigDecimal one(String from, String to) {
    return new Quantity(BigDecimal.ONE, Unit.valueOf(from)).in(Unit.valueOf(to));
  }

  static Stream<List<String>> table() {
    return Reference.read(UnitTest.class, "units.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("table")
  void factorsAreThoseOfTheStandard(List<String> row) {
    BigDecimal factor = one(row.get(0), row.get(1));
    BigDecimal printed = new BigDecimal(row.get(2));
    if (row.get(3).equals("exact")) {
      assertThat(factor).isEqualByComparingTo(printed);
    } else {
      assertThat(factor.round(new MathContext(printed.precision()))).isEqualByComparingTo(printed);
    }
  }

  /**
   * NIST Handbook 44, appendix C: 1 US gallon = 231 in³ = 4 quarts = 8 pints = 128 fluid ounces
   * exactly. An imperial gallon has 4 quarts, 8 pints and 160 fluid ounces, a mil is 0.001 in (from
   * memory).
   */
  @Test
  void smallerUnitsMakeUpTheLargerExactly() {
    BigDecimal cubicInch = new BigDecimal("2.54").pow(3).movePointLeft(3);
    assertThat(one("US_GALLON", "LITRE"))
        .isEqualByComparingTo(cubicInch.multiply(BigDecimal.valueOf(231)));
    assertThat(one("US_GALLON", "US_QUART")).isEqualByComparingTo("4");
    assertThat(one("US_GALLON", "US_PINT")).isEqualByComparingTo("8");
    assertThat(one("US_GALLON", "US_FLUID_OUNCE")).isEqualByComparingTo("128");
    assertThat(one("IMPERIAL_GALLON", "IMPERIAL_QUART")).isEqualByComparingTo("4");
    assertThat(one("IMPERIAL_GALLON", "IMPERIAL_PINT")).isEqualByComparingTo("8");
    assertThat(one("IMPERIAL_GALLON", "IMPERIAL_FLUID_OUNCE")).isEqualByComparingTo("160");
    assertThat(one("INCH", "MIL")).isEqualByComparingTo("1000");
    assertThat(one("FOOT", "INCH")).isEqualByComparingTo("12");
    assertThat(one("BAR", "HECTOPASCAL")).isEqualByComparingTo("1000");
    assertThat(one("MEGAPASCAL", "BAR")).isEqualByComparingTo("10");
  }

  /** t/°C = (t/°F − 32)/1.8 (NIST SP 811, appendix B.9). */
  @ParameterizedTest
  @CsvSource({"32, 0", "212, 100", "-40, -40", "100, 37.777778", "0, -17.777778", "65, 18.333333"})
  void temperaturesHaveTheirOwnZeros(String fahrenheit, double celsius) {
    Quantity warm = new Quantity(new BigDecimal(fahrenheit), Unit.FAHRENHEIT);
    assertThat(warm.in(Unit.CELSIUS).doubleValue()).isCloseTo(celsius, within(5e-7));
  }

  /** Reckoned by hand from the exact factors: 400 ft² a US gallon are 9.81695470 m² a litre. */
  @Test
  void spreadRatesAreAnAreaForEachVolume() {
    Quantity rate = Quantity.of(400, Unit.SQUARE_FOOT_A_US_GALLON);
    assertThat(rate.in(Unit.SQUARE_METRE_A_LITRE).doubleValue())
        .isCloseTo(9.81695470, within(5e-9));
    assertThat(Quantity.of(100, Unit.MILLILITRE_A_SQUARE_METRE).in(Unit.SQUARE_METRE_A_LITRE))
        .isEqualByComparingTo("10");
    assertThat(Quantity.of(8, Unit.SQUARE_METRE_A_LITRE).in(Unit.MILLILITRE_A_SQUARE_METRE))
        .isEqualByComparingTo("125");
  }

  @Property
  void everyQuantityComesBackFromEveryUnit(
      @ForAll @BigRange(min = "0.001", max = "99999") @Scale(3) BigDecimal amount,
      @ForAll Unit from) {
    for (Unit to : Unit.of(from.measure())) {
      BigDecimal back = new Quantity(amount, from).to(to).in(from);
      assertThat(back.subtract(amount).abs())
          .as(from + " by " + to)
          .isLessThan(amount.movePointLeft(25).max(new BigDecimal("1e-25")));
    }
  }

  @Property
  void everySignNamesItsUnitAlone(@ForAll Unit unit) {
    assertThat(Unit.named(unit.sign())).containsExactly(unit);
    assertThat(unit.counterpart().measure()).isEqualTo(unit.measure());
    assertThat(unit.counterpart()).isNotEqualTo(unit);
  }

  @Test
  void aWordOfTwoCountriesNamesBothUnits() {
    assertThat(Unit.named("gal")).containsExactly(Unit.US_GALLON, Unit.IMPERIAL_GALLON);
    assertThat(Unit.named("fl. oz."))
        .containsExactly(Unit.US_FLUID_OUNCE, Unit.IMPERIAL_FLUID_OUNCE);
    assertThat(Unit.named("UK  gal")).containsExactly(Unit.IMPERIAL_GALLON);
    assertThat(Unit.named("cubits")).isEmpty();
  }

  @Test
  void textsAreShortAndCannotBeReadTwoWays() {
    assertThat(Quantity.of(27.5, Unit.SQUARE_METRE).both()).isEqualTo("27.5 m² · 296.01 ft²");
    assertThat(Quantity.of(3.785, Unit.LITRE).text()).isEqualTo("3.79 l");
    assertThat(Quantity.of(0.0909091, Unit.LITRE).text()).isEqualTo("0.0909 l");
    assertThat(Quantity.of(0.125, Unit.LITRE).text()).isEqualTo("0.125 l");
    assertThat(Quantity.of(-17.7777, Unit.CELSIUS).text()).isEqualTo("-17.78 °C");
    assertThat(Quantity.of(9.906, Unit.METRE).preciseText()).isEqualTo("9.9060 m");
    assertThat(Quantity.of(1234567.8, Unit.MILLILITRE).preciseText()).isEqualTo("1234570 ml");
    assertThat(Quantity.of(123456.78, Unit.MILLILITRE).exactText()).isEqualTo("123456.78 ml");
  }

  @Test
  void anAreaIsNoVolume() {
    assertThatThrownBy(() -> Quantity.of(1, Unit.LITRE).in(Unit.SQUARE_METRE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
