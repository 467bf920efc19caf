package hullalmanac.core.finish;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The gloss before the work and after each stage of a plan, ready to be drawn.
 *
 * @param points the start first
 * @param agreed the gloss to be reached
 */
public record GlossPath(List<Point> points, double agreed) {
  public GlossPath {
    points = List.copyOf(points);
  }

  /**
   * A place on the way.
   *
   * @param name of the stage in one word, "before" for the start
   * @param low 1 in 10 lies lower; absent, as are the others, on a surface that is matt from paper
   */
  public record Point(
      String name, OptionalDouble low, OptionalDouble middle, OptionalDouble high) {}

  /** A place whose gloss is known so well. */
  static Point point(String name, GlossSpread spread) {
    return new Point(
        name,
        OptionalDouble.of(spread.quantile(0.1)),
        OptionalDouble.of(spread.quantile(0.5)),
        OptionalDouble.of(spread.quantile(0.9)));
  }

  /** A place without gloss to speak of. */
  static Point matt(String name) {
    return new Point(name, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }
}
