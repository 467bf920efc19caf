package hullalmanac.core.entry;

import static hullalmanac.core.entry.Entries.assertAnswered;
import static hullalmanac.core.entry.Entries.echoOf;
import static hullalmanac.core.entry.Entries.readIn;
import static hullalmanac.core.entry.Entries.refusalOf;
import static hullalmanac.core.entry.Entries.under;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberEntryTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "85.5 | 85.5",
        "85,5 | 85.5",
        "85 | 85",
        "0 | 0",
        "-0 | 0",
        "007 | 7",
        "85.50 | 85.5",
        "100 | 100",
        ".5 | 0.5",
        ",5 | 0.5",
        "-.5 | -0.5",
        "+12,25 | 12.25",
        "-12.25 | -12.25",
        "\u221212.25 | -12.25",
        "0,125 | 0.125",
        "0.125 | 0.125",
        ".125 | 0.125",
        "1234.567 | 1234.567",
        "1234,567 | 1234.567",
        "1,2345 | 1.2345",
        "1,23 | 1.23",
        "1,234.5 | 1234.5",
        "1.234,5 | 1234.5",
        "1,234.567 | 1234.567",
        "1.234.567 | 1234567",
        "1,234,567 | 1234567",
        "1,234,567.25 | 1234567.25",
        "1 234 | 1234",
        "1 234,567 | 1234.567",
        "12 345.5 | 12345.5",
        "1\u00A0234,5 | 1234.5",
        "1\u2009234,5 | 1234.5",
        "1\u202F234\u202F567 | 1234567",
        "1'234.5 | 1234.5",
        "1\u2019234\u2019567,5 | 1234567.5",
        "\uFF18\uFF15\uFF0E\uFF15 | 85.5",
        "\u0668\u0665,\u0665 | 85.5",
        "\u06F8\u06F5.\u06F5 | 85.5",
        "999999999999.999999999999 | 999999999999.999999999999"
      })
  void readsEitherMarkAndWellFormedGroups(String typed, BigDecimal expected) {
    assertThat(readIn(NumberEntry.read(typed))).isEqualTo(expected);
    assertThat(readIn(NumberEntry.read(" \t" + typed + "\u00A0"))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,234 | write 1234 or 1.23",
        "1.234 | write 1234 or 1.23",
        "12.345 | write 12345 or 12.34",
        "-999,999 | write -999999 or -999.99",
        "+1,000 | write 1000 or 1.00",
        "01.234 | write 01234 or 01.23",
        "\uFF11\uFF0C\uFF12\uFF13\uFF14 | write 1234 or 1.23"
      })
  void refusesOneMarkBeforeThreeDigitsAndSaysWhatToWrite(String typed, String advice) {
    assertThat(refusalOf(NumberEntry.read(typed)))
        .endsWith("can be read two ways; " + advice)
        .startsWith("\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "abc",
        "1a",
        "1e3",
        "0x10",
        "NaN",
        "Infinity",
        "\u221E",
        "-",
        "+",
        ".",
        ",",
        "5.",
        "1.2.3",
        "1,2,3",
        "1.234.5",
        "1,23,456",
        "1,234,56",
        "12,3456,789",
        "1.234,567.8",
        "0,123,456",
        "1234,567,890",
        "1 23",
        "1 2345",
        "1  234",
        "1\t234",
        "1\n234",
        "1'23",
        "'234",
        "1 234'567",
        "0 123",
        "--5",
        "- 5",
        "5-",
        "5 %",
        "1/2",
        "\u00BD",
        "2\u00B2",
        "\u2167",
        "\u4E94",
        "8\u066B5",
        "12\u200B3",
        "\u202E12",
        "12\u0301",
        "\uD83D"
      })
  void refusesWhatIsNoNumber(String typed) {
    assertThat(refusalOf(NumberEntry.read(typed))).endsWith(" is not a number; write it as 85.5");
    assertThat(refusalOf(NumberEntry.readWhole(typed)))
        .endsWith(" is not a whole number; write it as 12");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\t\n", "\u00A0", "\u3000 \u2009"})
  void takesBlanksForNothing(String typed) {
    assertThat(NumberEntry.read(typed)).isEqualTo(new Entry.Empty<BigDecimal>());
    assertThat(NumberEntry.readWhole(typed)).isEqualTo(new Entry.Empty<Integer>());
  }

  @Test
  void refusesMoreDigitsThanTheRecordKeeps() {
    assertThat(refusalOf(NumberEntry.read("1234567890123"))).contains("at most 12 digits before");
    assertThat(refusalOf(NumberEntry.read("0.1234567890123"))).contains("12 after it");
    assertThat(refusalOf(NumberEntry.readWhole("1234567890"))).endsWith("at most 9 digits");
    assertThat(readIn(NumberEntry.readWhole("-999999999"))).isEqualTo(-999_999_999);
  }

  @Test
  void quotesAnOverlongTextOnlyInPart() {
    assertThat(refusalOf(NumberEntry.read("7".repeat(100_000))))
        .isEqualTo("\"" + "7".repeat(60) + "\u2026\" is not a number; write it as 85.5");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12|12",
        "12,0|12",
        "1 234|1234",
        "1.234.567|1234567",
        "+7|7",
        "-7|-7",
        "\u0661\u0662|12"
      })
  void readsWholeNumbers(String typed, int expected) {
    Entry<Integer> entry = NumberEntry.readWhole(typed);
    assertThat(readIn(entry)).isEqualTo(expected);
    assertThat(echoOf(entry)).isEqualTo(Integer.toString(expected));
  }

  @Test
  void refusesAPartOfAWholeNumber() {
    assertThat(refusalOf(NumberEntry.readWhole("12,5")))
        .isEqualTo("\"12,5\" is not a whole number; write it as 12");
    assertThat(refusalOf(NumberEntry.readWhole("1,234")))
        .isEqualTo("\"1,234\" can be read two ways; write 1234 without a mark");
  }

  @Property
  void readsAnyValueBackWithEitherMark(@ForAll("values") BigDecimal value) {
    String plain = value.toPlainString();
    Assume.that(!NumberEntry.isTwoWays(plain));
    assertThat(readIn(NumberEntry.read(plain))).isEqualByComparingTo(value);
    assertThat(readIn(NumberEntry.read(plain.replace('.', ',')))).isEqualByComparingTo(value);
  }

  @Test
  void saysThreeDecimalsBackSoThatTheyCannotBeReadTwoWays() {
    assertThat(echoOf(NumberEntry.read("1,2340"))).isEqualTo("1.2340");
    assertThat(echoOf(NumberEntry.read("0,125"))).isEqualTo("0.125");
  }

  @Property
  void readsItsOwnEchoBackAsTheSame(@ForAll("values") BigDecimal value) {
    Entry<BigDecimal> entry = NumberEntry.read(value.setScale(12).toPlainString());
    assertThat(readIn(entry)).isEqualByComparingTo(value);
    assertThat(NumberEntry.read(echoOf(entry))).isEqualTo(entry);
  }

  @Property
  void readsGroupsOfThreePartedByAnyOneSign(
      @ForAll @IntRange(min = 1000, max = 999_999_999) int whole,
      @ForAll @IntRange(min = 0, max = 9) int tenth) {
    BigDecimal expected = new BigDecimal(whole + "." + tenth);
    for (String sign : List.of(" ", "'", "\u2019", "\u00A0", "\u202F", ".", ",")) {
      String grouped = grouped(whole, sign);
      for (String mark : List.of(".", ",")) {
        if (!sign.equals(mark)) {
          assertThat(readIn(NumberEntry.read(grouped + mark + tenth)))
              .isEqualByComparingTo(expected);
        }
      }
    }
  }

  /** What is advised is never refused in its turn, and holds the two meanings. */
  @Property
  void advisesTheTwoReadings(
      @ForAll @IntRange(min = 1, max = 999) int whole,
      @ForAll @IntRange(min = 0, max = 999) int three) {
    String typed = whole + "," + String.format(Locale.ROOT, "%03d", three);
    String[] advice = refusalOf(NumberEntry.read(typed)).split("; write ")[1].split(" or ");
    assertThat(readIn(NumberEntry.read(advice[0]))).isEqualByComparingTo(typed.replace(",", ""));
    assertThat(
            readIn(NumberEntry.read(advice[1]))
                .subtract(new BigDecimal(typed.replace(',', '.')))
                .abs())
        .isLessThan(new BigDecimal("0.01"));
  }

  @Property
  void answersToAnythingTyped(@ForAll("garbage") String typed) {
    assertAnswered(typed, NumberEntry.read(typed));
    assertAnswered(typed, NumberEntry.readWhole(typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "tr", "ar", "ar-EG-u-nu-arab"})
  void readsTheSameInEveryCountry(String language) {
    for (String typed : List.of("85,5", "85.5", "1 234,5", "1,234", "x", "\u0668\u0665", "")) {
      assertThat(under(language, () -> NumberEntry.read(typed)))
          .isEqualTo(under("en", () -> NumberEntry.read(typed)));
      assertThat(under(language, () -> NumberEntry.readWhole(typed)))
          .isEqualTo(under("en", () -> NumberEntry.readWhole(typed)));
    }
    assertThat(under(language, () -> echoOf(NumberEntry.read("1.234,5")))).isEqualTo("1234.5");
  }

  /** Many of few digits, among them those that could be read two ways. */
  @Provide
  Arbitrary<BigDecimal> values() {
    Arbitrary<Long> unscaled =
        Arbitraries.oneOf(
            Arbitraries.longs().between(-999_999, 999_999),
            Arbitraries.longs().between(-999_999_999_999L, 999_999_999_999L));
    return Combinators.combine(unscaled, Arbitraries.integers().between(0, 6))
        .as((digits, scale) -> BigDecimal.valueOf(digits, scale));
  }

  @Provide
  Arbitrary<String> garbage() {
    return Arbitraries.oneOf(
        Arbitraries.strings().ofMaxLength(80),
        Arbitraries.strings()
            .withChars("0123456789.,' +-\u00A0\u2019\u0661\uFF11\u200F\n")
            .ofMaxLength(80));
  }

  private static String grouped(int whole, String sign) {
    StringBuilder text = new StringBuilder(Integer.toString(whole));
    for (int i = text.length() - 3; i > 0; i -= 3) {
      text.insert(i, sign);
    }
    return text.toString();
  }
}
