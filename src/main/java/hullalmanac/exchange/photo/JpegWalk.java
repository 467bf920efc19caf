package hullalmanac.exchange.photo;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Walks from marker to marker of a JPEG without decoding it, to its end (ITU-T T.81, annex B). What
 * follows the end mark is left alone: some cameras put a short film there.
 */
final class JpegWalk {
  private static final int END = 0xd9;
  private static final int SCAN = 0xda;
  private static final int APP1 = 0xe1;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

  private final ByteBuffer content;
  private Optional<PixelSize> size = Optional.empty();
  private Optional<ByteBuffer> exif = Optional.empty();
  private boolean framed;
  private boolean scanned;
  private boolean drawable;

  private JpegWalk(ByteBuffer content) {
    this.content = content;
  }

  /** What a JPEG says of itself, or nothing when it is cut short or damaged. */
  static Optional<PictureHeader> read(ByteBuffer content) {
    JpegWalk walk = new JpegWalk(content);
    return walk.reachesEnd() && walk.scanned && walk.size.isPresent()
        ? Optional.of(new PictureHeader(walk.size, walk.exif, walk.drawable))
        : Optional.empty();
  }

  private boolean reachesEnd() {
    int at = 2;
    while (true) {
      at = afterNextMark(at);
      if (at < 0) {
        return false;
      }
      int marker = content.get(at - 1) & 0xff;
      if (marker == END) {
        return true;
      }
      if (standsAlone(marker)) {
        continue;
      }
      int length = at + 2 <= content.limit() ? content.getShort(at) & 0xffff : 0;
      if (length < 2 || at + length > content.limit()) {
        return false;
      }
      note(marker, content.slice(at + 2, length - 2));
      at += length;
    }
  }

  /** The place behind the next marker, or -1; bytes of a scan are passed over on the way. */
  private int afterNextMark(int from) {
    for (int at = from; at + 1 < content.limit(); at++) {
      if (content.get(at) == (byte) 0xff && content.get(at + 1) != (byte) 0xff) {
        return at + 2;
      }
    }
    return -1;
  }

  /** A byte 0xff of the scan itself, a restart, a start, a private mark: nothing belongs to it. */
  private static boolean standsAlone(int marker) {
    return marker <= 0x01 || (marker >= 0xd0 && marker <= 0xd8);
  }

  private void note(int marker, ByteBuffer segment) {
    if (marker == SCAN) {
      scanned = true;
    } else if (isFrame(marker) && !framed && segment.limit() >= 6) {
      framed = true;
      int height = segment.getShort(1) & 0xffff;
      int width = segment.getShort(3) & 0xffff;
      int components = segment.get(5);
      if (width > 0 && height > 0) {
        size = Optional.of(new PixelSize(width, height));
      }
      // Java decodes baseline, extended and progressive frames of 8 bits: grey, colour, and print.
      drawable =
          marker <= 0xc2
              && segment.get(0) == 8
              && (components == 1 || components == 3 || components == 4);
    } else if (marker == APP1 && exif.isEmpty() && isExif(segment)) {
      exif = Optional.of(segment.slice(EXIF.length, segment.limit() - EXIF.length));
    }
  }

  /** SOF0 to SOF15, between which DHT, JPG and DAC have their numbers. */
  private static boolean isFrame(int marker) {
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
  }

  private static boolean isExif(ByteBuffer segment) {
    return segment.limit() > EXIF.length
        && segment.slice(0, EXIF.length).equals(ByteBuffer.wrap(EXIF));
  }
}
