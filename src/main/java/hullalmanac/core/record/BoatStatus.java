package hullalmanac.core.record;

/** Whether a boat is still looked after. */
public enum BoatStatus implements Coded {
  ACTIVE("active"),
  SOLD("sold"),
  RETIRED("retired");

  private final String code;

  BoatStatus(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
