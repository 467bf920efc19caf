package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.PracticeValue;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.With;
import hullalmanac.reference.Reference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Starter values that a business may set, and the table of stages they begin with. */
class FinishPracticeTest {
  /** All that a business's practice values change in what is known before the record has taught. */
  private static List<Object> asked(Practice practice) {
    Business business = With.component(Business.unnamed(), "practice", practice);
    Experience none = Experience.of(Almanac.empty(business), Slipway.TODAY);
    List<Object> asked = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      for (Tone tone : Tone.values()) {
        asked.add(none.law(stage, Finish.GELCOAT, tone));
      }
      asked.add(none.rates().minutes(stage, Condition.FAIR));
      asked.add(none.rates().millilitres(stage));
    }
    for (StepKind kind : List.of(StepKind.WASH, StepKind.DECONTAMINATE, StepKind.PROTECT)) {
      asked.add(none.rates().minutes(kind, Condition.FAIR));
    }
    asked.add(none.rates().protection());
    asked.add(none.rates().cleaning(StepKind.WASH));
    asked.add(none.rates().cleaning(StepKind.DECONTAMINATE));
    for (int age : new int[] {1, 10, 30}) {
      asked.add(GlossLimit.usual(none.practice(), Film.GELCOAT, Optional.of(age)));
    }
    for (Tone tone : Tone.values()) {
      Budget.History history = new Budget.History(Past.KNOWN, Optional.of(3), 0, 0);
      asked.add(Budget.of(none.practice(), Film.GELCOAT, tone, history, Optional.empty()));
    }
    return asked;
  }

  static Stream<PracticeValue> ofPlans() {
    return Arrays.stream(PracticeValue.values()).filter(v -> !v.topic().dates());
  }

  @ParameterizedTest
  @MethodSource("ofPlans")
  void everyValueMovesWhatPlansAreReckonedWithAndComesBack(PracticeValue value) {
    List<Object> standard = asked(Practice.STANDARD);
    Practice set = Practice.STANDARD.with(value, Optional.of(value.highest()));
    assertThat(asked(set)).as(value.words()).isNotEqualTo(standard);
    assertThat(asked(set.with(value, Optional.empty()))).isEqualTo(standard);
  }

  static Stream<List<String>> table() {
    return Reference.read(FinishPracticeTest.class, "stages.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("table")
  void startsFromTheTableOfStages(List<String> row) {
    Stage stage = Stage.valueOf(row.get(0));
    FinishPractice practice = FinishPractice.STANDARD;
    assertThat(practice.ceiling(stage.law(), Tone.LIGHT)).isEqualTo(Double.parseDouble(row.get(1)));
    assertThat(practice.ceiling(stage.law(), Tone.DARK)).isEqualTo(Double.parseDouble(row.get(2)));
    assertThat(practice.q(stage.law())).isCloseTo(Double.parseDouble(row.get(3)), within(1e-12));
    assertThat(stage.tenths(Film.GELCOAT) / 10.0).isEqualTo(Double.parseDouble(row.get(4)));
  }
}
