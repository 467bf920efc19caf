package hullalmanac.core.finish;

/**
 * A number that was learned or is usual, with the range that holds it 8 times in 10.
 *
 * @param middle as likely too low as too high
 * @param origin what it rests on
 */
public record Estimate(double low, double middle, double high, Origin origin) {
  public Estimate {
    if (!(low >= 0 && low <= middle && middle <= high)) {
      throw new IllegalArgumentException("no range: " + low + ", " + middle + ", " + high);
    }
  }

  /** The same of so much: minutes of an area from minutes of a square metre. */
  public Estimate times(double factor) {
    return new Estimate(low * factor, middle * factor, high * factor, origin);
  }
}
