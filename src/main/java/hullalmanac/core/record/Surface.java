package hullalmanac.core.record;

import java.util.Optional;

/**
 * A part of a boat that is treated and ages as one.
 *
 * @param name the person's own words for it; empty to go by kind and side
 * @param madeYear when the finish was made or last redone; absent: with the boat
 * @param soot whether engine soot reaches it (a transom)
 * @param intervalMonths for finishes that are not forecast from weather: months until it is due
 *     again; absent: practice
 */
public record Surface(
    Id<Surface> id,
    String key,
    Id<Boat> boat,
    SurfaceKind kind,
    Side side,
    String name,
    Finish finish,
    Tone tone,
    Attitude attitude,
    Optional<Integer> madeYear,
    Past past,
    boolean soot,
    Optional<Double> intervalMonths,
    String note)
    implements Row {
  public Surface {
    Texts.key(key);
    intervalMonths.ifPresent(
        m -> {
          if (!(m > 0 && m <= 600)) {
            throw new IllegalArgumentException(
                "an interval is over 0 and at most 600 months, not " + m);
          }
        });
  }

  /** What people call it: its own name, or its kind and side, such as "topsides, port". */
  public String words() {
    if (!name.isBlank()) {
      return name;
    }
    return side == Side.BOTH ? kind.words() : kind.words() + ", " + side.words();
  }
}
