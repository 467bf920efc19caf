package hullalmanac.exchange.photo;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.report.Picture;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

/**
 * Small upright pictures of stored photos. Of a large photo only every so-many-th pixel is taken
 * into memory, so that one of 48 million pixels takes no more than one of two.
 */
public final class Thumbnails {
  /** So many times finer than asked is what is read: enough to blend neighbours. */
  private static final int FINER = 2;

  private Thumbnails() {}

  /**
   * A photo, upright and no larger than a square; a smaller one keeps its size.
   *
   * @param side of the square, in pixels
   * @return nothing when it cannot be drawn: HEIC, a rare kind of JPEG, a damaged file
   * @throws RecordException when there is no such file
   */
  public static Optional<BufferedImage> of(Path photo, int side) {
    if (side < 1) {
      throw new IllegalArgumentException("a thumbnail has pixels, not " + side);
    }
    if (!Files.isRegularFile(photo)) {
      throw new RecordException(
          RecordException.Kind.MISSING,
          "The picture " + photo + " is not there. Bring the folder photos back from a copy.");
    }
    if (PhotoReader.read(photo) instanceof PhotoReader.Usable usable
        && usable.previewable()
        && usable.size().isPresent()) {
      try {
        return Optional.of(
            upright(
                read(photo, usable.format(), period(usable.size().get(), side)),
                fitted(usable.size().get(), side),
                usable.orientation()));
      } catch (IOException | RuntimeException e) {
        // The readers of the platform say in many ways that a content is damaged.
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** The same as plain values. */
  public static Optional<Picture> picture(Path photo, int side) {
    return of(photo, side)
        .map(
            small ->
                new Picture(
                    small.getWidth(),
                    small.getHeight(),
                    small.getRGB(
                        0, 0, small.getWidth(), small.getHeight(), null, 0, small.getWidth())));
  }

  /** Every how-many-th pixel is enough. */
  private static int period(PixelSize size, int side) {
    return (int) Math.max(1, Math.max(size.width(), size.height()) / ((long) FINER * side));
  }

  private static PixelSize fitted(PixelSize size, int side) {
    double scale = Math.min(1, (double) side / Math.max(size.width(), size.height()));
    return new PixelSize(
        (int) Math.max(1, Math.round(size.width() * scale)),
        (int) Math.max(1, Math.round(size.height() * scale)));
  }

  private static BufferedImage read(Path photo, PhotoFormat format, int period) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName(format.name()).next();
    try (ImageInputStream in = ImageIO.createImageInputStream(photo.toFile())) {
      reader.setInput(in, true, true);
      ImageReadParam every = reader.getDefaultReadParam();
      every.setSourceSubsampling(period, period, 0, 0);
      return reader.read(0, every);
    } finally {
      reader.dispose();
    }
  }

  private static BufferedImage upright(BufferedImage read, PixelSize size, int orientation)
      throws IOException {
    BufferedImage small =
        net.coobird.thumbnailator.Thumbnails.of(read)
            .forceSize(size.width(), size.height())
            .imageType(
                read.getColorModel().hasAlpha()
                    ? BufferedImage.TYPE_INT_ARGB
                    : BufferedImage.TYPE_INT_RGB)
            .asBufferedImage();
    return ExifFilterUtils.getFilterForOrientation(Orientation.typeOf(orientation)).apply(small);
  }
}
