package hullalmanac.core.record;

/** The state a surface was in when it was looked at. */
public enum SurfaceState implements Coded {
  DIRTY("dirty"),
  WASHED("washed"),
  WAXY_SOAP("after-waxy-soap"),
  DECONTAMINATED("decontaminated");

  private final String code;

  SurfaceState(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
