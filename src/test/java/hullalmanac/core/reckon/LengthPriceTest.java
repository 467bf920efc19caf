package hullalmanac.core.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import java.math.BigDecimal;
import java.util.Currency;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthPriceTest {
  private static Money money(String amount, String currency) {
    return Money.of(new BigDecimal(amount), Currency.getInstance(currency));
  }

  /**
   * Common practice, no source: 600 to 650 US dollars for a 30 ft hull are 20.00 to 21.67 a foot.
   * Metres by hand: 600 / 9.144 = 65.617, 650 / 9.144 = 71.085.
   */
  @ParameterizedTest
  @CsvSource({"600, 20.00, 65.62", "650, 21.67, 71.08"})
  void comesOutAsThePracticeSays(String total, String foot, String metre) {
    LengthPrice price = new LengthPrice(money(total, "USD"), Length.ofFeet(30, 0));
    assertThat(price.foot()).isEqualTo(money(foot, "USD"));
    assertThat(price.metre()).isEqualTo(money(metre, "USD"));
    assertThat(LengthPrice.ofFoot(money("20", "USD"), Length.ofFeet(30, 0)).total())
        .isEqualTo(money("600", "USD"));
  }

  @Test
  void currenciesKeepTheirOwnDecimals() {
    assertThat(LengthPrice.ofMetre(money("7333", "JPY"), Length.ofMetres(9.5)).total())
        .isEqualTo(money("69664", "JPY"));
  }

  /** A rounded price a foot is off by half a coin at most, so the whole by that for each foot. */
  @Property
  void thereAndBackIsRightToHalfACoinAFoot(
      @ForAll @IntRange(min = 1, max = 5_000_000) int cents,
      @ForAll @IntRange(min = 1000, max = 60_000) int millimetres) {
    Length length = new Length(millimetres);
    LengthPrice price = new LengthPrice(new Money(cents, Currency.getInstance("EUR")), length);
    long byFoot = LengthPrice.ofFoot(price.foot(), length).total().minor();
    long byMetre = LengthPrice.ofMetre(price.metre(), length).total().minor();
    assertThat((double) Math.abs(byFoot - cents)).isLessThanOrEqualTo(length.feet() / 2 + 0.5);
    assertThat((double) Math.abs(byMetre - cents)).isLessThanOrEqualTo(length.metres() / 2 + 0.5);
  }
}
