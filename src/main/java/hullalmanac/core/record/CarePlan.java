package hullalmanac.core.record;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;

/**
 * Repeating work on a boat.
 *
 * @param work what is done each time
 * @param everyWeeks 1 to 104
 * @param months in which it runs, in order; never empty
 * @param skips days that were agreed to fall out, in order
 */
public record CarePlan(
    Id<CarePlan> id,
    String key,
    Id<Boat> boat,
    String work,
    int everyWeeks,
    List<Month> months,
    Optional<Money> price,
    LocalDate from,
    Optional<LocalDate> until,
    List<LocalDate> skips)
    implements Row {
  public CarePlan {
    Texts.key(key);
    Texts.require(work, "the work of a care plan");
    Days.inOrder(from, until);
    months = months.stream().sorted().distinct().toList();
    skips = skips.stream().sorted().distinct().toList();
    if (everyWeeks < 1 || everyWeeks > 104) {
      throw new IllegalArgumentException(
          "a care plan runs every 1 to 104 weeks, not " + everyWeeks);
    }
    if (months.isEmpty()) {
      throw new IllegalArgumentException("a care plan needs at least one month");
    }
  }
}
