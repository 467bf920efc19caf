package hullalmanac.core.record;

import java.util.EnumSet;
import java.util.Set;

/** How much of a boat a price is for. */
public enum Extent implements Coded {
  HULL("hull"),
  DECK("deck"),
  WHOLE_BOAT("whole-boat");

  private static final Set<SurfaceKind> OF_HULL =
      EnumSet.of(
          SurfaceKind.TOPSIDES,
          SurfaceKind.WATERLINE,
          SurfaceKind.STRIPE,
          SurfaceKind.TRANSOM,
          SurfaceKind.FENDER_PATCHES,
          SurfaceKind.BOTTOM);

  private final String code;

  Extent(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** Where a kind of surface is: on the hull, or on what is above it. */
  public static Extent of(SurfaceKind kind) {
    return OF_HULL.contains(kind) ? HULL : DECK;
  }

  /** The parts it is made of. */
  public Set<Extent> parts() {
    return this == WHOLE_BOAT ? EnumSet.of(HULL, DECK) : EnumSet.of(this);
  }
}
