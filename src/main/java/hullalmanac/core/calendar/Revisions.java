package hullalmanac.core.calendar;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Visit;
import java.time.Instant;
import java.util.Map;

/**
 * What the change log says of the rows that a calendar tells of.
 *
 * @param before of rows that are older than the log
 * @param newest time of the newest act of all
 */
public record Revisions(
    Map<Id<Visit>, Revision> visits,
    Map<Id<Berth>, Revision> berths,
    Revision before,
    Instant newest) {
  public Revisions {
    visits = Map.copyOf(visits);
    berths = Map.copyOf(berths);
  }

  /** How often a visit, its surfaces or its steps changed in what is told of them. */
  public Revision of(Visit visit) {
    return visits.getOrDefault(visit.id(), before);
  }

  /** How often a berth changed in what is told of it. */
  public Revision of(Berth berth) {
    return berths.getOrDefault(berth.id(), before);
  }
}
