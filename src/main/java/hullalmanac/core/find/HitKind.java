package hullalmanac.core.find;

import hullalmanac.core.record.Coded;

/** What was found; of things with one name, the earlier here come first. */
public enum HitKind implements Coded {
  BOAT("boat"),
  OWNER("owner"),
  PERSON("person"),
  FIRM("firm"),
  HARBOUR("harbour"),
  HULL_NUMBER("hull-number"),
  PRODUCT("product"),
  BATCH("batch"),
  COAT("coat"),
  VISIT("visit"),
  FINDING("finding"),
  PHOTO("photo"),
  INVOICE("invoice"),
  ESTIMATE("estimate");

  private final String code;

  HitKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
