package hullalmanac.core.record;

/** How a finding came into the record; easy answers weigh less. */
public enum Entered implements Coded {
  GRID("grid"),
  TWO_TOUCH("two-touch"),
  OWNER("owner"),
  IMPORTED("imported");

  private final String code;

  Entered(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
