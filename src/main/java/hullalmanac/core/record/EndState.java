package hullalmanac.core.record;

/** What was seen of a coat just before it was taken off or renewed. */
public enum EndState implements Coded {
  BEADS("beads"),
  SHEETS("sheets"),
  FLAT("flat"),
  NOT_LOOKED("not-looked");

  private final String code;

  EndState(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
