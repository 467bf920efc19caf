package hullalmanac.present.ahead;

import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.takings.OpenItems;
import hullalmanac.present.ahead.AheadState.Aside;
import hullalmanac.present.ahead.AheadState.Line;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What of the money stands beside Ahead: estimates without an answer, and what is outstanding. */
final class MoneyAsides {
  private static final int MOST_ESTIMATES = 4;

  private MoneyAsides() {}

  static List<Aside> of(Fleet fleet, Lookups lookups) {
    List<Aside> asides = new ArrayList<>();
    List<Line> estimates = estimates(fleet, lookups);
    if (!estimates.isEmpty()) {
      asides.add(new Aside("No answer yet", estimates));
    }
    OpenItems open = fleet.open();
    if (open.owed().isPositive()) {
      asides.add(new Aside("Outstanding", List.of(outstanding(open))));
    }
    return asides;
  }

  /** What can still be answered first; what ran out was not answered either. */
  private static List<Line> estimates(Fleet fleet, Lookups lookups) {
    DateWords words = new DateWords(fleet.asOf());
    return fleet.almanac().books().estimates().stream()
        .filter(e -> e.state() == Estimate.State.OFFERED)
        .sorted(
            Comparator.comparing((Estimate e) -> !e.openOn(fleet.asOf()))
                .thenComparing(Estimate::validUntil)
                .thenComparing(Estimate::key))
        .limit(MOST_ESTIMATES)
        .map(
            e ->
                new Line(
                    lookups.boat(e.boat()).name(),
                    (e.openOn(fleet.asOf()) ? "estimate valid until " : "estimate ran out on ")
                        + words.exact(e.validUntil())))
        .toList();
  }

  private static Line outstanding(OpenItems open) {
    long owing = open.accounts().stream().filter(a -> a.owed().isPositive()).count();
    String late = open.late().isPositive() ? ", " + open.late().words() + " of it late" : "";
    return new Line(owing == 1 ? "from one" : "from " + owing, open.owed().words() + late);
  }
}
