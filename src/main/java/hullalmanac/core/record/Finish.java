package hullalmanac.core.record;

/** What a surface is made of or finished with. */
public enum Finish implements Coded {
  GELCOAT("gelcoat"),
  URETHANE_PAINT("urethane-paint"),
  CLEAR_OVER_METALLIC("clear-over-metallic"),
  VINYL("vinyl-wrap-or-stripe"),
  BARE_ALUMINIUM("bare-aluminium"),
  METAL("stainless-or-chrome"),
  ACRYLIC("acrylic"),
  CLEAR_VINYL("clear-vinyl"),
  GLASS("glass"),
  TEAK("teak"),
  VARNISH("varnish"),
  CANVAS("canvas"),
  UPHOLSTERY("upholstery"),
  INFLATABLE_TUBE("inflatable-tube");

  private final String code;

  Finish(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
