package hullalmanac.core.record;

/** What lies over a boat at a berth. */
public enum Cover implements Coded {
  OPEN("open"),
  COVERED_SLIP("covered-slip"),
  FITTED_COVER("fitted-cover"),
  SHRINK_WRAP("shrink-wrap"),
  SHRINK_WRAP_TO_WATERLINE("shrink-wrap-to-waterline"),
  SHED("shed-or-rack");

  private final String code;

  Cover(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String words() {
    return Coded.super.words().replace("shrink wrap", "shrink-wrap");
  }
}
