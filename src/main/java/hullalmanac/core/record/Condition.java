package hullalmanac.core.record;

/** In what state a boat is when work on it is priced. */
public enum Condition implements Coded {
  GOOD("good"),
  FAIR("fair"),
  POOR("poor");

  private final String code;

  Condition(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
