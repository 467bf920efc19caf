package hullalmanac.exchange.photo;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Looks at a file somebody wants to keep as a photo: whether it is one, which format, when it was
 * taken. The picture itself is not decoded. Any content gives an outcome, never an exception.
 */
public final class PhotoReader {
  /** A photo of a phone takes 2 to 15 MB; what is larger is something else. */
  static final long MOST_BYTES = 100_000_000;

  /** Decoded, that many pixels take 400 MB: more than any screen or paper here shows. */
  static final long MOST_PIXELS = 100_000_000;

  private PhotoReader() {}

  /** What came of looking at a file. */
  public sealed interface Outcome {}

  /**
   * A photo that can be kept.
   *
   * @param format as its content says, whatever it is called
   * @param size as stored, before it is turned upright; a HEIC file need not say it
   * @param takenAt the local time the camera's clock showed, as it stands in the file: never moved
   *     to another zone; absent when the file does not say or says what cannot be
   * @param zone how far that clock was from UTC, where the camera says so; without it the time is a
   *     local one of an unknown place
   * @param orientation EXIF orientation from 1 (upright) to 8; always 1 for HEIC, whose own
   *     properties turn it
   * @param previewable whether it can be shown; HEIC and a few rare kinds of JPEG cannot
   */
  public record Usable(
      PhotoFormat format,
      Optional<PixelSize> size,
      Optional<LocalDateTime> takenAt,
      Optional<ZoneOffset> zone,
      int orientation,
      boolean previewable)
      implements Outcome {
    public Usable {
      if (orientation < 1 || orientation > 8) {
        throw new IllegalArgumentException("an orientation runs from 1 to 8, not " + orientation);
      }
    }
  }

  /**
   * A file that is not kept.
   *
   * @param sentence for people: which file, why, and what to try
   */
  public record Refused(String sentence) implements Outcome {}

  /** Looks at a file. */
  public static Outcome read(Path file) {
    String name = name(file);
    if (Files.isDirectory(file)) {
      return new Refused(name + " is a folder. Choose the photos in it.");
    }
    try {
      if (Files.isRegularFile(file)) {
        return Files.size(file) > MOST_BYTES
            ? tooLarge(name)
            : read(name, Files.readAllBytes(file));
      }
    } catch (IOException e) {
      // Said below, as of a file that is not there.
    }
    return new Refused(
        "The file " + name + " cannot be read. Look whether it is still there and may be opened.");
  }

  private static Outcome tooLarge(String name) {
    return new Refused(
        "The file " + name + " has more than 100 MB. Save the photo smaller, then add it again.");
  }

  /**
   * Looks at a content.
   *
   * @param name what people call it
   */
  public static Outcome read(String name, byte[] content) {
    if (content.length == 0) {
      return new Refused("The file " + name + " is empty. Copy it from the camera again.");
    }
    if (content.length > MOST_BYTES) {
      return tooLarge(name);
    }
    ByteBuffer bytes = ByteBuffer.wrap(content);
    Optional<PhotoFormat> format = PhotoFormat.of(bytes);
    if (format.isEmpty()) {
      return new Refused(
          "The file "
              + name
              + " is not a JPEG, PNG or HEIC photo. Save it as JPEG, then add it again.");
    }
    return header(format.get(), bytes)
        .map(header -> look(name, format.get(), header))
        .orElseGet(
            () ->
                new Refused(
                    "The photo "
                        + name
                        + " is cut short or damaged. Copy it from the camera again."));
  }

  private static Optional<PictureHeader> header(PhotoFormat format, ByteBuffer bytes) {
    return switch (format) {
      case JPEG -> JpegWalk.read(bytes);
      case PNG -> PngWalk.read(bytes);
      case HEIC -> HeifWalk.read(bytes);
    };
  }

  private static Outcome look(String name, PhotoFormat format, PictureHeader header) {
    if (header.size().filter(s -> s.pixels() > MOST_PIXELS).isPresent()) {
      PixelSize size = header.size().get();
      return new Refused(
          "The photo "
              + name
              + " has "
              + size.width()
              + " by "
              + size.height()
              + " pixels; at most 100 million are taken. Save it smaller, then add it again.");
    }
    Exif exif = header.exif().map(Exif::of).orElse(Exif.NONE);
    return new Usable(
        format,
        header.size(),
        exif.takenAt(),
        exif.zone(),
        format == PhotoFormat.HEIC ? 1 : exif.orientation(),
        header.drawable());
  }

  /** The last part of a path; the root of a disk has none. */
  static String name(Path file) {
    return file.getFileName() == null ? file.toString() : file.getFileName().toString();
  }
}
