package hullalmanac.core.record;

/** Whether a surface's past (how often it was cut) is known. */
public enum Past implements Coded {
  KNOWN("known"),
  UNKNOWN("unknown");

  private final String code;

  Past(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
