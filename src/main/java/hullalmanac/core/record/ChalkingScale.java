package hullalmanac.core.record;

/**
 * Scales on which chalking is rated. They run in opposite directions and are never mixed or
 * converted.
 */
public enum ChalkingScale implements Coded {
  /** ISO 4628-6: 0 is none, 5 the worst; half steps allowed. */
  ISO_4628_6("iso-4628-6", 0, 5),
  /** ASTM D4214: 10 is none, lower is worse. */
  ASTM_D4214("astm-d4214", 0, 10);

  private final String code;
  private final double lowest;
  private final double highest;

  ChalkingScale(String code, double lowest, double highest) {
    this.code = code;
    this.lowest = lowest;
    this.highest = highest;
  }

  @Override
  public String code() {
    return code;
  }

  /** Whether a rating is on this scale: within its ends and a whole or half step. */
  public boolean allows(double rating) {
    return rating >= lowest && rating <= highest && Math.rint(rating * 2) == rating * 2;
  }
}
