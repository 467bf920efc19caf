package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Entered;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The ways in which a patchy record misleads, each with and without what mends it. All lives are
 * drawn around a median of 180 doses with a spread of 0.35 in ln L.
 */
@Tag("slow")
class PitfallsTest {
  private static final double MU = Math.log(180);
  private static final double SIGMA = 0.35;
  private static final int COATS = 250;

  /** Learned median over the true one. */
  private static double ratio(List<Lesson> lessons) {
    return ProductLife.of(MU + 0.1, Lesson.all(lessons))
            .predictive(ProductLife.Spread.overall(0))
            .quantile(0.5)
        / 180;
  }

  private static Lesson lesson(LogLikelihood seen) {
    return new Lesson(seen, Optional.empty(), 1);
  }

  /** Half the coats were never looked at, and "fine" was tapped all the same. */
  @Test
  void nobodyLooked() {
    double mended = ratio(tapped(LifePractice.STANDARD.notLooked(Entered.TWO_TOUCH)));
    double plain = ratio(tapped(0));
    assertThat(mended).isBetween(0.85, 1.15);
    assertThat(plain).isGreaterThan(1.3);
  }

  private static List<Lesson> tapped(double notLooked) {
    Drawn drawn = new Drawn(11);
    double misled = 0.15;
    List<Lesson> lessons = new ArrayList<>();
    for (int i = 0; i < COATS; i++) {
      double lnLife = drawn.normal(MU, SIGMA);
      boolean looks = drawn.chance(0.5);
      LogLikelihood real = new LogLikelihood();
      LogLikelihood blind = new LogLikelihood();
      LogLikelihood all = new LogLikelihood();
      for (double dose = 40; dose <= 320; dose += 40) {
        double d = dose;
        if (!looks || drawn.chance(WaterLook.good(lnLife, d, misled))) {
          real.add(x -> WaterLook.good(x, d, misled));
        } else {
          real.add(x -> WaterLook.bare(x, d, misled));
          blind.add(x -> LifePractice.BARE_UNSEEN);
        }
      }
      all.addMixture(notLooked, real, blind);
      lessons.add(lesson(all));
    }
    return lessons;
  }

  /** Owners call some time after a coat has gone, and nobody looked before. */
  @Test
  void complaintsComeAfterTheEnd() {
    double mended = ratio(complaints(true));
    double plain = ratio(complaints(false));
    assertThat(mended).isBetween(0.88, 1.12);
    assertThat(plain).isLessThan(0.75);
  }

  private static List<Lesson> complaints(boolean asInterval) {
    Drawn drawn = new Drawn(12);
    List<Lesson> lessons = new ArrayList<>();
    for (int i = 0; i < COATS; i++) {
      double dose = Math.exp(drawn.normal(MU, SIGMA)) + drawn.uniform(0, 30);
      LogLikelihood seen = new LogLikelihood();
      seen.add(
          x -> asInterval ? WaterLook.complaint(x, dose, 0, 0.15) : WaterLook.bare(x, dose, 0.15));
      lessons.add(lesson(seen));
    }
    return lessons;
  }

  /** Coats met in service: the short-lived were gone before they could be met. */
  @Test
  void onlyTheLongLivedAreMet() {
    double mended = ratio(met(true));
    double plain = ratio(met(false));
    assertThat(mended).isBetween(0.9, 1.1);
    assertThat(plain).isGreaterThan(1.12);
  }

  private static List<Lesson> met(boolean truncated) {
    Drawn drawn = new Drawn(13);
    List<Lesson> lessons = new ArrayList<>();
    while (lessons.size() < COATS) {
      double lnLife = drawn.normal(MU, SIGMA);
      double metAt = drawn.uniform(0, 320);
      if (lnLife <= Math.log(metAt)) {
        continue;
      }
      LogLikelihood seen = new LogLikelihood();
      seen.addSurvived(metAt);
      for (double dose = metAt + 30; dose < 480; dose += 30) {
        if (!drawn.look(seen, lnLife, dose, 0.05)) {
          break;
        }
      }
      lessons.add(new Lesson(seen, truncated ? Optional.of(metAt) : Optional.empty(), 1));
    }
    return lessons;
  }

  /** Every reading carries the error of the first: more readings do not wear it off. */
  @Test
  void glossReadingsShareTheirFirst() {
    assertThat(covered(true)).isBetween(0.74, 0.88);
    assertThat(covered(false)).isLessThan(0.70);
  }

  /** How often the 80 % range of a life holds it, from eight gloss readings. */
  private static double covered(boolean shared) {
    Drawn drawn = new Drawn(14);
    double firstSd = 0.026;
    LifeChances prior = ProductLife.prior(MU).predictive(ProductLife.Spread.overall(0));
    int held = 0;
    int coats = 500;
    for (int i = 0; i < coats; i++) {
      double sigma =
          Math.exp(drawn.normal(LifePractice.PRIOR_LN_SIGMA_MEAN, LifePractice.PRIOR_LN_SIGMA_SD));
      double lnLife = drawn.normal(drawn.normal(MU, LifePractice.PRIOR_MU_SD), sigma);
      List<GlossEvidence.Reading> readings = drawn.readings(lnLife, MU, firstSd, 8);
      List<GlossEvidence.Reading> apart =
          readings.stream()
              .map(
                  r ->
                      new GlossEvidence.Reading(
                          r.logRatio(), r.dose(), Math.hypot(r.sd(), firstSd)))
              .toList();
      LogLikelihood seen = new LogLikelihood();
      seen.add(
          x ->
              shared
                  ? GlossEvidence.likelihood(readings, firstSd, Math.exp(x))
                  : GlossEvidence.likelihood(apart, 1e-9, Math.exp(x)));
      double place = prior.times(seen).lapsed(Math.exp(lnLife));
      held += place > 0.1 && place < 0.9 ? 1 : 0;
    }
    return held / (double) coats;
  }

  /** Surfaces coated in one visit live alike: eight of them are not eight coats. */
  @Test
  void surfacesOfOneVisitAreNotIndependent() {
    assertThat(coveredMedian(1.0 / 8)).isGreaterThan(0.75);
    assertThat(coveredMedian(1)).isLessThan(0.6);
  }

  /** How often the 80 % range of μ holds it, from six visits of eight coats that live alike. */
  private static double coveredMedian(double share) {
    Drawn drawn = new Drawn(15);
    int held = 0;
    int fleets = 60;
    for (int fleet = 0; fleet < fleets; fleet++) {
      double mu = drawn.normal(MU, LifePractice.PRIOR_MU_SD);
      List<Lesson> lessons = new ArrayList<>();
      for (int visit = 0; visit < 6; visit++) {
        double lnLife = drawn.normal(mu, SIGMA);
        for (int surface = 0; surface < 8; surface++) {
          LogLikelihood seen = new LogLikelihood();
          for (double dose = 30; dose < 600; dose += 30) {
            if (!drawn.look(seen, lnLife, dose, 0.05)) {
              break;
            }
          }
          lessons.add(new Lesson(seen, Optional.empty(), share));
        }
      }
      double place = CalibrationTest.placeOfMu(ProductLife.of(MU, Lesson.all(lessons)), mu);
      held += place > 0.1 && place < 0.9 ? 1 : 0;
    }
    return held / (double) fleets;
  }
}
