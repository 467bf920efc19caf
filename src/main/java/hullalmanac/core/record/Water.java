package hullalmanac.core.record;

/** What a boat lies in. */
public enum Water implements Coded {
  SALT("salt"),
  BRACKISH("brackish"),
  FRESH("fresh"),
  ASHORE("ashore");

  private final String code;

  Water(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
