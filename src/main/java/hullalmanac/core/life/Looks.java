package hullalmanac.core.life;

import hullalmanac.core.record.Finding;
import hullalmanac.core.record.SurfaceState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Joins findings that are one look. */
final class Looks {
  private static final Comparator<Finding> CLEANEST_THEN_LATEST =
      Comparator.comparing((Finding f) -> cleanliness(f.state()))
          .thenComparing(Finding::day)
          .thenComparing(Finding::id);

  private Looks() {}

  /**
   * Findings of one kind within 10 days of the first of them are one finding: the cleanest state,
   * then the latest.
   *
   * @param findings of one kind
   * @param joined receives those that another one stands for
   * @return in order of the day
   */
  static List<Finding> joined(List<Finding> findings, List<Finding> joined) {
    List<Finding> inOrder = new ArrayList<>(findings);
    inOrder.sort(Comparator.comparing(Finding::day).thenComparing(Finding::id));
    List<Finding> looks = new ArrayList<>();
    for (int i = 0; i < inOrder.size(); ) {
      LocalDate last = inOrder.get(i).day().plusDays(LifePractice.ONE_LOOK_DAYS);
      List<Finding> group = new ArrayList<>();
      while (i < inOrder.size() && !inOrder.get(i).day().isAfter(last)) {
        group.add(inOrder.get(i++));
      }
      Finding best = group.stream().max(CLEANEST_THEN_LATEST).orElseThrow();
      looks.add(best);
      group.stream().filter(f -> !f.equals(best)).forEach(joined::add);
    }
    looks.sort(Comparator.comparing(Finding::day).thenComparing(Finding::id));
    return looks;
  }

  private static int cleanliness(SurfaceState state) {
    return switch (state) {
      case DIRTY -> 0;
      case WAXY_SOAP -> 1;
      case WASHED -> 2;
      case DECONTAMINATED -> 3;
    };
  }
}
