package hullalmanac.study.generator;

import hullalmanac.core.record.Harbour;

/** A harbour and its sun on every day of a span. */
final class Haven {
  private final Harbour harbour;
  private final double[] strength;

  Haven(Harbour harbour, Span span) {
    this.harbour = harbour;
    this.strength = Sun.strength(harbour, span);
  }

  Harbour harbour() {
    return harbour;
  }

  /** The sun's strength at a place counted from the first day of the span. */
  double strengthAt(int index) {
    return strength[index];
  }
}
