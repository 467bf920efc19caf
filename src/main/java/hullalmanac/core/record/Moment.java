package hullalmanac.core.record;

/** When in a visit a photo was taken, or something was seen. */
public enum Moment implements Coded {
  BEFORE("before"),
  AFTER("after"),
  DAMAGE("damage"),
  OTHER("other");

  private final String code;

  Moment(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
