package hullalmanac.core.record;

/** How far a visit has got. */
public enum VisitStatus implements Coded {
  PLANNED("planned"),
  DONE("done"),
  CANCELLED("cancelled");

  private final String code;

  VisitStatus(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
