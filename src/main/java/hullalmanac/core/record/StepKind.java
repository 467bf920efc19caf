package hullalmanac.core.record;

/** One kind of operation. */
public enum StepKind implements Coded {
  INSPECT("inspect"),
  WASH("wash"),
  DECONTAMINATE("decontaminate"),
  CUT("cut"),
  POLISH("polish"),
  PROTECT("protect"),
  TOP("top"),
  OTHER("other");

  private final String code;

  StepKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
