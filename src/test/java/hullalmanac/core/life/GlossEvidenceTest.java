package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.life.GlossEvidence.Reading;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class GlossEvidenceTest {
  /**
   * The same likelihood in closed form: a sum over which readings are wild of multivariate normal
   * densities with Σ = diag(s²) + s₀² 1 1ᵀ, by the Sherman–Morrison formula and the determinant
   * lemma.
   */
  private static double closedForm(List<Reading> readings, double firstSd, double life) {
    double sum = 0;
    for (int wild = 0; wild < 1 << readings.size(); wild++) {
      double chance = 1;
      double precision = 0;
      double pull = 0;
      double square = 0;
      double determinant = 1;
      for (int i = 0; i < readings.size(); i++) {
        boolean isWild = (wild >> i & 1) == 1;
        Reading r = readings.get(i);
        double sd = isWild ? 0.30 : r.sd();
        double e = r.logRatio() - Math.log(0.93) * Math.min(1.5, r.dose() / life);
        chance *= isWild ? 0.05 : 0.95;
        precision += 1 / (sd * sd);
        pull += e / (sd * sd);
        square += e * e / (sd * sd);
        determinant *= sd * sd;
      }
      double s2 = firstSd * firstSd;
      double exponent = square - s2 * pull * pull / (1 + s2 * precision);
      sum += chance * Math.exp(-0.5 * exponent) / Math.sqrt(determinant * (1 + s2 * precision));
    }
    return sum;
  }

  @Property(tries = 300)
  void isAMultivariateNormalThatSharesItsFirstReading(
      @ForAll @DoubleRange(min = -0.15, max = 0.05) double first,
      @ForAll @DoubleRange(min = -0.15, max = 0.05) double second,
      @ForAll @DoubleRange(min = 40, max = 800) double life) {
    List<Reading> readings =
        List.of(
            new Reading(first, 60, 0.027),
            new Reading(second, 150, 0.031),
            new Reading(0.5 * (first + second), 220, 0.035));
    double ratio =
        GlossEvidence.likelihood(readings, 0.026, life)
            / GlossEvidence.likelihood(readings, 0.026, 200);
    double expected = closedForm(readings, 0.026, life) / closedForm(readings, 0.026, 200);
    assertThat(ratio / expected).isCloseTo(1, within(2e-3));
  }

  @Test
  void trustsMoreReadingsMore() {
    assertThat(GlossEvidence.sd(80, 1, 0)).isEqualTo(0.035);
    assertThat(GlossEvidence.sd(80, 4, 2))
        .isCloseTo(Math.hypot(0.025, 2 / 2.0 / 80), within(1e-12));
  }

  @Test
  void saysNoMoreOnceHalfAsMuchAgainAsALifeIsOver() {
    List<Reading> readings = List.of(new Reading(-0.2, 300, 0.03));
    assertThat(GlossEvidence.likelihood(readings, 0.03, 150))
        .isEqualTo(GlossEvidence.likelihood(readings, 0.03, 100));
    assertThat(GlossEvidence.likelihood(readings, 0.03, 250))
        .isNotEqualTo(GlossEvidence.likelihood(readings, 0.03, 150));
  }

  @Test
  void doesNotLetOneWildReadingDecide() {
    List<Reading> good = List.of(new Reading(-0.02, 100, 0.03), new Reading(-0.03, 200, 0.03));
    List<Reading> oneWild = List.of(new Reading(-0.02, 100, 0.03), new Reading(-0.60, 200, 0.03));
    double forLongLife =
        GlossEvidence.likelihood(oneWild, 0.03, 600) / GlossEvidence.likelihood(oneWild, 0.03, 130);
    double fromTheGood =
        GlossEvidence.likelihood(good, 0.03, 600) / GlossEvidence.likelihood(good, 0.03, 130);
    assertThat(fromTheGood).isGreaterThan(1);
    assertThat(forLongLife).isGreaterThan(0.2);
  }
}
