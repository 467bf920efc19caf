package hullalmanac.study.generator;

import hullalmanac.core.record.Id;

/** Hands out ids that count up, in the order of asking. */
final class Counter {
  private long last;

  <T> Id<T> next() {
    last++;
    return new Id<>(last);
  }

  /** The person's own id that goes with the last number handed out. */
  String key() {
    return "row-" + last;
  }
}
