package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One vessel.
 *
 * @param loa length over all
 * @param freeboard mean height of the topsides above the water
 * @param hullNumber hull identification number as read off the boat; empty when unknown
 * @param built year built
 * @param knownFrom first day on which the business knew the boat: older coats need a known-from day
 *     of their own
 */
public record Boat(
    Id<Boat> id,
    String key,
    String name,
    BoatType type,
    Optional<Length> loa,
    Optional<Length> beam,
    Optional<Length> freeboard,
    String hullNumber,
    Optional<Integer> built,
    Use use,
    BoatStatus status,
    Optional<LocalDate> knownFrom,
    String note)
    implements Row {
  public Boat {
    Texts.key(key);
    Texts.require(name, "the name of a boat");
    built.ifPresent(
        y -> {
          if (y < 1850 || y > 2200) {
            throw new IllegalArgumentException("a boat was not built in the year " + y);
          }
        });
  }
}
