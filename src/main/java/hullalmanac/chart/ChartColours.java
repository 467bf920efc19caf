package hullalmanac.chart;

import java.awt.Color;
import java.awt.Font;
import java.util.List;

/**
 * What a chart is drawn with; the window fills it from its theme, paper from constants.
 *
 * @param ground behind everything
 * @param text names and dates
 * @param quiet ticks and small words
 * @param line frames and grid
 * @param accent what is to be read first
 * @param shade ground of lay-ups
 * @param hues one a lane, in turn (Okabe and Ito's palette, which colour-blind people tell apart)
 * @param font of the small words
 */
public record ChartColours(
    Color ground,
    Color text,
    Color quiet,
    Color line,
    Color accent,
    Color shade,
    List<Color> hues,
    Font font) {
  /** Okabe and Ito's palette without yellow, which is too pale for lines on white. */
  public static final List<Color> HUES_ON_WHITE =
      List.of(
          new Color(0x0072B2),
          new Color(0x00785A),
          new Color(0xB04C00),
          new Color(0xA8487F),
          new Color(0x8A6100),
          new Color(0x2273A3));

  public ChartColours {
    hues = List.copyOf(hues);
  }

  /** The hue of a lane. */
  Color hue(int lane) {
    return hues.get(lane % hues.size());
  }
}
