package hullalmanac.exchange.photo;

/** Width and height of a picture in pixels. */
public record PixelSize(int width, int height) {
  public PixelSize {
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("a picture has pixels, not " + width + " by " + height);
    }
  }

  /** How many pixels it has. */
  public long pixels() {
    return (long) width * height;
  }
}
