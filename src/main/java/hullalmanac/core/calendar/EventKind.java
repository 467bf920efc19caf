package hullalmanac.core.calendar;

import hullalmanac.core.record.Coded;

/** What an event of the calendar is. */
public enum EventKind implements Coded {
  VISIT("visit"),
  REMINDER("reminder"),
  CURE("cure"),
  LAY_UP("lay-up");

  private final String code;

  EventKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
