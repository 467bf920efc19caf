package hullalmanac.core.record;

import java.util.Locale;

/**
 * A length in whole millimetres. 1 ft = 304.8 mm, 1 in = 25.4 mm exactly (international yard and
 * pound agreement, 1959).
 *
 * @param millimetres positive
 */
public record Length(int millimetres) {
  private static final double MM_PER_INCH = 25.4;

  public Length {
    if (millimetres <= 0 || millimetres > 200_000) {
      throw new IllegalArgumentException(
          "a length is over 0 and at most 200 m, not " + millimetres + " mm");
    }
  }

  /** Returns the length of so many metres, to the millimetre. */
  public static Length ofMetres(double metres) {
    return new Length((int) Math.round(metres * 1000));
  }

  /** Returns the length of so many feet and inches, to the millimetre. */
  public static Length ofFeet(double feet, double inches) {
    return new Length((int) Math.round((feet * 12 + inches) * MM_PER_INCH));
  }

  /** This length in metres. */
  public double metres() {
    return millimetres / 1000.0;
  }

  /** This length in decimal feet. */
  public double feet() {
    return millimetres / MM_PER_INCH / 12;
  }

  /** This length in feet and whole inches, as people say it: "31 ft 2 in". */
  public String feetAndInches() {
    long inches = Math.round(millimetres / MM_PER_INCH);
    return inches % 12 == 0 ? inches / 12 + " ft" : inches / 12 + " ft " + inches % 12 + " in";
  }

  /** This length in metres with two decimals: "9.50 m". */
  public String metresText() {
    return String.format(Locale.ROOT, "%.2f m", metres());
  }
}
