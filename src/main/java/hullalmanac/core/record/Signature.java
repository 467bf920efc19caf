package hullalmanac.core.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A drawn signature.
 *
 * @param strokes in the order in which they were drawn; at least one
 */
public record Signature(List<Stroke> strokes) {
  /** Where a field for signing ends, to the right and below; its corner above left is 0, 0. */
  public static final int WIDTH = 3000;

  public static final int HEIGHT = 1000;

  /** As many points as are kept of one. */
  public static final int MOST_DOTS = 20_000;

  public Signature {
    strokes = List.copyOf(strokes);
    int dots = strokes.stream().mapToInt(s -> s.dots().size()).sum();
    if (dots == 0) {
      throw new IllegalArgumentException("nothing was drawn");
    }
    if (dots > MOST_DOTS) {
      throw new IllegalArgumentException("the signature is too long to be kept");
    }
  }

  /** What was drawn without lifting the pen. */
  public record Stroke(List<Dot> dots) {
    public Stroke {
      dots = List.copyOf(dots);
      if (dots.isEmpty()) {
        throw new IllegalArgumentException("a stroke has at least one point");
      }
    }
  }

  /** A point of the field for signing. */
  public record Dot(int x, int y) {
    public Dot {
      if (x < 0 || x > WIDTH || y < 0 || y > HEIGHT) {
        throw new IllegalArgumentException(
            "a point of a signature lies in its field, not at " + x + ", " + y);
      }
    }
  }

  /** As one text: {@code 10,20 12,21/300,40}, strokes parted by a slash. */
  public String text() {
    return strokes.stream()
        .map(s -> s.dots().stream().map(d -> d.x() + "," + d.y()).collect(Collectors.joining(" ")))
        .collect(Collectors.joining("/"));
  }

  /**
   * Reads such a text.
   *
   * @throws IllegalArgumentException with a sentence for people
   */
  public static Signature parse(String text) {
    if (!text.matches("[0-9]{1,4},[0-9]{1,4}([ /][0-9]{1,4},[0-9]{1,4})*")) {
      throw new IllegalArgumentException("this is not a drawn signature");
    }
    List<Stroke> strokes = new ArrayList<>();
    for (String stroke : text.split("/")) {
      strokes.add(new Stroke(Arrays.stream(stroke.split(" ")).map(Signature::dot).toList()));
    }
    return new Signature(strokes);
  }

  private static Dot dot(String text) {
    int comma = text.indexOf(',');
    return new Dot(
        Integer.parseInt(text.substring(0, comma)), Integer.parseInt(text.substring(comma + 1)));
  }
}
