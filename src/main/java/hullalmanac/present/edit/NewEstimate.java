package hullalmanac.present.edit;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.takings.EstimateDraft;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.service.Fleet;

/** The way from a boat to an estimate for her. */
final class NewEstimate {
  private final Desk desk;
  private final Making making;

  NewEstimate(Desk desk) {
    this.desk = desk;
    making = new Making(desk);
  }

  /** Writes an estimate to begin with and opens it. */
  void begin(Fleet fleet, Id<Boat> boat) {
    String name = new Lookups(fleet.almanac(), fleet.asOf()).boat(boat).name();
    making.make(
        name + ": an estimate begun",
        almanac ->
            Change.checked(almanac, EstimateDraft.of(almanac, desk.ids(), boat, fleet.asOf())),
        Estimate.class,
        e -> desk.open(new EstimateSheet(desk, e.id())));
  }
}
