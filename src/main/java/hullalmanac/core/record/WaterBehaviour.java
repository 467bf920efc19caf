package hullalmanac.core.record;

/** What water does on a surface. */
public enum WaterBehaviour implements Coded {
  BEADS("beads"),
  SHEETS("sheets"),
  FLAT("flat");

  private final String code;

  WaterBehaviour(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
