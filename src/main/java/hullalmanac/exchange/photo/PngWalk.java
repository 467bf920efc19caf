package hullalmanac.exchange.photo;

import java.nio.ByteBuffer;
import java.util.Optional;

/** Walks from chunk to chunk of a PNG without decoding it, to its end (W3C PNG, clause 5). */
final class PngWalk {
  private static final int SIGNATURE = 8;

  /** Length and name before the data of a chunk, and a checksum behind. */
  private static final int AROUND = 12;

  private PngWalk() {}

  /** What a PNG says of itself, or nothing when it is cut short or damaged. */
  static Optional<PictureHeader> read(ByteBuffer content) {
    Optional<PixelSize> size = Optional.empty();
    Optional<ByteBuffer> exif = Optional.empty();
    boolean drawn = false;
    int at = SIGNATURE;
    while (at + AROUND <= content.limit()) {
      int length = content.getInt(at);
      if (length < 0 || length > content.limit() - at - AROUND) {
        return Optional.empty();
      }
      ByteBuffer data = content.slice(at + 8, length);
      switch (PhotoFormat.word(content, at + 4)) {
        case "IHDR" -> size = size.or(() -> size(data));
        case "eXIf" -> exif = exif.or(() -> Optional.of(data));
        case "IDAT" -> drawn = true;
        case "IEND" -> {
          return size.isPresent() && drawn
              ? Optional.of(new PictureHeader(size, exif, true))
              : Optional.empty();
        }
        default -> {
          // Colours, texts and whatever else: not needed here.
        }
      }
      at += AROUND + length;
    }
    return Optional.empty();
  }

  private static Optional<PixelSize> size(ByteBuffer header) {
    return header.limit() == 13 && header.getInt(0) > 0 && header.getInt(4) > 0
        ? Optional.of(new PixelSize(header.getInt(0), header.getInt(4)))
        : Optional.empty();
  }
}
