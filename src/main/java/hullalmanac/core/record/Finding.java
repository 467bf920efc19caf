package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * An observation of a surface on a day.
 *
 * @param state the state the surface was in when it was looked at
 * @param moment whether it was seen before or after the correcting work of its visit; absent when
 *     that was not said
 * @param entered how it came into the record
 */
public record Finding(
    Id<Finding> id,
    String key,
    Id<Surface> surface,
    Optional<Id<Visit>> visit,
    LocalDate day,
    Optional<Moment> moment,
    SurfaceState state,
    Entered entered,
    Observation seen,
    String note)
    implements Row {
  public Finding {
    Texts.key(key);
    if (moment.isPresent() && moment.get() != Moment.BEFORE && moment.get() != Moment.AFTER) {
      throw new IllegalArgumentException(
          "a finding is of before or after the work, not of \"" + moment.get().words() + "\"");
    }
  }

  /** A finding of which was not said whether it is of before or after the work. */
  public Finding(
      Id<Finding> id,
      String key,
      Id<Surface> surface,
      Optional<Id<Visit>> visit,
      LocalDate day,
      SurfaceState state,
      Entered entered,
      Observation seen,
      String note) {
    this(id, key, surface, visit, day, Optional.empty(), state, entered, seen, note);
  }
}
