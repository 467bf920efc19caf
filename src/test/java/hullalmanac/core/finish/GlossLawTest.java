package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Tone;
import hullalmanac.reference.Reference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GlossLawTest {
  /** So sharp that it is as good as known. */
  private static final double KNOWN = 1e-6;

  private static Pair pair(double before, double beforeSd, double after, double afterSd) {
    return new Pair(
        new Pair.Reading(before, beforeSd),
        new Pair.Reading(after, afterSd),
        1,
        Double.POSITIVE_INFINITY,
        1);
  }

  static Stream<List<String>> rows() {
    return Reference.read(GlossLawTest.class, "gloss-law.txt").stream();
  }

  private static List<Pair> pairs(String text) {
    return Arrays.stream(text.split("\\|"))
        .map(p -> Arrays.stream(p.split(",")).mapToDouble(Double::parseDouble).toArray())
        .map(
            p ->
                new Pair(
                    new Pair.Reading(p[0], p[1]),
                    new Pair.Reading(p[2], p[3]),
                    (int) p[4],
                    p[5],
                    p[6]))
        .toList();
  }

  /**
   * Where q is as good as nothing a reading after is a reading of C itself, and the law is the
   * Normal mean with known variance.
   */
  @Test
  void learnsACeilingAsTheTextbookLearnsAMean() {
    List<Double> row =
        Reference.read(GlossLawTest.class, "bayes-by-hand.txt").rows().get(0).stream()
            .map(Double::valueOf)
            .toList();
    GlossLaw prior = new GlossLaw(6, -40, Spread.independent(0.4, KNOWN));
    List<Pair> pairs = Stream.of(6.3, 6.1, 6.5).map(y -> pair(2, KNOWN, y, 0.3)).toList();
    GlossLaw after = prior.taught(pairs, Spread.independent(0, 0));
    assertThat(after.ceiling()).isCloseTo(row.get(0), within(1e-10));
    assertThat(Math.sqrt(after.spread().ceiling())).isCloseTo(row.get(1), within(1e-10));
  }

  /** Against sums over a grid made apart from the program. */
  @ParameterizedTest
  @MethodSource("rows")
  void learnsWhatExactSumsSay(List<String> row) {
    double[] n = row.subList(1, 7).stream().mapToDouble(Double::parseDouble).toArray();
    GlossLaw prior = new GlossLaw(n[0], Math.log(n[1]), Spread.independent(n[2], n[3]));
    GlossLaw law = prior.taught(pairs(row.get(7)), Spread.independent(n[4], n[5]));
    double[] exact = row.subList(8, 13).stream().mapToDouble(Double::parseDouble).toArray();
    double sdC = Math.sqrt(law.spread().ceiling());
    double sdX = Math.sqrt(law.spread().lnQ());
    assertThat(law.ceiling()).isCloseTo(exact[0], within(2e-4));
    assertThat(law.lnQ()).isCloseTo(exact[1], within(2e-4));
    assertThat(sdC).isCloseTo(exact[2], within(2e-4));
    assertThat(sdX).isCloseTo(exact[3], within(2e-4));
    assertThat(law.spread().both() / (sdC * sdX)).isCloseTo(exact[4], within(2e-4));
  }

  @Test
  void doesNotMindTheOrderOfItsPairs() {
    Random random = new Random(4);
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double before = 50 + 35 * random.nextDouble();
      pairs.add(pair(before, 2, 88 - 0.5 * (88 - before) + 2 * random.nextGaussian(), 2));
    }
    GlossLaw prior = GlossLaw.starter(FinishPractice.STANDARD, Stage.FINISHING, Tone.LIGHT);
    GlossLaw once = prior.taught(pairs, FinishPractice.BETWEEN_SURFACES);
    Collections.shuffle(pairs, random);
    GlossLaw again = prior.taught(pairs, FinishPractice.BETWEEN_SURFACES);
    assertThat(again.ceiling()).isCloseTo(once.ceiling(), within(1e-6));
    assertThat(again.lnQ()).isCloseTo(once.lnQ(), within(1e-7));
  }

  /** Data made by a law: with many boats the law is found, whatever the starter value. */
  @Test
  void findsTheLawThatManyBoatsFollow() {
    Random random = new Random(11);
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      double before = 40 + 45 * random.nextDouble();
      double c = 86 + 2 * random.nextGaussian();
      double q = 0.42 * Math.exp(0.25 * random.nextGaussian());
      double after = c - q * (c - before) + 1.5 * random.nextGaussian();
      pairs.add(pair(before, 0.5, after, 1.5));
    }
    GlossLaw law =
        GlossLaw.starter(FinishPractice.STANDARD, Stage.FINISHING, Tone.LIGHT)
            .taught(pairs, FinishPractice.BETWEEN_SURFACES);
    assertThat(law.ceiling()).isCloseTo(86, within(0.6));
    assertThat(Math.exp(law.lnQ())).isCloseTo(0.42, within(0.03));
    assertThat(Math.sqrt(law.spread().ceiling())).isLessThan(0.6);
  }

  @Test
  void anOldHullSaysNothingOfTheCeilingOfAYoungOne() {
    GlossLaw prior = GlossLaw.starter(FinishPractice.STANDARD, Stage.FINISHING, Tone.LIGHT);
    Pair old = new Pair(new Pair.Reading(70, 2), new Pair.Reading(75, 2), 1, 83, 1);
    GlossLaw law = prior.taught(List.of(old), FinishPractice.BETWEEN_SURFACES);
    assertThat(law.ceiling()).isCloseTo(90, within(1e-3));
    assertThat(law.lnQ()).isGreaterThan(prior.lnQ());
  }

  @Property(tries = 200)
  void staysALawWhateverItIsTaught(
      @ForAll @DoubleRange(min = 20, max = 89) double before,
      @ForAll @DoubleRange(min = 40, max = 95) double after) {
    GlossLaw prior = GlossLaw.starter(FinishPractice.STANDARD, Stage.MEDIUM, Tone.LIGHT);
    GlossLaw law =
        prior.taught(List.of(pair(before, 2, after, 2)), FinishPractice.BETWEEN_SURFACES);
    assertThat(law.spread().ceiling()).isPositive();
    assertThat(law.spread().lnQ()).isPositive();
    assertThat(law.spread().ceiling() * law.spread().lnQ())
        .isGreaterThan(law.spread().both() * law.spread().both());
  }
}
