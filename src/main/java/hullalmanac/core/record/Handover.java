package hullalmanac.core.record;

/** How a finished visit was agreed with the owner. */
public enum Handover implements Coded {
  ON_THE_SPOT("on-the-spot"),
  BY_MESSAGE("by-message"),
  NOT_YET("not-yet");

  private final String code;

  Handover(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
