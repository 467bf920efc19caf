package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * An observation of a surface on a day.
 *
 * @param state the state the surface was in when it was looked at
 * @param entered how it came into the record
 */
public record Finding(
    Id<Finding> id,
    String key,
    Id<Surface> surface,
    Optional<Id<Visit>> visit,
    LocalDate day,
    SurfaceState state,
    Entered entered,
    Observation seen,
    String note)
    implements Row {
  public Finding {
    Texts.key(key);
  }
}
