package hullalmanac.core.record;

/** Why a visit took place; a complaint is read differently by the forecast. */
public enum VisitWhy implements Coded {
  PLAN("plan"),
  DUE("due"),
  COMPLAINT("complaint"),
  OTHER("other");

  private final String code;

  VisitWhy(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
