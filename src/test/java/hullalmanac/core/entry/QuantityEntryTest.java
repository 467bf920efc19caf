package hullalmanac.core.entry;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityEntryTest {
  private static Quantity read(Entry<Quantity> entry) {
    return ((Entry.Read<Quantity>) entry).value();
  }

  private static String refused(Entry<Quantity> entry) {
    return ((Entry.Refused<Quantity>) entry).sentence();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "27.5 m2 | 27.5 | SQUARE_METRE",
        "27,5 m² | 27.5 | SQUARE_METRE",
        "296 sq ft | 296 | SQUARE_FOOT",
        "500ml | 500 | MILLILITRE",
        "0.5 L | 0.5 | LITRE",
        "5 US gal | 5 | US_GALLON",
        "5 uk gallons | 5 | IMPERIAL_GALLON",
        "16 us fl. oz. | 16 | US_FLUID_OUNCE",
        "1 250 ml | 1250 | MILLILITRE",
        "65F | 65 | FAHRENHEIT",
        "-4 °C | -4 | CELSIUS",
        "18.5° c | 18.5 | CELSIUS",
        "35 psi | 35 | PSI",
        "32.5 ft | 32.5 | FOOT",
        "32' | 32 | FOOT",
        "6″ | 6 | INCH",
        "32' 6\" | 390 | INCH",
        "32 ft 6.5 in | 390.5 | INCH",
        "5 mil | 5 | MIL",
        "40 µm | 40 | MICROMETRE",
        "40 μm | 40 | MICROMETRE",
        "10 m2/l | 10 | SQUARE_METRE_A_LITRE",
        "10 m² per litre | 10 | SQUARE_METRE_A_LITRE",
        "400 ft2/us gal | 400 | SQUARE_FOOT_A_US_GALLON",
        "80 ml/m2 | 80 | MILLILITRE_A_SQUARE_METRE"
      })
  void readsNumbersWithTheirUnits(String typed, BigDecimal amount, Unit unit) {
    Quantity read = read(QuantityEntry.readAny(typed));
    assertThat(read.amount()).isEqualByComparingTo(amount);
    assertThat(read.unit()).isEqualTo(unit);
  }

  @Test
  void aBareNumberHasTheUsualUnit() {
    assertThat(read(QuantityEntry.read("12", Unit.SQUARE_FOOT)))
        .isEqualTo(new Quantity(BigDecimal.valueOf(12), Unit.SQUARE_FOOT));
    assertThat(refused(QuantityEntry.readAny("12"))).startsWith("\"12\" needs its unit");
    assertThat(QuantityEntry.readAny(" ")).isEqualTo(new Entry.Empty<>());
  }

  @Test
  void saysBothUnits() {
    assertThat(QuantityEntry.read("500", Unit.MILLILITRE))
        .isEqualTo(
            new Entry.Read<>(
                new Quantity(BigDecimal.valueOf(500), Unit.MILLILITRE), "500 ml · 16.91 us fl oz"));
    Entry<Quantity> feet = QuantityEntry.readAny("32 ft 6 in");
    assertThat(((Entry.Read<Quantity>) feet).echo()).isEqualTo("32 ft 6 in · 9.91 m");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5 gal | can be US or imperial; write 5 us gal or 5 imp gal",
        "12 oz | can be US or imperial; write 12 us fl oz or 12 imp fl oz",
        "1,250 ml | can be read two ways; write 1250 ml or 1.25 ml",
        "5 m2 | is an area, and a volume is needed; write it as 500 ml or 16 us fl oz",
        "five l | is not a volume; write it as 500 ml or 16 us fl oz",
        "5 cubits | is not a volume; write it as 500 ml or 16 us fl oz",
        "5..1 l | is not a volume; write it as 500 ml or 16 us fl oz"
      })
  void refusesWhatCouldMeanTwoThingsOrNothing(String typed, String why) {
    assertThat(refused(QuantityEntry.read(typed, Unit.MILLILITRE)))
        .isEqualTo("\"" + typed + "\" " + why);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0 ml", "-3 l", "0 ml/m2", "-300 c", "3 ft 12 in", "0 ft 0 in", "'", "° c"})
  void refusesWhatCannotBe(String typed) {
    assertThat(QuantityEntry.readAny(typed)).isInstanceOf(Entry.Refused.class);
  }

  /** A field shows a quantity with all its digits; that must be read back as the same. */
  @Property
  void whatIsWrittenReadsBackAsTheSame(
      @ForAll @BigRange(min = "0.001", max = "99999") @Scale(3) BigDecimal amount,
      @ForAll Unit unit) {
    Quantity quantity = new Quantity(amount.stripTrailingZeros(), unit);
    Quantity back = read(QuantityEntry.readAny(quantity.exactText()));
    assertThat(back.amount()).isEqualByComparingTo(quantity.amount());
    assertThat(back.unit()).isEqualTo(unit);
    assertThat(read(QuantityEntry.readAny(quantity.text())).unit()).isEqualTo(unit);
  }
}
