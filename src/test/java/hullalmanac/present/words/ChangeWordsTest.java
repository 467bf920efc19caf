package hullalmanac.present.words;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Business;
import hullalmanac.sample.SampleRecord;
import hullalmanac.store.SchemaStep;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
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
    "discount_percent, 'discount, %', 5, 5",
    "tax_inclusive, taxes are in the prices, 1, yes",
    "result, result, comes-out, comes out",
    "signature, signature, '1 2 3', drawn",
    "note, note, '', ''"
  })
  void saysAFieldAndWhatStoodInIt(String field, String name, String value, String said) {
    ChangeWords words = new ChangeWords(BUSINESS, ZoneOffset.UTC);
    assertThat(ChangeWords.name(field)).isEqualTo(name);
    assertThat(words.value(field, Optional.of(value))).isEqualTo(said);
    assertThat(words.value(field, Optional.empty())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1234, USD, 12.34 USD", "1234, JPY, '1,234 JPY'"})
  void saysMoneyInTheMinorUnitsOfIso4217(String minor, String currency, String said) {
    Business business =
        hullalmanac.core.record.With.component(
            BUSINESS, "currency", java.util.Currency.getInstance(currency));
    assertThat(new ChangeWords(business, ZoneOffset.UTC).value("price_minor", Optional.of(minor)))
        .isEqualTo(said);
  }

  /** Every column that the file ever had. */
  @Test
  void noFieldIsCalledByTheWordsOfTheFile() {
    List<String> columns =
        SchemaStep.all().stream()
            .flatMap(step -> step.sql().lines())
            .map(Pattern.compile("^ {2}([a-z_]+) (TEXT|INTEGER|REAL)")::matcher)
            .filter(Matcher::find)
            .map(m -> m.group(1))
            .distinct()
            .toList();
    assertThat(columns).hasSizeGreaterThan(100);
    assertThat(columns)
        .allSatisfy(
            c ->
                assertThat(ChangeWords.name(c))
                    .doesNotContain("_")
                    .doesNotMatch(".* (mm|ml|minor|percent)"));
  }
}
