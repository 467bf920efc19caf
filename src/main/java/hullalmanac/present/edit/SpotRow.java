package hullalmanac.present.edit;

import hullalmanac.core.finish.Stage;
import hullalmanac.core.finish.TestSpot;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Observation.GlossRead;
import java.util.List;
import java.util.Optional;

/**
 * A test spot as it is being written down; public so that it can be copied with one component
 * changed. It counts once both readings are there.
 */
public record SpotRow(
    Stage stage, int passes, Optional<GlossRead> before, Optional<GlossRead> after) {
  /** One pass that was not read yet. */
  static final SpotRow NEW = new SpotRow(Stage.ONE_STEP, 1, Optional.empty(), Optional.empty());

  public SpotRow {
    GlossRead any =
        before
            .or(() -> after)
            .orElse(new GlossRead(Geometry.DEG_60, List.of(80.0), Optional.empty()));
    spot(stage, passes, before.orElse(any), after.orElse(any));
  }

  private static TestSpot spot(Stage stage, int passes, GlossRead before, GlossRead after) {
    return new TestSpot(stage, passes, before, after);
  }

  /** The test spot, once it is read before and after. */
  Optional<TestSpot> spot() {
    return before.flatMap(b -> after.map(a -> spot(stage, passes, b, a)));
  }
}
