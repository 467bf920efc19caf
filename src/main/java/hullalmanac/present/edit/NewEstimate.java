package hullalmanac.present.edit;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Row;
import hullalmanac.core.takings.EstimateDraft;
import hullalmanac.present.Desk;
import hullalmanac.present.Lookups;
import hullalmanac.service.Fleet;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** The way from a boat to an estimate for her. */
final class NewEstimate {
  private NewEstimate() {}

  /** Writes an estimate to begin with and opens it. */
  static void begin(Desk desk, Fleet fleet, Id<Boat> boat) {
    String name = new Lookups(fleet.almanac(), fleet.asOf()).boat(boat).name();
    AtomicReference<Optional<Row>> made = new AtomicReference<>(Optional.empty());
    desk.edit(
        name + ": an estimate begun",
        almanac -> {
          Edit edit = EstimateDraft.of(almanac, desk.ids(), boat, fleet.asOf());
          made.set(edit.put().stream().findFirst());
          return edit;
        },
        () ->
            made.get()
                .map(Estimate.class::cast)
                .ifPresent(e -> desk.open(new EstimateSheet(desk, e.id()))));
  }
}
