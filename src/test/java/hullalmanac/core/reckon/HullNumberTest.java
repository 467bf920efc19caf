package hullalmanac.core.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Month;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Numbers built and broken by the rule of 33 CFR 181.25 and of the two older forms, with an
 * invented maker code.
 */
class HullNumberTest {
  @ParameterizedTest
  @CsvSource({
    "ZZZ12345A818, CURRENT, JANUARY, 2018, 2018",
    "ZZZ0A7K9L324, CURRENT, DECEMBER, 2023, 2024",
    "ZZZPR5T2I708, CURRENT, SEPTEMBER, 2007, 2008",
    "ZZZ00001F525, CURRENT, JUNE, 2025, 2025",
    "ZZZ99999D889, CURRENT, APRIL, 1988, 1989",
    "ZZZ123450478, STRAIGHT_YEAR, APRIL, 1978, 1978",
    "ZZZ123451273, STRAIGHT_YEAR, DECEMBER, 1973, 1973",
    "ZZZ54321M78A, MODEL_YEAR, AUGUST, 1977, 1978",
    "ZZZ54321M78F, MODEL_YEAR, JANUARY, 1978, 1978",
    "ZZZ54321M83L, MODEL_YEAR, JULY, 1983, 1983",
    "ZZZ54321M82H, MODEL_YEAR, MARCH, 1982, 1982",
    "US-ZZZ12345A818, CURRENT, JANUARY, 2018, 2018"
  })
  void readsEachForm(String text, HullNumber.Form form, Month month, int built, int modelYear) {
    HullNumber.Valid read = (HullNumber.Valid) HullNumber.read(text);
    assertThat(read.form()).isEqualTo(form);
    assertThat(read.month()).isEqualTo(month);
    assertThat(read.built()).isEqualTo(built);
    assertThat(read.modelYear()).isEqualTo(modelYear);
    assertThat(read.warning()).isEmpty();
    assertThat(read.maker()).isEqualTo("ZZZ");
    assertThat(read.body()).hasSize(12);
  }

  @ParameterizedTest
  @CsvSource({
    "ZZZ12I45A818, 6, character 6 is I",
    "ZZZ1O345A818, 5, character 5 is O",
    "ZZZQ2345A818, 4, character 4 is Q",
    "ZZZ12345M818, 12, characters 9 to 12 are M818",
    "ZZZ12345A81, , it has 11 characters",
    "ZZZ12345A8188, , it has 13 characters",
    "ZZZ-12345A818, 4, character 4 is ",
    "ZZZ12345AB18, 10, character 10 is B",
    "ZZZ123458A18, 10, characters 9 to 12 are 8A18",
    "ZZZ12345A8B8, 11, characters 11 and 12 are B8",
    "ZZ 12345A818, 3, character 3 is",
    "ZZZ123451378, 9, characters 9 and 10 are 13",
    "ZZZ123450078, 9, characters 9 and 10 are 00",
    "ZZZ54321M78M, 12, characters 9 to 12 are M78M",
    "ZZZ12345Z225, 9, character 9 is Z"
  })
  void saysWhyItIsNotOneAndWhere(String text, Integer position, String reason) {
    HullNumber.Invalid invalid = (HullNumber.Invalid) HullNumber.read(text);
    assertThat(invalid.reason()).startsWith(reason);
    assertThat(invalid.position()).isEqualTo(Optional.ofNullable(position));
  }

  @Test
  void warnsOfWhatIsOddButLetsItStand() {
    HullNumber.Valid odd = (HullNumber.Valid) HullNumber.read("ZZZ00001F026");
    assertThat(odd.modelYear()).isEqualTo(2026);
    assertThat(odd.warning()).isPresent();
  }

  @Test
  void keepsTheCountryApart() {
    HullNumber.Valid read = (HullNumber.Valid) HullNumber.read(" us-zzz12345a818 ");
    assertThat(read.country()).contains("US");
    assertThat(read.body()).isEqualTo("ZZZ12345A818");
  }
}
