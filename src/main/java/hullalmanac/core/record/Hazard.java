package hullalmanac.core.record;

/** What a product contains or does that a caution hangs on. */
public enum Hazard implements Coded {
  ACID("acid"),
  FLUORIDE("fluoride"),
  HYPOCHLORITE("hypochlorite"),
  AMMONIA("ammonia"),
  SOLVENT("solvent"),
  SILICONE("silicone"),
  ABRASIVE("abrasive"),
  WAX("wax"),
  ISOCYANATE("isocyanate"),
  OILY_RAGS("oily-rags");

  private final String code;

  Hazard(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
