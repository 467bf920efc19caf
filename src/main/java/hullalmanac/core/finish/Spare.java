package hullalmanac.core.finish;

import hullalmanac.core.record.Coded;

/** What people hear of a budget, beside its microns. */
public enum Spare implements Coded {
  PLENTY("plenty"),
  CAREFUL("careful"),
  NONE("none-to-spare");

  /** From so many tenths of a micron on there is plenty (common practice, no source). */
  private static final int PLENTY_FROM = 500;

  private final String code;

  Spare(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** What so many tenths of a micron are: none when not even a finishing polish fits. */
  static Spare of(int tenths) {
    if (tenths >= PLENTY_FROM) {
      return PLENTY;
    }
    return tenths >= Stage.FINISHING.tenths(Film.GELCOAT) ? CAREFUL : NONE;
  }
}
