package hullalmanac.chart;

import java.awt.BasicStroke;

/** Strokes of the ends of bands: broken, so that no end looks more certain than it is. */
final class Edges {
  /** Of what is nearer to the middle: dashes. */
  static final BasicStroke NEAR = broken(5, 3);

  /** Of what is farther off: dots. */
  static final BasicStroke FAR = broken(2, 4);

  private Edges() {}

  private static BasicStroke broken(float line, float gap) {
    return new BasicStroke(
        1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {line, gap}, 0);
  }
}
