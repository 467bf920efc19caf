package hullalmanac.core.record;

/** A person or a firm. */
public enum PartyKind implements Coded {
  PERSON("person"),
  FIRM("firm");

  private final String code;

  PartyKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
