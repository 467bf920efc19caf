package hullalmanac.core.record;

import java.time.LocalDateTime;

/**
 * A reading of air and surface where a coat is laid.
 *
 * @param air temperature of the air, °C, −40 to 60
 * @param humidity relative humidity, %, over 0 to 100
 * @param surface temperature of the surface, °C, −40 to 90
 * @param takenAt local time at which it was taken
 */
public record Climate(double air, double humidity, double surface, LocalDateTime takenAt) {
  public Climate {
    require(air >= -40 && air <= 60, "the air is -40 to 60 °C, not ", air);
    require(
        humidity > 0 && humidity <= 100,
        "relative humidity is over 0 and at most 100 %, not ",
        humidity);
    require(surface >= -40 && surface <= 90, "a surface is -40 to 90 °C, not ", surface);
  }

  private static void require(boolean holds, String sentence, double value) {
    if (!holds) {
      throw new IllegalArgumentException(sentence + Numbers.plain(value));
    }
  }
}
