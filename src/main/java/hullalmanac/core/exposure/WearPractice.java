package hullalmanac.core.exposure;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.CoatClass;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.PracticeValue;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.WashStrength;
import hullalmanac.core.record.Water;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/**
 * How much faster or slower things wear: factors on the wear of an average day, except where said.
 * Every number is common practice, no source; most may be set in {@link Practice}.
 *
 * @param sunShare share of wear that is the sun's, 0 to 1; the rest is wetness
 * @param leastWear least wear of any day, in reference days: a coat ages by mere time
 * @param meanSky relative sunshine n/N where a harbour's is not known, 0 to 1
 * @param facing what the way an upright surface faces does
 * @param covers share of the sun that a cover lets through
 * @param tones by colour
 * @param uses by use of the boat
 * @param waters wetness by what the boat lies in
 * @param surfaces by part of the boat
 * @param sootyTransom for a transom that engine soot reaches, in place of its entry
 * @param washes what washing takes off a coat
 */
public record WearPractice(
    double sunShare,
    double leastWear,
    double meanSky,
    Facing facing,
    Map<Cover, Shelter> covers,
    Map<Tone, Double> tones,
    Map<Use, Double> uses,
    Map<Water, Double> waters,
    Map<SurfaceKind, Double> surfaces,
    double sootyTransom,
    Map<CoatClass, WashWear> washes) {
  /**
   * 0.55 × mean of Ra(30°) over the days 1 to 365, MJ m⁻² a day (FAO-56 Eq 21 and 35 with n/N =
   * 0.6): the unit of the clock, not a practice value.
   */
  static final double REFERENCE_SUN = 17.31248;

  /** Wear by washing that ends any coat: the longest life the forecast knows. */
  public static final double ENDS_IT = 30_000;

  public WearPractice {
    share("the sun's share", sunShare);
    factor("the least wear", leastWear);
    share("the mean sky", meanSky);
    covers = complete(Cover.class, covers);
    tones = complete(Tone.class, tones);
    uses = complete(Use.class, uses);
    waters = complete(Water.class, waters);
    surfaces = complete(SurfaceKind.class, surfaces);
    washes = complete(CoatClass.class, washes);
    tones.forEach((key, value) -> factor(key.words(), value));
    uses.forEach((key, value) -> factor(key.words(), value));
    waters.forEach((key, value) -> factor(key.words(), value));
    surfaces.forEach((key, value) -> factor(key.words(), value));
    factor("a sooty transom", sootyTransom);
  }

  /**
   * What the way an upright surface faces does to its sun.
   *
   * @param within how far, in degrees, it may face from the noon sun and still be called sunward;
   *     the same away from it, shaded
   */
  public record Facing(double within, double sunward, double shaded) {
    public Facing {
      if (!(within >= 0 && within <= 90)) {
        throw new IllegalArgumentException("a side faces within 0 to 90 degrees, not " + within);
      }
      factor("a sunward side", sunward);
      factor("a shaded side", shaded);
    }
  }

  /** Share of the sun that reaches upright and lying surfaces under a cover. */
  public record Shelter(double upright, double lying) {
    public Shelter {
      factor("the sun on an upright surface", upright);
      factor("the sun on a lying surface", lying);
    }
  }

  /** What one washing takes off a coat, in reference days. */
  public record WashWear(double mild, double strong, double acidOrAlkali) {
    public WashWear {
      factor("a mild wash", mild);
      factor("a strong wash", strong);
      factor("an acid or alkali", acidOrAlkali);
    }
  }

  /** The starter values. */
  public static WearPractice usual() {
    return of(Practice.STANDARD);
  }

  /** As a business has it. */
  public static WearPractice of(Practice p) {
    return new WearPractice(
        p.of(PracticeValue.SUN_SHARE),
        0.03,
        p.of(PracticeValue.MEAN_SKY),
        new Facing(60, p.of(PracticeValue.SUNWARD), p.of(PracticeValue.SHADED)),
        coversOf(p),
        Map.of(Tone.LIGHT, 1.0, Tone.DARK, p.of(PracticeValue.DARK)),
        Map.of(
            Use.IDLE, p.of(PracticeValue.USE_IDLE),
            Use.WEEKENDS, 1.0,
            Use.WEEKLY, p.of(PracticeValue.USE_WEEKLY),
            Use.CHARTER_OR_FISHING, p.of(PracticeValue.USE_HARD)),
        Map.of(
            Water.SALT, 1.0,
            Water.BRACKISH, p.of(PracticeValue.WET_BRACKISH),
            Water.FRESH, p.of(PracticeValue.WET_FRESH),
            Water.ASHORE, p.of(PracticeValue.WET_ASHORE)),
        surfacesOf(p),
        p.of(PracticeValue.SOOTY_TRANSOM),
        washesOf(p));
  }

  private static Map<Cover, Shelter> coversOf(Practice p) {
    return Map.of(
        Cover.OPEN,
        new Shelter(1, 1),
        Cover.COVERED_SLIP,
        new Shelter(p.of(PracticeValue.SLIP_UPRIGHT), p.of(PracticeValue.SLIP_LYING)),
        Cover.FITTED_COVER,
        new Shelter(p.of(PracticeValue.COVER_UPRIGHT), p.of(PracticeValue.COVER_LYING)),
        Cover.SHRINK_WRAP,
        new Shelter(p.of(PracticeValue.WRAP_UPRIGHT), p.of(PracticeValue.WRAP_LYING)),
        Cover.SHRINK_WRAP_TO_WATERLINE,
        new Shelter(p.of(PracticeValue.LOW_WRAP_UPRIGHT), p.of(PracticeValue.LOW_WRAP_LYING)),
        Cover.SHED,
        new Shelter(p.of(PracticeValue.SHED), p.of(PracticeValue.SHED)));
  }

  private static Map<CoatClass, WashWear> washesOf(Practice p) {
    return Map.of(
        CoatClass.WAX,
        new WashWear(
            p.of(PracticeValue.WASH_WAX_MILD), p.of(PracticeValue.WASH_WAX_STRONG), ENDS_IT),
        CoatClass.SEALANT,
        new WashWear(
            p.of(PracticeValue.WASH_SEALANT_MILD),
            p.of(PracticeValue.WASH_SEALANT_STRONG),
            p.of(PracticeValue.WASH_SEALANT_ACID)),
        CoatClass.SILICA,
        new WashWear(
            p.of(PracticeValue.WASH_SILICA_MILD),
            p.of(PracticeValue.WASH_SILICA_STRONG),
            p.of(PracticeValue.WASH_SILICA_ACID)));
  }

  /** A stripe is taken to wear like topsides, a swim platform like a foredeck. */
  private static Map<SurfaceKind, Double> surfacesOf(Practice p) {
    Map<SurfaceKind, Double> factors = new EnumMap<>(SurfaceKind.class);
    for (SurfaceKind kind : SurfaceKind.values()) {
      factors.put(
          kind,
          switch (kind) {
            case TOPSIDES, STRIPE, METALWORK, TEAK, VARNISH, CLEAR_VINYL, CANVAS, BOTTOM -> 1.0;
            case WATERLINE -> p.of(PracticeValue.WATERLINE);
            case TRANSOM -> p.of(PracticeValue.TRANSOM);
            case CABIN_SIDES -> p.of(PracticeValue.CABIN_SIDES);
            case GUNWALES, COCKPIT -> p.of(PracticeValue.COCKPIT);
            case FOREDECK, COACHROOF, HARDTOP, SWIM_PLATFORM, FENDER_PATCHES ->
                p.of(PracticeValue.DECKS);
            case WINDOWS -> p.of(PracticeValue.WINDOWS);
            case NON_SKID -> p.of(PracticeValue.NON_SKID);
          });
    }
    return factors;
  }

  double cover(Cover cover, Attitude attitude) {
    Shelter shelter = covers.get(cover);
    return attitude == Attitude.UPRIGHT ? shelter.upright() : shelter.lying();
  }

  double tone(Tone tone) {
    return tones.get(tone);
  }

  double use(Use use) {
    return uses.get(use);
  }

  double wetness(Water water) {
    return waters.get(water);
  }

  double surface(Surface surface) {
    boolean sooty = surface.kind() == SurfaceKind.TRANSOM && surface.soot();
    return sooty ? sootyTransom : surfaces.get(surface.kind());
  }

  double wash(CoatClass coat, WashStrength strength) {
    WashWear wear = washes.get(coat);
    return switch (strength) {
      case MILD -> wear.mild();
      case STRONG -> wear.strong();
      case ACID_OR_ALKALI -> wear.acidOrAlkali();
    };
  }

  private static <K extends Enum<K>, V> Map<K, V> complete(Class<K> keys, Map<K, V> values) {
    Map<K, V> copy = new EnumMap<>(keys);
    copy.putAll(values);
    for (K key : Arrays.asList(keys.getEnumConstants())) {
      if (!copy.containsKey(key)) {
        throw new IllegalArgumentException("practice has no value for " + key);
      }
    }
    return java.util.Collections.unmodifiableMap(copy);
  }

  private static void share(String what, double value) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(what + " is 0 to 1, not " + value);
    }
  }

  private static void factor(String what, double value) {
    if (!(value >= 0 && value <= ENDS_IT)) {
      throw new IllegalArgumentException(what + " is 0 to " + ENDS_IT + ", not " + value);
    }
  }
}
