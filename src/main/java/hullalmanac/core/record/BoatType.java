package hullalmanac.core.record;

/** Kind of boat. */
public enum BoatType implements Coded {
  SLOOP("sloop"),
  KETCH("ketch"),
  CATAMARAN("catamaran"),
  MOTOR_CRUISER("motor-cruiser"),
  EXPRESS_CRUISER("express-cruiser"),
  CENTRE_CONSOLE("centre-console"),
  TRAWLER("trawler"),
  DAY_BOAT("day-boat"),
  RIB("rib"),
  OTHER("other");

  private final String code;

  BoatType(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
