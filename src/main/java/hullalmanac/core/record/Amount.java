package hullalmanac.core.record;

/** How much of something is seen. */
public enum Amount implements Coded {
  NONE("none"),
  LITTLE("little"),
  SOME("some"),
  MUCH("much");

  private final String code;

  Amount(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
