package hullalmanac.core.report;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.fixture.OpenSample;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ForecastWordsTest {
  @Property
  void neverCallsAnythingCertain(@ForAll @DoubleRange(min = 0, max = 1) double chance) {
    String words = ForecastWords.frequency(chance);
    assertThat(words).doesNotStartWith("0 ").doesNotStartWith("10 ");
    assertThat(words).matches("([1-9]|fewer than 1|more than 9) in 10");
  }

  /** Every coat of the sample is put into words that a person can read out. */
  @Test
  void findsWordsForEveryCoat() {
    ForecastWords words = new ForecastWords(OpenSample.fleet().asOf());
    for (CoatForecast f : OpenSample.fleet().coats()) {
      String all =
          words.due(f) + " | " + words.chance(f) + " | " + words.sentence(f) + words.status(f);
      assertThat(all)
          .doesNotContain("null", "Optional", "NaN", "  ", " 0 in 10", "10 in 10", "10 chances");
      if (f.outcome() instanceof Outcome.AlreadyLapsed) {
        assertThat(words.due(f)).startsWith("seen bare on ");
      }
      if (f.outcome() instanceof Outcome.Dated d
          && !d.renewBy().isBefore(OpenSample.fleet().asOf())) {
        assertThat(words.due(f)).startsWith("best ");
      }
    }
  }
}
