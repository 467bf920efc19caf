package hullalmanac.study.generator;

import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.WaterBehaviour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/** What somebody sees who looks at a coat. */
final class Eye {
  private static final double TRANSITION = 0.08;
  private static final double STEEPNESS = 0.02;
  private static final double SHEETS = 0.2;
  private static final double GLOSS_LEFT = 0.93;
  private static final double GLOSS_POWER = 1.3;
  private static final double READING_SPREAD = 1.5;
  private static final double VISIT_SPREAD = 1;

  private Eye() {}

  /** What water does on a coat at the end of a day. */
  static WaterBehaviour water(TrueCoat coat, int day, SurfaceState state, RandomGenerator chance) {
    double flat = chanceOfFlat(coat.spent(day), right(state));
    boolean seenFlat = chance.nextDouble() < flat;
    boolean sheets = chance.nextDouble() < SHEETS;
    if (seenFlat) {
      return WaterBehaviour.FLAT;
    }
    return sheets ? WaterBehaviour.SHEETS : WaterBehaviour.BEADS;
  }

  /** Chance that water lies flat, when so much of the life is spent. */
  static double chanceOfFlat(double spent, double right) {
    double past = Math.log(spent);
    if (past <= -TRANSITION) {
      return 1 - right;
    }
    if (past >= TRANSITION) {
      return right;
    }
    return 1 - right + (2 * right - 1) / (1 + Math.exp(-past / STEEPNESS));
  }

  /** How often water tells the truth. */
  private static double right(SurfaceState state) {
    return switch (state) {
      case DECONTAMINATED -> 0.95;
      case WASHED -> 0.88;
      case DIRTY -> 0.70;
      case WAXY_SOAP -> throw new IllegalArgumentException("nobody washes with waxy soap here");
    };
  }

  /** Some readings of one meter on one coat. */
  static Observation.GlossRead gloss(
      TrueCoat coat, int day, double visitError, RandomGenerator chance) {
    double truth =
        coat.nature().gloss() * Math.pow(GLOSS_LEFT, Math.pow(coat.spent(day), GLOSS_POWER));
    int count = chance.nextBoolean() ? 3 : 5;
    List<Double> readings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double read = truth + visitError + chance.nextGaussian(0, READING_SPREAD);
      double shown = Math.round(10 * read) / 10.0;
      readings.add(Math.max(0, Math.min(Observation.GlossRead.HIGHEST_NON_METAL, shown)));
    }
    return new Observation.GlossRead(Geometry.DEG_60, readings, Optional.empty());
  }

  /** What is wrong with all gloss readings of one visit. */
  static double visitError(RandomGenerator chance) {
    return chance.nextGaussian(0, VISIT_SPREAD);
  }
}
