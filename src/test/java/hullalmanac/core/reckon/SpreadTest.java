package hullalmanac.core.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SpreadTest {
  private static Quantity m2(double area) {
    return Quantity.of(area, Unit.SQUARE_METRE);
  }

  private static Quantity rate(double m2PerLitre) {
    return Quantity.of(m2PerLitre, Unit.SQUARE_METRE_A_LITRE);
  }

  /**
   * A schoolbook exercise: 360 ft² at 400 ft² a gallon take 0.9 gallons for one coat and 1.8 for
   * two (an essay on D. Sobecki, Math in Our World, 4th ed., read at studybounty.com).
   */
  @Test
  void agreesWithASchoolbookInFeetAndGallons() {
    Quantity area = Quantity.of(360, Unit.SQUARE_FOOT);
    Quantity rate = Quantity.of(400, Unit.SQUARE_FOOT_A_US_GALLON);
    assertThat(gallons(new Spread(area, 1, rate, 0))).isCloseTo(0.9, within(1e-12));
    assertThat(gallons(new Spread(area, 2, rate, 0))).isCloseTo(1.8, within(1e-12));
  }

  private static double gallons(Spread spread) {
    return spread.volume().in(Unit.US_GALLON).doubleValue();
  }

  /**
   * Schoolbook exercises: 128 m² at 10 m² a litre take four cans of 4 litres; 20.01 m² at 6 m² a
   * tin take four tins (exercises with answers, read on public pages; the second at mytutor.co.uk).
   */
  @Test
  void countsWholeBottlesAsSchoolbooksDo() {
    Quantity can = Quantity.of(4, Unit.LITRE);
    Spread basement = new Spread(m2(128), 1, rate(10), 0);
    assertThat(basement.bottles(can)).isEqualTo(4);
    assertThat(basement.over(can).amount()).isEqualByComparingTo("3.2");
    assertThat(new Spread(m2(20.01), 1, rate(6), 0).bottles(Quantity.of(1, Unit.LITRE)))
        .isEqualTo(4);
  }

  /** By hand: 27.5 · 2 / 10 · 1.1 = 6.05. */
  @Test
  void addsWhatIsLostOnTheWay() {
    Spread spread = new Spread(m2(27.5), 2, rate(10), 10);
    assertThat(spread.volume().amount()).isEqualByComparingTo("6.05");
    assertThat(spread.bottles(Quantity.of(500, Unit.MILLILITRE))).isEqualTo(13);
  }

  /** What fills bottles to the brim takes no further one, whatever the units. */
  @Property
  void aFullBottleIsEnough(@ForAll @IntRange(min = 1, max = 500) int bottles) {
    Spread spread =
        new Spread(
            Quantity.of(400.0 * bottles, Unit.SQUARE_FOOT),
            1,
            Quantity.of(400, Unit.SQUARE_FOOT_A_US_GALLON),
            0);
    assertThat(spread.bottles(Quantity.of(1, Unit.US_GALLON))).isEqualTo(bottles);
    assertThat(spread.bottles(Quantity.of(128, Unit.US_FLUID_OUNCE))).isEqualTo(bottles);
  }

  /** 3 ml a m² on 1000 m² are 3 l, though a rate of 1000/3 m² a litre has no last digit. */
  @Test
  void aRateWithoutALastDigitFillsNoFurtherBottle() {
    Quantity thin = Quantity.of(3, Unit.MILLILITRE_A_SQUARE_METRE);
    assertThat(new Spread(m2(1000), 1, thin, 0).bottles(Quantity.of(1, Unit.LITRE))).isEqualTo(3);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> new Spread(m2(1), 0, rate(1), 0)).hasMessageContaining("1 to 99");
    assertThatThrownBy(() -> new Spread(m2(1), 1, rate(1), -1)).hasMessageContaining("waste");
    assertThatThrownBy(() -> new Spread(m2(0), 1, rate(1), 0)).hasMessageContaining("over 0");
  }
}
