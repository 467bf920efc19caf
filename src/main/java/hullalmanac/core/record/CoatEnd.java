package hullalmanac.core.record;

/** How a coat's service ended. */
public enum CoatEnd implements Coded {
  RENEWED("renewed"),
  STRIPPED("stripped");

  private final String code;

  CoatEnd(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
