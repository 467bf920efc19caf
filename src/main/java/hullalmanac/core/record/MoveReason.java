package hullalmanac.core.record;

/** Why a visit was moved or cancelled. */
public enum MoveReason implements Coded {
  WEATHER("weather"),
  OWNER("owner"),
  YARD("yard"),
  NO_SHOW("no-show"),
  SELF("self");

  private final String code;

  MoveReason(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
