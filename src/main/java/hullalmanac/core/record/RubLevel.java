package hullalmanac.core.record;

/** How much a finger rub brings off. */
public enum RubLevel implements Coded {
  NONE("none"),
  TRACE("trace"),
  CLEAR("clear"),
  HEAVY("heavy");

  private final String code;

  RubLevel(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
