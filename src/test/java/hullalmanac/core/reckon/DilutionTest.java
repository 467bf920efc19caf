package hullalmanac.core.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DilutionTest {
  /**
   * CDC, Best Practices for Environmental Cleaning, appendix E, examples 1 and 3: 3.5 % to 0.5 %
   * takes 6 parts of water to one, 5 % to 0.1 % takes 49.
   */
  @ParameterizedTest
  @CsvSource({"3.5, 0.5, 6", "5, 0.1, 49"})
  void agreesWithTheExamplesOfItsSource(double concentrate, double wanted, double parts) {
    assertThat(Dilution.of(concentrate, wanted).water()).isCloseTo(parts, within(1e-9));
  }

  @Test
  void saysPartsInWordsAndNeverAsARatio() {
    assertThat(new Dilution(10).words()).isEqualTo("1 part and 10 parts water, 11 in all");
    assertThat(new Dilution(1).words()).isEqualTo("1 part and 1 part water, 2 in all");
    assertThat(new Dilution(2.5).words()).isEqualTo("1 part and 2.5 parts water, 3.5 in all");
    assertThat(Dilution.of(100, 3).words()).isEqualTo("1 part and 32.33 parts water, 33.33 in all");
  }

  /** By hand: 1 part and 10 parts water in a litre are 1000/11 = 90.909 ml and 909.091 ml. */
  @Test
  void fillsABottle() {
    Dilution dilution = new Dilution(10);
    assertThat(dilution.product(1000)).isCloseTo(90.909091, within(1e-6));
    assertThat(dilution.water(1000)).isCloseTo(909.090909, within(1e-6));
    assertThat(dilution.strength()).isCloseTo(9.0909, within(1e-4));
  }

  @Property
  void productAndWaterMakeUpTheBottle(
      @ForAll @DoubleRange(min = 0.01, max = 1000) double water,
      @ForAll @DoubleRange(min = 1, max = 20_000) double inAll) {
    Dilution dilution = new Dilution(water);
    double product = dilution.product(inAll);
    assertThat(product + dilution.water(inAll)).isCloseTo(inAll, within(inAll * 1e-12));
    assertThat(dilution.water(inAll) / product).isCloseTo(water, within(water * 1e-9));
    assertThat(dilution.inAll(product)).isCloseTo(inAll, within(inAll * 1e-12));
    assertThat(Dilution.of(100, dilution.strength()).water())
        .isCloseTo(water, within(1e-6 + water * 1e-9));
  }

  @Test
  void refusesWhatThinsNothing() {
    assertThatThrownBy(() -> new Dilution(0)).hasMessageContaining("over 0");
    assertThatThrownBy(() -> Dilution.of(5, 5)).hasMessageContaining("under that of the product");
  }
}
