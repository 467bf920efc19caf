package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.exposure.WearPractice;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.PracticeValue;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.With;
import hullalmanac.core.remind.RemindPractice;
import hullalmanac.fixture.Boatyard;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every practice value of the dates moves something that the forecast reckons with, and nothing is
 * left behind.
 */
class PracticeTest {
  private static final Made MADE = new Made(48.4);
  private static final Boatyard YARD = new Boatyard();

  /** All that the forecast asks of practice. */
  private static List<Object> asked(Practice practice) {
    LifePractice life = new LifePractice(practice);
    List<Object> asked = new ArrayList<>();
    asked.add(WearPractice.of(practice));
    asked.add(life.oneReminderDays());
    asked.add(RemindPractice.of(With.component(MADE.almanac().business(), "practice", practice)));
    for (ProductKind kind : ProductKind.values()) {
      if (kind.coatClass().isPresent()) {
        Product plain = YARD.product(kind, null);
        asked.add(life.usualMonths(plain));
        asked.add(life.expectedMonths(YARD.product(kind, 10.0)));
        asked.add(life.labelShare(cars(plain)));
        asked.add(life.risk(surface(Tone.LIGHT, Finish.GELCOAT), plain));
        asked.add(life.risk(surface(Tone.DARK, Finish.GELCOAT), plain));
      }
    }
    for (Finish finish : Finish.values()) {
      asked.add(life.intervalMonths(surface(Tone.LIGHT, finish)));
    }
    for (Entered entered : Entered.values()) {
      asked.add(life.notLooked(entered));
      for (SurfaceState state : SurfaceState.values()) {
        asked.add(life.misled(state, entered));
      }
    }
    return asked;
  }

  private static Product cars(Product product) {
    return With.component(product, "labelForCars", true);
  }

  private static Surface surface(Tone tone, Finish finish) {
    return MADE.surface(SurfaceKind.TOPSIDES, Side.BOTH, tone, finish);
  }

  /** Those of correction are held by a test beside it. */
  static Stream<PracticeValue> ofDates() {
    return Arrays.stream(PracticeValue.values()).filter(v -> v.topic().dates());
  }

  @ParameterizedTest
  @MethodSource("ofDates")
  void movesWhatIsReckonedWithAndComesBack(PracticeValue value) {
    List<Object> standard = asked(Practice.STANDARD);
    double other = value.standard() < value.highest() ? value.highest() : value.lowest();
    Practice set = Practice.STANDARD.with(value, Optional.of(other));
    assertThat(asked(set)).as(value.words()).isNotEqualTo(standard);
    assertThat(asked(set.with(value, Optional.empty()))).isEqualTo(standard);
  }

  @ParameterizedTest
  @EnumSource(PracticeValue.class)
  void keepsWithinItsRangeAndReadsBackFromItsLine(PracticeValue value) {
    assertThat(value.standard()).isBetween(value.lowest(), value.highest());
    Practice set = Practice.STANDARD.with(value, Optional.of(value.lowest()));
    assertThat(Practice.parse(set.text())).isEqualTo(set);
    assertThatThrownBy(() -> Practice.STANDARD.with(value, Optional.of(value.highest() * 2 + 1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("runs from");
  }

  @Test
  void aLineThatIsNotUnderstoodIsRefusedInWords() {
    assertThatThrownBy(() -> Practice.parse("tide=3")).hasMessageContaining("tide");
    assertThatThrownBy(() -> Practice.parse("shed=much")).hasMessageContaining("number");
    assertThat(Practice.parse("  ")).isEqualTo(Practice.STANDARD);
  }
}
