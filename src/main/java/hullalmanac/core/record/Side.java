package hullalmanac.core.record;

/** Which side of the boat a surface is on. */
public enum Side implements Coded {
  PORT("port"),
  STARBOARD("starboard"),
  BOTH("both");

  private final String code;

  Side(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
