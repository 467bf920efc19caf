package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.reference.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GlossSpreadTest {
  /** What is promised of a chance. */
  private static final double BOUND = 0.002;

  /** A stage's law and its passes. */
  private record Move(GlossLaw law, Passes passes) {}

  static Stream<List<String>> rows() {
    return Reference.read(GlossSpreadTest.class, "chances.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void givesTheChancesThatManyPointsGive(List<String> row) {
    double[] n = row.stream().skip(1).mapToDouble(Double::parseDouble).toArray();
    GlossSpread spread = GlossSpread.of(new Start(n[0], n[1], Start.By.METER));
    int at = 3;
    for (int stage = 0; stage < n[2]; stage++) {
      spread = spread.after(law(n, at), new Passes((int) n[at + 5], (int) n[at + 6]));
      at += 7;
    }
    assertThat((n.length - at) / 2).isEqualTo(3);
    for (; at < n.length; at += 2) {
      assertThat(spread.atLeast(n[at])).isCloseTo(n[at + 1], within(BOUND));
      assertThat(spread.quantile(1 - spread.atLeast(n[at]))).isCloseTo(n[at], within(1e-9));
    }
  }

  private static GlossLaw law(double[] n, int at) {
    double both = n[at + 4] * n[at + 1] * n[at + 3];
    return new GlossLaw(
        n[at], n[at + 2], new Spread(n[at + 1] * n[at + 1], n[at + 3] * n[at + 3], both));
  }

  /**
   * Forty plans at random against 100,000 draws each: within four standard errors and the bound.
   */
  @Test
  void agreesWithDraws() {
    Random random = new Random(20_261_126);
    for (int plan = 0; plan < 40; plan++) {
      Start start =
          new Start(25 + 60 * random.nextDouble(), 0.5 + 5 * random.nextDouble(), Start.By.METER);
      List<Move> moves = moves(random);
      GlossSpread spread = GlossSpread.of(start);
      for (Move m : moves) {
        spread = spread.after(m.law(), m.passes());
      }
      double gloss = spread.quantile(0.1 + 0.8 * random.nextDouble());
      double chance = spread.atLeast(gloss);
      int draws = 100_000;
      double drawn = drawn(random, start, moves, gloss, draws);
      double standardError = Math.sqrt(chance * (1 - chance) / draws);
      assertThat(drawn).isCloseTo(chance, within(4 * standardError + BOUND));
    }
  }

  private static List<Move> moves(Random random) {
    List<Move> moves = new ArrayList<>();
    int stages = 1 + random.nextInt(4);
    for (int i = 0; i < stages; i++) {
      double sdC = 0.5 + 2.5 * random.nextDouble();
      double sdX = 0.05 + 0.3 * random.nextDouble();
      double both = (random.nextDouble() - 0.5) * sdC * sdX;
      moves.add(
          new Move(
              new GlossLaw(
                  74 + 17 * random.nextDouble(),
                  Math.log(0.1 + 0.45 * random.nextDouble()),
                  new Spread(sdC * sdC, sdX * sdX, both)),
              new Passes(random.nextInt(2), 1 + random.nextInt(2))));
    }
    return moves;
  }

  /** Written apart: C and ln q drawn by their joint law, pass after pass. */
  private static double drawn(Random random, Start start, List<Move> moves, double gloss, int n) {
    int reached = 0;
    for (int i = 0; i < n; i++) {
      double g = start.gloss() + start.sd() * random.nextGaussian();
      for (Move m : moves) {
        Spread s = m.law().spread();
        double z = random.nextGaussian();
        double c = m.law().ceiling() + Math.sqrt(s.ceiling()) * z;
        double slope = s.both() / Math.sqrt(s.ceiling());
        double x =
            m.law().lnQ() + slope * z + Math.sqrt(s.lnQ() - slope * slope) * random.nextGaussian();
        double closes = 1 - Math.exp(x);
        for (int k = 0; k < m.passes().first(); k++) {
          closes /= 2;
        }
        for (int k = 0; k < m.passes().passes(); k++) {
          g += closes * (c - g);
          closes /= 2;
        }
      }
      reached += g >= gloss ? 1 : 0;
    }
    return (double) reached / n;
  }

  @Property(tries = 200)
  void aDullerStartNeverHasABetterChance(
      @ForAll @DoubleRange(min = 10, max = 89) double start,
      @ForAll @DoubleRange(min = 0, max = 10) double less,
      @ForAll @DoubleRange(min = 60, max = 90) double gloss,
      @ForAll long seed) {
    List<Move> moves = moves(new Random(seed));
    assertThat(after(start - less, moves).atLeast(gloss))
        .isLessThanOrEqualTo(after(start, moves).atLeast(gloss) + 1e-12);
  }

  private static GlossSpread after(double start, List<Move> moves) {
    GlossSpread spread = GlossSpread.of(new Start(start, 1.5, Start.By.METER));
    for (Move m : moves) {
      spread = spread.after(m.law(), m.passes());
    }
    return spread;
  }
}
