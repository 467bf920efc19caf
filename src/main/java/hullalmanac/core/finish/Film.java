package hullalmanac.core.finish;

import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import java.util.Optional;

/** What a pad would cut into: finishes by what may be taken off them. */
public enum Film {
  GELCOAT,
  /** Acrylic urethane paint, which may be buffed a little. */
  BUFFABLE_URETHANE,
  CLEAR_OVER_METALLIC,
  /** Linear polyurethane, whose gloss is its skin, and wrap. */
  NO_ABRASIVES;

  /** Whether only a few microns may ever come off. */
  boolean thin() {
    return this == BUFFABLE_URETHANE || this == CLEAR_OVER_METALLIC;
  }

  /**
   * The film of a surface; none where nothing is polished by stages: metal, glass, teak, the
   * bottom, non-skid.
   *
   * @param buffable whether urethane paint is known to be an acrylic that its maker lets one buff;
   *     unless somebody knows, no abrasives
   */
  public static Optional<Film> of(Surface surface, boolean buffable) {
    if (surface.kind() == SurfaceKind.BOTTOM || surface.kind() == SurfaceKind.NON_SKID) {
      return Optional.empty();
    }
    Finish finish = surface.finish();
    return switch (finish) {
      case GELCOAT -> Optional.of(GELCOAT);
      case URETHANE_PAINT -> Optional.of(buffable ? BUFFABLE_URETHANE : NO_ABRASIVES);
      case CLEAR_OVER_METALLIC -> Optional.of(CLEAR_OVER_METALLIC);
      case VINYL -> Optional.of(NO_ABRASIVES);
      default -> Optional.empty();
    };
  }
}
