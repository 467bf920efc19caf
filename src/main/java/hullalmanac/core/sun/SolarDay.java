package hullalmanac.core.sun;

/**
 * Sun of one day at one latitude.
 *
 * <p>References: R. G. Allen, L. S. Pereira, D. Raes, M. Smith, <i>Crop evapotranspiration</i>, FAO
 * Irrigation and Drainage Paper 56, Rome 1998, chapter 3, equations 20 to 25, 34, 35 and 37. The
 * argument of the sunset angle is kept within −1 and 1, which the paper leaves out, so that polar
 * day and night come out as 24 and 0 hours.
 *
 * @param latitude degrees, north positive, −90 to 90
 * @param dayOfYear 1 to 366; the paper's divisor stays 365 in leap years, so day 366 equals day 1
 */
public record SolarDay(double latitude, int dayOfYear) {
  /** Solar constant, MJ m⁻² min⁻¹. */
  private static final double SOLAR_CONSTANT = 0.0820;

  public SolarDay {
    if (!(Math.abs(latitude) <= 90)) {
      throw new IllegalArgumentException("latitude runs from -90 to 90, not " + latitude);
    }
    if (dayOfYear < 1 || dayOfYear > 366) {
      throw new IllegalArgumentException(
          "the day of the year runs from 1 to 366, not " + dayOfYear);
    }
  }

  /** Inverse relative distance from earth to sun, Eq 23. */
  public double inverseDistance() {
    return 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365);
  }

  /** Solar declination in radians, Eq 24. */
  public double declination() {
    return 0.409 * Math.sin(2 * Math.PI * dayOfYear / 365 - 1.39);
  }

  /** Sunset hour angle in radians, 0 to π, Eq 25. */
  public double sunsetAngle() {
    double x = -Math.tan(Math.toRadians(latitude)) * Math.tan(declination());
    return Math.acos(Math.max(-1, Math.min(1, x)));
  }

  /** Radiation above the atmosphere, MJ m⁻² a day, Eq 21; 0 in polar night. */
  public double extraterrestrial() {
    double phi = Math.toRadians(latitude);
    double ws = sunsetAngle();
    double sum =
        ws * Math.sin(phi) * Math.sin(declination())
            + Math.cos(phi) * Math.cos(declination()) * Math.sin(ws);
    return Math.max(0, 24 * 60 / Math.PI * SOLAR_CONSTANT * inverseDistance() * sum);
  }

  /** The same as evaporated water, mm a day, Eq 20. */
  public double extraterrestrialAsWater() {
    return 0.408 * extraterrestrial();
  }

  /** Longest possible sunshine, hours, Eq 34. */
  public double daylightHours() {
    return 24 / Math.PI * sunsetAngle();
  }

  /**
   * Radiation that reaches the ground, MJ m⁻² a day, Eq 35 with as = 0.25 and bs = 0.50.
   *
   * @param relativeSunshine n/N, 0 to 1
   */
  public double atGround(double relativeSunshine) {
    return (0.25 + 0.50 * relativeSunshine) * extraterrestrial();
  }

  /**
   * The same under a clear sky, MJ m⁻² a day, Eq 37.
   *
   * @param elevation metres above the sea
   */
  public double clearSky(double elevation) {
    return (0.75 + 2e-5 * elevation) * extraterrestrial();
  }
}
