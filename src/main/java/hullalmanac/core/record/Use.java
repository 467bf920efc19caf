package hullalmanac.core.record;

/** How much a boat is used. */
public enum Use implements Coded {
  IDLE("idle"),
  WEEKENDS("weekends"),
  WEEKLY("weekly"),
  CHARTER_OR_FISHING("charter-or-fishing");

  private final String code;

  Use(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
