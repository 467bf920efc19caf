package hullalmanac.core.record;

/**
 * Angle at which gloss is measured (ISO 2813, ASTM D523). Values at different angles are never
 * averaged or compared.
 */
public enum Geometry implements Coded {
  DEG_20("20"),
  DEG_60("60"),
  DEG_85("85");

  private final String code;

  Geometry(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String words() {
    return code + "°";
  }
}
