package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A way driven for the business.
 *
 * @param metres there and back, over 0 and at most 5,000 km
 * @param minutes on the way
 * @param visit to which it led
 * @param note where it led and what for
 */
public record Trip(
    Id<Trip> id,
    String key,
    LocalDate day,
    int metres,
    Optional<Integer> minutes,
    Optional<Id<Visit>> visit,
    String note)
    implements Row {
  private static final int MOST_METRES = 5_000_000;
  private static final int MOST_MINUTES = 6000;

  public Trip {
    Texts.key(key);
    if (metres < 1 || metres > MOST_METRES) {
      throw new IllegalArgumentException(
          "a trip is over 0 and at most 5,000 km, not " + metres / 1000.0 + " km");
    }
    minutes.ifPresent(
        m -> {
          if (m < 0 || m > MOST_MINUTES) {
            throw new IllegalArgumentException(
                "a trip takes 0 to " + MOST_MINUTES + " minutes, not " + m);
          }
        });
  }
}
