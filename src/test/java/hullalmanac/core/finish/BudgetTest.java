package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Past;
import hullalmanac.core.record.Tone;
import java.time.LocalDate;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source; the numbers are worked out by hand from the rule of thumb. */
class BudgetTest {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 1);

  private static Budget gelcoat(Tone tone, Past past, Integer age, int taken) {
    return Budget.of(
        FinishPractice.STANDARD,
        Film.GELCOAT,
        tone,
        new Budget.History(past, Optional.ofNullable(age), taken, 0),
        Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({"0, 2500", "5, 2000", "10, 1500", "15, 1100", "20, 700", "25, 300", "29, 0", "60, 0"})
  void anUnknownPastCostsMoreWithAge(int age, int flats) {
    Budget budget = gelcoat(Tone.LIGHT, Past.UNKNOWN, age, 0);
    assertThat(budget.flats()).isEqualTo(flats);
    assertThat(budget.edges()).isEqualTo(flats / 2);
    assertThat(budget.basis()).isEqualTo(Budget.Basis.BY_AGE);
  }

  @Test
  void aDarkSurfaceKeepsMoreInReserve() {
    assertThat(gelcoat(Tone.DARK, Past.UNKNOWN, 10, 0).flats()).isEqualTo(1000);
    assertThat(gelcoat(Tone.DARK, Past.KNOWN, 10, 0).flats()).isEqualTo(2000);
  }

  @Test
  void aKnownPastIsWhatTheRecordTookOff() {
    Budget budget = gelcoat(Tone.LIGHT, Past.KNOWN, 25, 300);
    assertThat(budget.flats()).isEqualTo(2200);
    assertThat(budget.edges()).isEqualTo(950);
  }

  @Test
  void withoutAnAgeItIsTakenAsOld() {
    Budget budget = gelcoat(Tone.LIGHT, Past.UNKNOWN, null, 0);
    assertThat(budget.flats()).isEqualTo(700);
    assertThat(budget.basis()).isEqualTo(Budget.Basis.NO_AGE);
  }

  @Test
  void aMeasurementOverridesAndOnlyLaterWorkCounts() {
    Budget.History history = new Budget.History(Past.UNKNOWN, Optional.of(30), 400, 50);
    Measured both = new Measured(410, Optional.of(180.0), DAY);
    assertThat(
            Budget.of(
                FinishPractice.STANDARD, Film.GELCOAT, Tone.LIGHT, history, Optional.of(both)))
        .isEqualTo(new Budget(1550, 500, Budget.Basis.MEASURED));
    Measured flats = new Measured(410, Optional.empty(), DAY);
    assertThat(
            Budget.of(
                    FinishPractice.STANDARD, Film.GELCOAT, Tone.LIGHT, history, Optional.of(flats))
                .edges())
        .isEqualTo(750);
  }

  @Test
  void paintMayLoseTenMicronsForLifeOrNothing() {
    Budget.History history = new Budget.History(Past.UNKNOWN, Optional.of(3), 30, 0);
    Optional<Measured> gauge = Optional.of(new Measured(400, Optional.empty(), DAY));
    assertThat(
            Budget.of(FinishPractice.STANDARD, Film.CLEAR_OVER_METALLIC, Tone.DARK, history, gauge)
                .flats())
        .isEqualTo(70);
    assertThat(
            Budget.of(FinishPractice.STANDARD, Film.BUFFABLE_URETHANE, Tone.LIGHT, history, gauge)
                .edges())
        .isEqualTo(70);
    assertThat(Budget.of(FinishPractice.STANDARD, Film.NO_ABRASIVES, Tone.LIGHT, history, gauge))
        .isEqualTo(new Budget(0, 0, Budget.Basis.NO_ABRASIVES));
  }

  @Test
  void peopleHearHowMuchThereIsToSpareWhereItIsLeast() {
    assertThat(new Budget(2500, 500, Budget.Basis.MEASURED).spare()).isEqualTo(Spare.PLENTY);
    assertThat(new Budget(2500, 499, Budget.Basis.MEASURED).spare()).isEqualTo(Spare.CAREFUL);
    assertThat(new Budget(2500, 4, Budget.Basis.MEASURED).spare()).isEqualTo(Spare.NONE);
    assertThat(Spare.NONE.words()).isEqualTo("none to spare");
  }

  @Test
  void edgesCountUnlessTheyAreTaped() {
    Budget budget = new Budget(100, 40, Budget.Basis.MEASURED);
    assertThat(budget.allows(40, false)).isTrue();
    assertThat(budget.allows(41, false)).isFalse();
    assertThat(budget.allows(100, true)).isTrue();
    assertThat(budget.allows(101, true)).isFalse();
    assertThat(budget.less(60, true)).isEqualTo(new Budget(40, 40, Budget.Basis.MEASURED));
    assertThat(budget.less(30, false)).isEqualTo(new Budget(70, 10, Budget.Basis.MEASURED));
  }

  @Property(tries = 300)
  void workAndYearsNeverAddToIt(
      @ForAll @IntRange(min = 0, max = 60) int age,
      @ForAll @IntRange(min = 0, max = 20) int years,
      @ForAll @IntRange(min = 0, max = 3000) int taken,
      @ForAll @IntRange(min = 0, max = 500) int more,
      @ForAll Tone tone,
      @ForAll Past past) {
    Budget now = gelcoat(tone, past, age, taken);
    Budget later = gelcoat(tone, past, age + years, taken + more);
    assertThat(later.flats()).isLessThanOrEqualTo(now.flats());
    assertThat(later.edges()).isLessThanOrEqualTo(now.edges());
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> new Measured(-5, Optional.empty(), DAY))
        .hasMessage("gelcoat is 0 to 3000 µm thick, not -5.0; read the gauge again");
    assertThatThrownBy(() -> new Measured(400, Optional.of(Double.NaN), DAY))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Budget(-1, 0, Budget.Basis.MEASURED))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Budget.History(Past.KNOWN, Optional.of(-1), 0, 0))
        .hasMessage("a finish is not -1 years old");
  }
}
