package hullalmanac.study.generator;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.CoatClass;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Water;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.random.RandomGenerator;

/**
 * How fast coats wear in one world, in reference days: the values of practice, each off by a factor
 * of its own.
 */
final class Law {
  private static final double SUN_PART = 0.85;
  private static final double WETNESS_PART = 0.15;
  private static final double LEAST_WEAR = 0.03;
  private static final double LOWEST_FACTOR = 0.75;
  private static final double HIGHEST_FACTOR = 1.25;

  private final double sunFactor;
  private final Map<Cover, Double> coverFactors;
  private final Map<SurfaceKind, Double> surfaceFactors;
  private final Map<Use, Double> useFactors;
  private final Map<Water, Double> waterFactors;
  private final Map<Tone, Double> toneFactors;
  private final Map<CoatClass, Double> washFactors;

  private Law(DoubleSupplier factor) {
    sunFactor = factor.getAsDouble();
    coverFactors = each(Cover.class, factor);
    surfaceFactors = each(SurfaceKind.class, factor);
    useFactors = each(Use.class, factor);
    waterFactors = each(Water.class, factor);
    toneFactors = each(Tone.class, factor);
    washFactors = each(CoatClass.class, factor);
  }

  private static <K extends Enum<K>> Map<K, Double> each(Class<K> type, DoubleSupplier factor) {
    Map<K, Double> factors = new EnumMap<>(type);
    for (K key : type.getEnumConstants()) {
      factors.put(key, factor.getAsDouble());
    }
    return factors;
  }

  /** A world in which practice is right about everything. */
  static Law ofPractice() {
    return new Law(() -> 1);
  }

  /** A world in which practice is off, by up to a quarter in each of its values. */
  static Law drawn(RandomGenerator random) {
    return new Law(() -> random.nextDouble(LOWEST_FACTOR, HIGHEST_FACTOR));
  }

  /** What multiplies every day's wear of a surface, wherever it lies. */
  double hardship(Surface surface, Use use) {
    SurfaceKind kind = surface.kind();
    Tone tone = surface.tone();
    return surfaceValue(kind)
        * surfaceFactors.get(kind)
        * toneValue(tone)
        * toneFactors.get(tone)
        * useValue(use)
        * useFactors.get(use);
  }

  /** What the sun's strength counts for under a cover. */
  double sunWeight(Cover cover, Attitude attitude) {
    return SUN_PART * sunFactor * coverValue(cover, attitude) * coverFactors.get(cover);
  }

  /** What wetness adds to a day where a boat lies in such water. */
  double wetness(Water water) {
    return WETNESS_PART * waterValue(water) * waterFactors.get(water);
  }

  /** Wear of one day without washing. */
  static double daily(double hardship, double sun, double wetness) {
    return Math.max(LEAST_WEAR, hardship * (sun + wetness));
  }

  /** Wear of one mild wash. */
  double wash(CoatClass coatClass) {
    double value =
        switch (coatClass) {
          case WAX -> 0.7;
          case SEALANT -> 0.5;
          case SILICA -> 0.3;
        };
    return value * washFactors.get(coatClass);
  }

  private static double coverValue(Cover cover, Attitude attitude) {
    boolean upright = attitude == Attitude.UPRIGHT;
    return switch (cover) {
      case OPEN -> 1.00;
      case COVERED_SLIP -> upright ? 0.55 : 0.12;
      case FITTED_COVER -> upright ? 0.95 : 0.10;
      case SHRINK_WRAP, SHRINK_WRAP_TO_WATERLINE -> upright ? 0.50 : 0.08;
      case SHED -> 0.05;
    };
  }

  private static double surfaceValue(SurfaceKind kind) {
    return switch (kind) {
      case TOPSIDES -> 1.00;
      case TRANSOM -> 1.15;
      case CABIN_SIDES -> 1.10;
      case FOREDECK, COACHROOF -> 1.50;
      default -> throw new IllegalArgumentException("this law says nothing of " + kind);
    };
  }

  private static double useValue(Use use) {
    return switch (use) {
      case IDLE -> 0.9;
      case WEEKENDS -> 1.0;
      case WEEKLY -> 1.15;
      case CHARTER_OR_FISHING -> 1.4;
    };
  }

  private static double waterValue(Water water) {
    return switch (water) {
      case SALT -> 1.0;
      case BRACKISH -> 0.7;
      case FRESH -> 0.4;
      case ASHORE -> 0.25;
    };
  }

  private static double toneValue(Tone tone) {
    return switch (tone) {
      case LIGHT -> 1.0;
      case DARK -> 1.2;
    };
  }
}
