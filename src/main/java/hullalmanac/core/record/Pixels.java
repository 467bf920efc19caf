package hullalmanac.core.record;

/**
 * A picture as plain numbers, for handing it from a layer that reads files to one that shows it, or
 * back, neither knowing the other's means. Not meant for more than a screen can hold.
 */
public final class Pixels {
  private final int width;
  private final int height;
  private final int[] argb;

  /**
   * @param argb one number a pixel, row by row from the top: alpha, red, green, blue, a byte each
   */
  public Pixels(int width, int height, int[] argb) {
    if (width < 1 || height < 1 || argb.length != (long) width * height) {
      throw new IllegalArgumentException(
          argb.length + " pixels make no picture of " + width + " by " + height);
    }
    this.width = width;
    this.height = height;
    this.argb = argb.clone();
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** All pixels, row by row from the top. */
  public int[] argb() {
    return argb.clone();
  }
}
