package hullalmanac.study;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.exposure.WearPractice;
import hullalmanac.study.generator.SecondLaw.Fleet;
import hullalmanac.study.generator.SecondLaw.Plan;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A small share of the study of {@link Study}, with fixed seeds, in every build. Its bounds are
 * wide enough for so few fleets and far too narrow for a model that reads findings wrongly.
 */
@Tag("slow")
class StudyTest {
  @Test
  void theRangeHoldsTheTruthAndTheMiddleBeatsTheLabel() {
    List<Score> scores = new ArrayList<>();
    for (int seed = 1; seed <= 3; seed++) {
      Fleet fleet = Fleets.of(new Plan(seed, 70, 4, false, true));
      scores.addAll(Fleets.scores(fleet, WearPractice.usual()));
    }
    double held = scores.stream().mapToDouble(s -> s.held() ? 1 : 0).average().orElseThrow();
    assertThat(held).isBetween(0.74, 0.90);
    double error = Fleets.median(scores.stream().map(Score::error).toList());
    double labels = Fleets.median(scores.stream().map(Score::labelError).toList());
    assertThat(error / labels).isLessThan(0.70);
  }
}
