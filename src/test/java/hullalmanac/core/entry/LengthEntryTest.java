package hullalmanac.core.entry;

import static hullalmanac.core.entry.Entries.assertAnswered;
import static hullalmanac.core.entry.Entries.echoOf;
import static hullalmanac.core.entry.Entries.readIn;
import static hullalmanac.core.entry.Entries.refusalOf;
import static hullalmanac.core.entry.Entries.under;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Business.Units;
import hullalmanac.core.record.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Conversions by the international yard and pound agreement of 1959: 1 yard = 0.9144 m exactly, so
 * 1 ft = 304.8 mm and 1 in = 25.4 mm.
 */
class LengthEntryTest {
  private static final String LIMITS = "A length is over 0 and at most 200 m (656 ft 2 in)";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "32'6\" | 9906",
        "32' 6\" | 9906",
        "32' 6 | 9906",
        "32'6 | 9906",
        "32'-6\" | 9906",
        "32'6'' | 9906",
        "32\u20326\u2033 | 9906",
        "32\u20196\u201D | 9906",
        "32\u2032\u00A06\u2032\u2032 | 9906",
        "32 ft 6 in | 9906",
        "32ft6in | 9906",
        "32 FT. 6 IN. | 9906",
        "32 feet 6 inches | 9906",
        "32 ft, 6 in | 9906",
        "32 ft 6 | 9906",
        "\uFF13\uFF12\uFF46\uFF54\u3000\uFF16\uFF49\uFF4E | 9906",
        "\u0663\u0662 ft \u0666 in | 9906",
        "32ft | 9754",
        "32' | 9754",
        "32\u2019 | 9754",
        "1 foot | 305",
        "32.5 ft | 9906",
        "32,5 ft | 9906",
        "32 1/2 ft | 9906",
        "32\u00BD ft | 9906",
        "32' 6 1/2\" | 9919",
        "32'6\u00BD\" | 9919",
        "32 ft 6.5 in | 9919",
        "32 ft 0 in | 9754",
        "32 ft 11.9 in | 10056",
        "0 ft 6 in | 152",
        "6 in | 152",
        "6\" | 152",
        "1/2 in | 13",
        "2.5 in | 64",
        "14 in | 356",
        "9,9 m | 9900",
        "9.9m | 9900",
        "9.9 M | 9900",
        "9.9 metres | 9900",
        "9.9 meters | 9900",
        "9,1440 m | 9144",
        "0,125 m | 125",
        "990 cm | 9900",
        "9900 mm | 9900",
        "9 900 mm | 9900",
        "0.5 mm | 1",
        "200 m | 200000"
      })
  void readsFeetAndInchesAndMetresInManySpellings(String typed, int millimetres) {
    for (Units usual : Units.values()) {
      assertThat(readIn(LengthEntry.read(" " + typed + "\t", usual)))
          .isEqualTo(new Length(millimetres));
    }
  }

  @ParameterizedTest
  @CsvSource({"32.5, 9906, 32500", "'32,5', 9906, 32500", "32, 9754, 32000", "7 1/4, 2210, 7250"})
  void readsABareNumberInTheUsualUnit(String typed, int ofFeet, int ofMetres) {
    assertThat(readIn(LengthEntry.read(typed, Units.FEET))).isEqualTo(new Length(ofFeet));
    assertThat(readIn(LengthEntry.read(typed, Units.METRES))).isEqualTo(new Length(ofMetres));
  }

  @ParameterizedTest
  @CsvSource({
    "32 ft 6 in, 32 ft 6 in \u00B7 9.91 m, 9.91 m \u00B7 32 ft 6 in",
    "9.5 m, 31 ft 2 in \u00B7 9.50 m, 9.50 m \u00B7 31 ft 2 in",
    "32 ft, 32 ft \u00B7 9.75 m, 9.75 m \u00B7 32 ft",
    "6 in, 6 in \u00B7 0.15 m, 0.15 m \u00B7 6 in"
  })
  void saysBackBothUnitsWithTheUsualOneFirst(String typed, String feetFirst, String metresFirst) {
    assertThat(echoOf(LengthEntry.read(typed, Units.FEET))).isEqualTo(feetFirst);
    assertThat(echoOf(LengthEntry.read(typed, Units.METRES))).isEqualTo(metresFirst);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "0 m", "-5 m", "-32'6\"", "-0 ft 6 in", "201 m", "0.4 mm"})
  void saysTheLimitsOfALengthAsASentence(String typed) {
    assertThat(refusalOf(LengthEntry.read(typed, Units.FEET))).isEqualTo(LIMITS);
  }

  @Test
  void takesLengthsUpToTheLimitAndNoneAbove() {
    assertThat(readIn(LengthEntry.read("656 ft 2 in", Units.FEET)).millimetres())
        .isEqualTo(200_000);
    for (String typed :
        List.of("656 ft 3 in", "200.1 m", "20001 cm", "200001 mm", "999999999999 ft")) {
      assertThat(refusalOf(LengthEntry.read(typed, Units.FEET))).isEqualTo(LIMITS);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "9,900 m | write 9.90 m or 9900 mm",
        "9.144 m | write 9.14 m or 9144 mm",
        "9,900 mm | write 9.90 mm or 9900 mm",
        "32,500 ft | write 32.50 ft",
        "32.500 | write 32.50 ft",
        "1,234 in | write 1.23 in or 1234 in",
        "32' 6,125\" | write 32 ft 6.12 in"
      })
  void refusesANumberThatCanBeReadTwoWays(String typed, String advice) {
    assertThat(refusalOf(LengthEntry.read(typed, Units.FEET)))
        .endsWith(" can be read two ways; " + advice);
  }

  @Test
  void refusesTwelveInchesOrMoreAfterFeet() {
    assertThat(refusalOf(LengthEntry.read("32'14\"", Units.FEET)))
        .isEqualTo(
            "A foot has 12 inches, so after feet they are under 12, not 14; write 32 ft 6 in");
    assertThat(refusalOf(LengthEntry.read("32 ft 12 in", Units.METRES))).contains("not 12");
    assertThat(refusalOf(LengthEntry.read("1'234", Units.METRES))).contains("not 234");
  }

  @Test
  void refusesPartsOfAFootBesideInches() {
    assertThat(refusalOf(LengthEntry.read("32.5 ft 6 in", Units.FEET)))
        .isEqualTo("\"32.5 ft 6 in\" has a part of a foot twice; write 32.5 ft or 32 ft 6 in");
    assertThat(refusalOf(LengthEntry.read("32 1/2' 6", Units.FEET))).contains("twice");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "abc",
        "m",
        "ft",
        "'",
        "\"",
        "32 6",
        "32\"6",
        "6 in 32 ft",
        "9 m 90 cm",
        "32 ft -6 in",
        "32 ft .5 in",
        "32 yd",
        "0.2 km",
        "32 x 6",
        "1\u00BD2 ft",
        "\u00BD\u00BD ft",
        "3/2 ft",
        "0/2 ft",
        "1/3 ft",
        "1,234 ft 6 in",
        "32..5 ft",
        "32 ft ft",
        "32 ft 6 in 2",
        "1'234 mm",
        "2\u00B2 m",
        "9\t900 mm",
        "9\u200B9 m",
        "NaN m",
        "\u3390",
        "1e3 mm"
      })
  void refusesWhatIsNoLength(String typed) {
    assertThat(refusalOf(LengthEntry.read(typed, Units.FEET)))
        .endsWith(" is not a length; write it as 32 ft 6 in or 9.91 m");
    assertThat(refusalOf(LengthEntry.read(typed, Units.METRES)))
        .endsWith(" is not a length; write it as 9.91 m or 32 ft 6 in");
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void takesBlanksForNothing(Units usual) {
    assertThat(LengthEntry.read(" \u00A0", usual)).isEqualTo(new Entry.Empty<Length>());
  }

  @Property
  void readsBackWhatARecordSaysInFeetAndInches(
      @ForAll @IntRange(min = 13, max = 199_974) int millimetres, @ForAll Units usual) {
    String said = new Length(millimetres).feetAndInches();
    Length read = readIn(LengthEntry.read(said, usual));
    assertThat(read.feetAndInches()).isEqualTo(said);
    assertThat(Math.abs(read.millimetres() - millimetres)).isLessThanOrEqualTo(13);
  }

  @Property
  void readsBackWhatARecordSaysInMetres(
      @ForAll @IntRange(min = 5, max = 200_000) int millimetres, @ForAll Units usual) {
    String said = new Length(millimetres).metresText();
    assertThat(readIn(LengthEntry.read(said, usual)).metresText()).isEqualTo(said);
    assertThat(readIn(LengthEntry.read(said.replace('.', ','), usual)).metresText())
        .isEqualTo(said);
  }

  /** 1 in = 25.4 mm exactly (international yard and pound agreement, 1959). */
  @Property
  void readsEveryWayOfSayingFeetAndInchesAlike(
      @ForAll @IntRange(min = 0, max = 655) int feet,
      @ForAll @IntRange(min = 1, max = 11) int inches) {
    int tenthsOfMm = (feet * 12 + inches) * 254;
    Length expected = new Length((tenthsOfMm + 5) / 10);
    for (String form :
        List.of("%d'%d\"", "%d' %d", "%d ft %d in", "%dft%din", "%d\u2032 %d\u2033")) {
      String typed = String.format(Locale.ROOT, form, feet, inches);
      assertThat(readIn(LengthEntry.read(typed, Units.METRES))).isEqualTo(expected);
    }
    assertThat(readIn(LengthEntry.read(feet * 12 + inches + " in", Units.METRES)))
        .isEqualTo(expected);
  }

  @Property
  void readsMillimetresExactly(@ForAll @IntRange(min = 1, max = 200_000) int millimetres) {
    Length expected = new Length(millimetres);
    BigDecimal mm = BigDecimal.valueOf(millimetres);
    assertThat(readIn(LengthEntry.read(mm + " mm", Units.FEET))).isEqualTo(expected);
    assertThat(readIn(LengthEntry.read(mm.movePointLeft(1) + " cm", Units.FEET)))
        .isEqualTo(expected);
    assertThat(readIn(LengthEntry.read(mm.movePointLeft(3) + "0 m", Units.FEET)))
        .isEqualTo(expected);
  }

  @Property
  void answersToAnythingTyped(@ForAll("garbage") String typed, @ForAll Units usual) {
    assertAnswered(typed, LengthEntry.read(typed, usual));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "tr", "ar", "ar-EG-u-nu-arab"})
  void readsTheSameInEveryCountry(String language) {
    for (String typed : List.of("32 FT 6 IN", "9,9 m", "6 INCHES", "9,900 m", "x", "", "201 m")) {
      for (Units usual : Units.values()) {
        assertThat(under(language, () -> LengthEntry.read(typed, usual)))
            .isEqualTo(under("en", () -> LengthEntry.read(typed, usual)));
      }
    }
    assertThat(under(language, () -> echoOf(LengthEntry.read("32 FT 6 IN", Units.FEET))))
        .isEqualTo("32 ft 6 in \u00B7 9.91 m");
  }

  @Provide
  Arbitrary<String> garbage() {
    return Arbitraries.oneOf(
        Arbitraries.strings().ofMaxLength(80),
        Arbitraries.of(
                "3", "12", "32", ".", ",", "/", "'", "\"", " ", "ft", "in", "m", "mm", "cm", "-",
                "\u2032", "\u2033", "\u00BD", "\u0663", "\u200F")
            .list()
            .ofMaxSize(12)
            .map(parts -> String.join("", parts)));
  }
}
