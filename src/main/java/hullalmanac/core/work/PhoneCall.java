package hullalmanac.core.work;

import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What is known of a boat after its owner rang.
 *
 * @param owner the owner's name
 * @param phone as said; empty when not said
 * @param boat the boat's name
 * @param length over all; absent when not said
 * @param day of the call: the boat is known from then on
 */
public record PhoneCall(
    String owner,
    String phone,
    String boat,
    Optional<Length> length,
    Where harbour,
    BoatType type,
    LocalDate day) {

  /** Where the boat lies. */
  public sealed interface Where {}

  /** In a harbour of the record. */
  public record At(Id<Harbour> harbour) implements Where {}

  /**
   * In a harbour that may not be in the record yet; one of that name is taken as the same.
   *
   * @param latitude degrees, north positive, -90 to 90
   */
  public record AtNew(String name, double latitude) implements Where {}
}
