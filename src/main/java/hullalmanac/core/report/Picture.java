package hullalmanac.core.report;

/** A small upright picture as plain values, so that it can pass where no toolkit is known. */
public final class Picture {
  private final int width;
  private final int height;
  private final int[] pixels;

  /**
   * @param pixels row by row from the top left, each 0xAARRGGBB
   */
  public Picture(int width, int height, int[] pixels) {
    if (width < 1 || height < 1 || pixels.length != width * height) {
      throw new IllegalArgumentException(
          width + " × " + height + " is not a picture of " + pixels.length + " pixels");
    }
    this.width = width;
    this.height = height;
    this.pixels = pixels.clone();
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** Its pixels, row by row from the top left, each 0xAARRGGBB. */
  public int[] pixels() {
    return pixels.clone();
  }
}
