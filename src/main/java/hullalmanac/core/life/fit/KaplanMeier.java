package hullalmanac.core.life.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Share of lives not yet ended, from ends seen exactly and lives not seen to end:
 *
 * <pre>
 *   S(t) = Π (1 − d/n) over the times up to t at which d of n ended
 *   var S(t) = S(t)² Σ d / (n (n − d))                                  (Greenwood)
 * </pre>
 *
 * <p>A life left at a time at which others end is counted as still there.
 *
 * <p>References: Kaplan and Meier, J. Am. Stat. Assoc. 53 (1958) 457; Greenwood (1926).
 *
 * @param steps in order of time
 */
public record KaplanMeier(List<SurvivalStep> steps) {
  public KaplanMeier {
    steps = List.copyOf(steps);
  }

  /**
   * Estimates from lives.
   *
   * @throws IllegalArgumentException when one is known only between two times
   */
  public static KaplanMeier of(List<Lifetime> lives) {
    TreeMap<Double, Integer> ends = new TreeMap<>();
    for (Lifetime life : lives) {
      if (!life.exact() && !life.censored()) {
        throw new IllegalArgumentException("a life between two times needs Turnbull's estimate");
      }
      if (life.exact()) {
        ends.merge(life.lower(), 1, Integer::sum);
      }
    }
    List<SurvivalStep> steps = new ArrayList<>();
    double surviving = 1;
    double sum = 0;
    for (var end : ends.entrySet()) {
      double time = end.getKey();
      double ended = end.getValue();
      double there = lives.stream().filter(l -> l.lower() >= time).count();
      surviving *= 1 - ended / there;
      sum += ended / (there * (there - ended));
      steps.add(SurvivalStep.of(time, time, surviving, surviving * Math.sqrt(sum)));
    }
    return new KaplanMeier(steps);
  }

  /** The first time at which at most half of the lives have not ended, where there is one. */
  public Optional<Double> median() {
    return steps.stream().filter(s -> s.surviving() <= 0.5).findFirst().map(SurvivalStep::until);
  }
}
