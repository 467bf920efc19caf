package hullalmanac.core.reckon;

import hullalmanac.core.record.Coded;

/**
 * Areas of a hull from its main dimensions, in m² where these are in m. Rules of thumb of marine
 * painters: common practice, no standard source; for an estimate and no more.
 *
 * <pre>
 *   topsides = 2 F (LOA + B)      deck = 0.75 LOA · B      bottom = k LWL (B + D)
 * </pre>
 */
public final class HullArea {
  /** How it is reckoned. */
  public static final Formula FORMULA =
      new Formula(
          "Topsides = 2 · F · (LOA + B); deck = 0.75 · LOA · B; bottom = k · LWL · (B + D), with the"
              + " length over all LOA, beam B, freeboard F, waterline LWL, draught D.",
          "Rules of thumb of marine painters: common practice, no standard source. Guides disagree on k."
              + " Take girths at stations where it must be right.");

  private HullArea() {}

  /** Shape of a hull under water, with the share of the enclosing sheet that it has. */
  public enum Form implements Coded {
    FIN_KEEL("fin-keel", 0.50),
    LONG_KEEL("long-keel", 0.75),
    MOTOR_BOAT("motor-boat", 0.85),
    FULL("full-bodied", 1.00);

    private final String code;
    private final double share;

    Form(String code, double share) {
      this.code = code;
      this.share = share;
    }

    @Override
    public String code() {
      return code;
    }

    /** The share k (common practice, no source). */
    public double share() {
      return share;
    }
  }

  /**
   * Both sides of the topsides.
   *
   * @param freeboard mean height above water
   */
  public static double topsides(double lengthOverAll, double beam, double freeboard) {
    return 2 * freeboard * (lengthOverAll + beam);
  }

  /** The deck, with what stands on it. */
  public static double deck(double lengthOverAll, double beam) {
    return 0.75 * lengthOverAll * beam;
  }

  /**
   * The hull under water.
   *
   * @param share see {@link Form#share}
   */
  public static double bottom(double waterline, double beam, double draught, double share) {
    return share * waterline * (beam + draught);
  }
}
