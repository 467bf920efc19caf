package hullalmanac.exchange.pdf;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** Something that is drawn on a page as lines and areas. */
@FunctionalInterface
interface Drawn {
  /**
   * Draws it.
   *
   * @param area in points of 1/72 in
   */
  void draw(Graphics2D g, Rectangle2D area);
}
