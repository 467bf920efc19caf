package hullalmanac.core.record;

/** The parts of a boat that are treated and age as one, each with the attitude it usually has. */
public enum SurfaceKind implements Coded {
  TOPSIDES("topsides", Attitude.UPRIGHT),
  WATERLINE("waterline-band", Attitude.UPRIGHT),
  STRIPE("stripe-and-lettering", Attitude.UPRIGHT),
  TRANSOM("transom", Attitude.UPRIGHT),
  FENDER_PATCHES("fender-patches", Attitude.UPRIGHT),
  FOREDECK("foredeck", Attitude.LYING),
  COACHROOF("coachroof", Attitude.LYING),
  CABIN_SIDES("cabin-sides", Attitude.UPRIGHT),
  COCKPIT("cockpit", Attitude.LYING),
  HARDTOP("hardtop", Attitude.LYING),
  GUNWALES("gunwales", Attitude.LYING),
  WINDOWS("windows", Attitude.UPRIGHT),
  NON_SKID("non-skid", Attitude.LYING),
  SWIM_PLATFORM("swim-platform", Attitude.LYING),
  METALWORK("metalwork", Attitude.UPRIGHT),
  TEAK("teak", Attitude.LYING),
  VARNISH("varnish", Attitude.UPRIGHT),
  CLEAR_VINYL("clear-vinyl", Attitude.UPRIGHT),
  CANVAS("canvas", Attitude.LYING),
  BOTTOM("bottom", Attitude.LYING);

  private final String code;
  private final Attitude usualAttitude;

  SurfaceKind(String code, Attitude usualAttitude) {
    this.code = code;
    this.usualAttitude = usualAttitude;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String words() {
    return this == NON_SKID ? code : Coded.super.words();
  }

  /** How such a surface stands unless the record says otherwise. */
  public Attitude usualAttitude() {
    return usualAttitude;
  }
}
