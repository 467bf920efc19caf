package hullalmanac.core.record;

/** How deep scratches go, by touch. */
public enum ScratchDepth implements Coded {
  NONE("none"),
  NOT_FELT("not-felt"),
  JUST_FELT("just-felt"),
  FELT("felt-by-a-nail"),
  THROUGH("through");

  private final String code;

  ScratchDepth(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
