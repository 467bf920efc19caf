package hullalmanac.core.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Money;
import hullalmanac.reference.Reference;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MoneyTest {
  static Stream<List<String>> rounding() {
    return Reference.read(MoneyTest.class, "rounding.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("rounding")
  void roundsAsDecimalArithmeticDoes(List<String> row) {
    BigDecimal value = new BigDecimal(row.get(0));
    Currency currency = Currency.getInstance(row.get(1));
    assertThat(Money.rounded(value, currency, RoundingMode.HALF_UP).amount())
        .isEqualTo(new BigDecimal(row.get(2)));
    assertThat(Money.rounded(value, currency, RoundingMode.HALF_EVEN).amount())
        .isEqualTo(new BigDecimal(row.get(3)));
  }

  static Stream<List<String>> minorUnits() {
    return Reference.read(MoneyTest.class, "minor-units.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("minorUnits")
  void hasTheDecimalsOfItsCurrency(List<String> row) {
    Currency currency = Currency.getInstance(row.get(0));
    int decimals = Integer.parseInt(row.get(1));
    assertThat(currency.getDefaultFractionDigits()).isEqualTo(decimals);
    if (decimals < 0) {
      assertThatThrownBy(() -> new Money(1, currency))
          .hasMessage(currency + " is not a currency one can be paid in");
    } else {
      assertThat(new Money(12345, currency).amount())
          .isEqualTo(BigDecimal.valueOf(12345, decimals));
      assertThat(Money.of(new Money(12345, currency).amount(), currency).minor()).isEqualTo(12345);
    }
  }

  /** Every currency that the JDK knows, its reference for ISO 4217. */
  @Test
  void takesEveryCurrencyOneCanBePaidInAndNoOther() {
    assertThat(Currency.getAvailableCurrencies()).hasSizeGreaterThan(150);
    for (Currency currency : Currency.getAvailableCurrencies()) {
      int decimals = currency.getDefaultFractionDigits();
      if (decimals < 0) {
        assertThatThrownBy(() -> Money.zero(currency)).isInstanceOf(IllegalArgumentException.class);
      } else {
        assertThat(new Money(1, currency).amount().scale()).isEqualTo(decimals);
        assertThatThrownBy(() -> Money.of(BigDecimal.ONE.movePointLeft(decimals + 1), currency))
            .isInstanceOf(ArithmeticException.class);
      }
    }
  }

  @Test
  void readsAsPeopleWriteIt() {
    assertThat(new Money(123456, Currency.getInstance("USD")).words()).isEqualTo("1,234.56 USD");
    assertThat(new Money(-5, Currency.getInstance("USD")).words()).isEqualTo("-0.05 USD");
    assertThat(new Money(123456, Currency.getInstance("JPY")).words()).isEqualTo("123,456 JPY");
    assertThat(new Money(1234, Currency.getInstance("KWD")).words()).isEqualTo("1.234 KWD");
  }

  @Test
  void doesNotWrapAround() {
    Money most = new Money(Long.MAX_VALUE, Currency.getInstance("USD"));
    assertThatThrownBy(() -> most.plus(most)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> most.negated().minus(most)).isInstanceOf(ArithmeticException.class);
  }
}
