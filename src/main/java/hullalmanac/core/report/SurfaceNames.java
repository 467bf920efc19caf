package hullalmanac.core.report;

import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Names of surfaces in a list, both sides as one where both are in it. */
public final class SurfaceNames {
  /** Kinds in their order, port before starboard. */
  public static final Comparator<Surface> ORDER =
      Comparator.comparing(Surface::kind)
          .thenComparing(Surface::side)
          .thenComparing(Surface::words)
          .thenComparing(Surface::id);

  private SurfaceNames() {}

  /** "topsides, transom, gunwales (port)". */
  public static String of(Collection<Surface> surfaces) {
    List<Surface> all = surfaces.stream().sorted(ORDER).toList();
    return all.stream().map(s -> name(s, all)).distinct().collect(Collectors.joining(", "));
  }

  private static String name(Surface surface, List<Surface> all) {
    if (!surface.name().isBlank()) {
      return surface.name();
    }
    if (surface.side() == Side.BOTH || sides(all, surface.kind()).size() == 2) {
      return surface.kind().words();
    }
    return surface.kind().words() + " (" + surface.side().words() + ")";
  }

  private static Set<Side> sides(List<Surface> all, SurfaceKind kind) {
    return all.stream()
        .filter(s -> s.kind() == kind && s.name().isBlank() && s.side() != Side.BOTH)
        .map(Surface::side)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
