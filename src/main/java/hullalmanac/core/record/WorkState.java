package hullalmanac.core.record;

/** What became of a surface in a visit. */
public enum WorkState implements Coded {
  PLANNED("planned"),
  DONE("done"),
  LEFT("left");

  private final String code;

  WorkState(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
