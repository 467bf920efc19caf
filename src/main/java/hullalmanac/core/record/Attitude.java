package hullalmanac.core.record;

/** How a surface stands to the sky. */
public enum Attitude implements Coded {
  UPRIGHT("upright"),
  LYING("lying");

  private final String code;

  Attitude(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
