package hullalmanac.present.words;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Business;
import hullalmanac.sample.SampleRecord;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a person reads what the change log keeps. */
class ChangeWordsTest {
  private static final Business BUSINESS = SampleRecord.make().almanac().business();

  /** 9,906 mm are 32 ft 6 in by the international inch of 25.4 mm. */
  @ParameterizedTest
  @CsvSource({
    "loa_mm, length, 9906, 32 ft 6 in",
    "yearly, yearly, 1, yes",
    "yearly, yearly, 0, no",
    "left_ml, left, 250, 250 ml",
    "timed_since, timed since, 2026-05-01T09:05:00Z, '1 May 2026, 09:05'",
    "hull_number, hull number, QXA12345, QXA12345",
    "note, note, '', ''"
  })
  void saysAFieldAndWhatStoodInIt(String field, String name, String value, String said) {
    ChangeWords words = new ChangeWords(BUSINESS, ZoneOffset.UTC);
    assertThat(ChangeWords.name(field)).isEqualTo(name);
    assertThat(words.value(field, Optional.of(value))).isEqualTo(said);
    assertThat(words.value(field, Optional.empty())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1234, USD, 12.34 USD", "1234, JPY, 1234 JPY"})
  void saysMoneyInTheMinorUnitsOfIso4217(String minor, String currency, String said) {
    Business business =
        hullalmanac.core.record.With.component(
            BUSINESS, "currency", java.util.Currency.getInstance(currency));
    assertThat(new ChangeWords(business, ZoneOffset.UTC).value("price_minor", Optional.of(minor)))
        .isEqualTo(said);
  }
}
