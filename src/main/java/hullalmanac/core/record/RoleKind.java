package hullalmanac.core.record;

/** What a party does for a boat. */
public enum RoleKind implements Coded {
  OWNS("owns"),
  PAYS("pays"),
  DECIDES("decides"),
  OPENS_UP("opens-up"),
  GETS_REPORT("gets-the-report");

  private final String code;

  RoleKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
