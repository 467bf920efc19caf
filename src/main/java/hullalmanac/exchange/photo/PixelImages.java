package hullalmanac.exchange.photo;

import hullalmanac.core.record.Pixels;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;

/** Pictures as plain numbers and as the platform has them. */
public final class PixelImages {
  private PixelImages() {}

  /** An image as numbers. */
  static Pixels of(BufferedImage image) {
    int width = image.getWidth();
    int height = image.getHeight();
    return new Pixels(width, height, image.getRGB(0, 0, width, height, null, 0, width));
  }

  /**
   * A picture from a stream, made smaller where it is wider than asked.
   *
   * @return nothing when it is no picture that can be drawn
   */
  public static Optional<Pixels> read(InputStream in, int widest) throws IOException {
    BufferedImage image = ImageIO.read(in);
    if (image == null) {
      return Optional.empty();
    }
    return Optional.of(
        of(
            image.getWidth() <= widest
                ? image
                : net.coobird.thumbnailator.Thumbnails.of(image).width(widest).asBufferedImage()));
  }

  /** A picture as the content of a PNG file, which loses nothing. */
  public static byte[] png(Pixels pixels) {
    int[] argb = pixels.argb();
    boolean opaque = Arrays.stream(argb).allMatch(p -> p >>> 24 == 0xff);
    BufferedImage image =
        new BufferedImage(
            pixels.width(),
            pixels.height(),
            opaque ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, pixels.width(), pixels.height(), argb, 0, pixels.width());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException("memory cannot be written to", e);
    }
    return out.toByteArray();
  }
}
