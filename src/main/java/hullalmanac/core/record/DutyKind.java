package hullalmanac.core.record;

/** What a coat's maker demands. */
public enum DutyKind implements Coded {
  INSPECTION("inspection"),
  TOPPER("topper");

  private final String code;

  DutyKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
