package hullalmanac.core.work;

import hullalmanac.core.record.Coded;

/** The versions in which contact cards are written (vCard 2.1, RFC 2426, RFC 6350). */
public enum CardVersion implements Coded {
  V2_1("2.1"),
  V3_0("3.0"),
  V4_0("4.0");

  private final String code;

  CardVersion(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
