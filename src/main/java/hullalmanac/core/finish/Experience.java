package hullalmanac.core.finish;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Tone;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a record teaches of correction: the laws of gloss by stage, finish and colour, and minutes
 * and product for a square metre. It costs one pass over the record and serves all surfaces.
 */
public final class Experience {
  private final FinishPractice practice;
  private final Map<GlossPairs.Key, Learned> laws;
  private final Rates rates;

  /** A law, and what it rests on. */
  record Learned(GlossLaw law, Origin origin) {}

  private Experience(FinishPractice practice, Map<GlossPairs.Key, Learned> laws, Rates rates) {
    this.practice = practice;
    this.laws = Map.copyOf(laws);
    this.rates = rates;
  }

  /** What a record teaches up to a day. */
  public static Experience of(Almanac almanac, LocalDate today) {
    FinishPractice practice = new FinishPractice(almanac.business().practice());
    DoneWork work = new DoneWork(almanac, today);
    Map<GlossPairs.Key, Learned> laws = new HashMap<>();
    GlossPairs.of(practice, work)
        .forEach((key, found) -> laws.put(key, learned(practice, key, found)));
    return new Experience(practice, laws, RateLessons.learn(practice, work, almanac));
  }

  private static Learned learned(
      FinishPractice practice, GlossPairs.Key key, List<GlossPairs.Found> found) {
    GlossLaw law =
        GlossLaw.starter(practice, key.law(), key.tone())
            .taught(
                found.stream().map(GlossPairs.Found::pair).toList(),
                FinishPractice.BETWEEN_SURFACES);
    int boats = (int) found.stream().map(GlossPairs.Found::boat).distinct().count();
    return new Learned(law, new Origin(boats, false));
  }

  /** What is known of a stage on surfaces of a finish and colour. */
  Learned law(Stage stage, Finish finish, Tone tone) {
    Learned learned = laws.get(new GlossPairs.Key(stage.law(), finish, tone));
    return learned == null
        ? new Learned(GlossLaw.starter(practice, stage.law(), tone), Origin.STARTER)
        : learned;
  }

  FinishPractice practice() {
    return practice;
  }

  Rates rates() {
    return rates;
  }
}
