package hullalmanac.core.exposure;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.CoatClass;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.WashStrength;
import hullalmanac.core.record.Water;

/**
 * How much faster or slower things wear. Every number here is common practice, no source, except
 * the normalisation, which follows from FAO-56.
 */
final class WearPractice {
  /**
   * 0.55 × mean of Ra(30°) over the days 1 to 365, MJ m⁻² a day (FAO-56 Eq 21 and 35 with n/N =
   * 0.6).
   */
  static final double REFERENCE_SUN = 17.31248;

  /** Share of wear that is the sun's; the rest is wetness. */
  static final double SUN_SHARE = 0.85;

  static final double WETNESS_SHARE = 0.15;

  /** Least wear of any day: a coat ages by mere time. */
  static final double LEAST = 0.03;

  /** Relative sunshine where a harbour's is not known. */
  static final double MEAN_SKY = 0.6;

  /** Wear that ends any coat. */
  static final double ENDS_IT = 30_000;

  /**
   * How far, in degrees, a side may face from the noon sun and still be called sunward; the same
   * away from it, shaded.
   */
  static final double FACING = 60;

  static final double SUNWARD = 1.25;
  static final double SHADED = 0.80;

  private WearPractice() {}

  static double cover(Cover cover, Attitude attitude) {
    boolean upright = attitude == Attitude.UPRIGHT;
    return switch (cover) {
      case OPEN -> 1.00;
      case COVERED_SLIP -> upright ? 0.55 : 0.12;
      case FITTED_COVER -> upright ? 0.95 : 0.10;
      case SHRINK_WRAP -> upright ? 0.50 : 0.08;
      case SHRINK_WRAP_TO_WATERLINE -> upright ? 0.10 : 0.08;
      case SHED -> 0.05;
    };
  }

  static double tone(Tone tone) {
    return tone == Tone.DARK ? 1.2 : 1.0;
  }

  static double use(Use use) {
    return switch (use) {
      case IDLE -> 0.9;
      case WEEKENDS -> 1.0;
      case WEEKLY -> 1.15;
      case CHARTER_OR_FISHING -> 1.4;
    };
  }

  static double wetness(Water water) {
    return switch (water) {
      case SALT -> 1.0;
      case BRACKISH -> 0.7;
      case FRESH -> 0.4;
      case ASHORE -> 0.25;
    };
  }

  static double surface(Surface surface) {
    return switch (surface.kind()) {
      case TOPSIDES, STRIPE, METALWORK, TEAK, VARNISH, CLEAR_VINYL, CANVAS, BOTTOM -> 1.0;
      case WATERLINE -> 1.8;
      case TRANSOM -> surface.soot() ? 1.3 : 1.15;
      case CABIN_SIDES -> 1.10;
      case GUNWALES, COCKPIT -> 1.25;
      case FOREDECK, COACHROOF, HARDTOP, SWIM_PLATFORM, FENDER_PATCHES -> 1.50;
      case WINDOWS -> 1.3;
      case NON_SKID -> 2.0;
    };
  }

  static double wash(CoatClass coat, WashStrength strength) {
    return switch (coat) {
      case WAX -> byStrength(strength, 0.7, 15, ENDS_IT);
      case SEALANT -> byStrength(strength, 0.5, 5, 25);
      case SILICA -> byStrength(strength, 0.3, 1, 4);
    };
  }

  private static double byStrength(
      WashStrength strength, double mild, double strong, double acidOrAlkali) {
    return switch (strength) {
      case MILD -> mild;
      case STRONG -> strong;
      case ACID_OR_ALKALI -> acidOrAlkali;
    };
  }
}
