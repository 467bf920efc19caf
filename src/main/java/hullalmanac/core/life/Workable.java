package hullalmanac.core.life;

import hullalmanac.core.exposure.Stay;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import java.util.List;

/**
 * On which days a surface can be worked on where its boat lies: not under shrink-wrap, and what is
 * at or below the waterline only ashore (common practice, no source).
 */
final class Workable {
  private Workable() {}

  /**
   * The last workable day from {@code earliest} up to {@code latest}; {@code latest} itself when
   * there is none.
   */
  static LocalDate lastUpTo(
      Surface surface, List<Stay> stays, LocalDate earliest, LocalDate latest) {
    for (int i = stays.size() - 1; i >= 0; i--) {
      Stay stay = stays.get(i);
      if (stay.from().isAfter(latest)
          || !stay.until().isAfter(earliest)
          || !allows(surface, stay)) {
        continue;
      }
      LocalDate last = stay.until().minusDays(1);
      return last.isAfter(latest) ? latest : last;
    }
    return latest;
  }

  private static boolean allows(Surface surface, Stay stay) {
    Cover cover = stay.berth().cover();
    if (cover == Cover.SHRINK_WRAP || cover == Cover.SHRINK_WRAP_TO_WATERLINE) {
      return false;
    }
    boolean low = surface.kind() == SurfaceKind.WATERLINE || surface.kind() == SurfaceKind.BOTTOM;
    return !low || stay.berth().water() == Water.ASHORE;
  }
}
