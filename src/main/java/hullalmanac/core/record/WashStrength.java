package hullalmanac.core.record;

/** How hard a cleaning product is on a coat. */
public enum WashStrength implements Coded {
  MILD("mild"),
  STRONG("strong"),
  ACID_OR_ALKALI("acid-or-alkali");

  private final String code;

  WashStrength(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
